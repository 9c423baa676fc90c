import { type RouteName, routes } from '../contract/index.ts';
import { type Problem, problem, type Result, refused } from '../core/problem.ts';
import { realMachine } from '../machine/index.ts';
import { sayProblem } from '../words/index.ts';
import { type OpenUseCases, openWorkshop, useCases, workshopZone } from '../work/index.ts';

/** How long to wait for a file that another process has, in milliseconds: its server is asked instead. */
const WAIT_MS = 300;

type Asked = keyof typeof useCases & RouteName;
type Answer<Name extends Asked> = Awaited<ReturnType<OpenUseCases<Name>[Name]>>;
interface Request {
  readonly query?: unknown;
  readonly body?: unknown;
}

/** Carries a use-case out on the workshop of a folder: by the server that has its file open, else by ourselves. */
export async function askWorkshop<Name extends Asked>(
  folder: string,
  name: Name,
  request: Request = {},
): Promise<Answer<Name>> {
  const opened = await openWorkshop({ folder, machine: realMachine, mustExist: true, waitMs: WAIT_MS });
  if (!opened.ok) {
    const address = addressIn(opened.problems);
    return address === undefined ? (opened as Answer<Name>) : askServer(address, name, request);
  }
  try {
    const carryOut = useCases[name] as unknown as (
      context: unknown,
      request: unknown,
    ) => Promise<Answer<Name>>;
    const answer = await carryOut(opened.value, { params: {}, query: {}, body: undefined, ...request });
    return answer.ok ? answer : (inWords(answer.problems, await workshopZone(opened.value)) as Answer<Name>);
  } finally {
    await opened.value.storage.close();
  }
}

/** As a server answers: with the sentences, by the workshop's clock. */
const inWords = (problems: readonly Problem[], timeZone: string) =>
  refused(...problems.map((each) => ({ ...each, ...sayProblem(each, { timeZone }) })));

function addressIn(problems: readonly Problem[]): string | undefined {
  const held = problems.find((it) => it.code === 'file-held');
  return held?.parameters?.address?.toString();
}

async function askServer<Name extends Asked>(
  address: string,
  name: Name,
  { body }: Request,
): Promise<Answer<Name>> {
  const { method, path, media } = routes[name] as { method: string; path: string; media?: string };
  const sent = await send(`${address}${path}`, method, body);
  if (sent === undefined) return refused(problem('server-silent', address)) as Answer<Name>;
  if (!sent.ok) return refused(...((await sent.json()) as { problems: Problem[] }).problems) as Answer<Name>;
  const value =
    media === undefined
      ? await sent.json()
      : { fileName: '', bytes: new Uint8Array(await sent.arrayBuffer()) };
  return { ok: true, value } as Result<unknown> as Answer<Name>;
}

async function send(url: string, method: string, body: unknown): Promise<Response | undefined> {
  try {
    return await fetch(url, {
      method,
      ...(method === 'GET'
        ? {}
        : { body: JSON.stringify(body), headers: { 'content-type': 'application/json' } }),
    });
  } catch {
    return undefined;
  }
}
