import { type Route, type RouteName, routes } from '../../contract/index.ts';
import { type Problem, problem } from '../../core/problem.ts';
import { noteClocks } from '../away/clock.ts';
import { door, shutDoor } from '../away/door.ts';
import { noteFresh, noteKnown } from '../away/known-at.ts';
import { noteTold } from '../away/sent-entries.ts';
import { ApiProblem } from './api-problem.ts';
import { connection } from './connection.ts';
import { requestUrl } from './request-url.ts';
import type { AnswerOf, RequestOf } from './shapes.ts';

const notReached = (url: string): ApiProblem => new ApiProblem([problem('workshop-not-reached', url)], false);

/** Sends one request of the contract. Throws an ApiProblem where it is refused or nobody answers. */
export async function call<Name extends RouteName>(
  name: Name,
  request: RequestOf<Name> = {},
  signal?: AbortSignal,
): Promise<AnswerOf<Name>> {
  const url = requestUrl(name, request);
  const askedAt = performance.now();
  const response = await reach(url, routes[name].method, request.body, signal);
  const answer = await readJson(response, url);
  const known = response.headers.get('x-known-at');
  if (known !== null) {
    // Kept on this tablet: the workshop itself did not answer.
    connection.write('silent');
    noteKnown(url, known);
    return answer as AnswerOf<Name>;
  }
  noteAnswer(url, response);
  if (response.ok) noteTold(name, request.params?.id ?? '', askedAt);
  const problems = response.ok ? [] : problemsIn(answer, url, response.status);
  const shut = shutDoor(problems);
  // What may be read says nothing of who may write.
  if (shut) door.write(shut);
  else if (saysOfDoor(name)) door.write(null);
  if (response.ok) return answer as AnswerOf<Name>;
  throw new ApiProblem(problems, true, response.status >= 500);
}

/** What everybody is answered says nothing of who is let in. */
function saysOfDoor(name: RouteName): boolean {
  const { method, openTo }: Route = routes[name];
  return openTo !== 'anyone' && (method !== 'GET' || door.read() === 'device-not-paired');
}

function noteAnswer(url: string, { headers }: Response): void {
  connection.write('answers');
  noteFresh(url);
  noteClocks(headers.get('date'), Date.now());
}

async function reach(url: string, method: string, body: unknown, signal?: AbortSignal): Promise<Response> {
  try {
    return await fetch(url, {
      method,
      headers: {
        accept: 'application/json',
        ...(body === undefined ? {} : { 'content-type': 'application/json' }),
      },
      ...(body === undefined ? {} : { body: JSON.stringify(body) }),
      ...(signal === undefined ? {} : { signal }),
    });
  } catch (error) {
    // Given up by the page, unless its patience ran out: then nobody answered.
    if (signal?.aborted && !isPatienceOver(signal)) throw error;
    connection.write('silent');
    throw notReached(url);
  }
}

const isPatienceOver = ({ reason }: AbortSignal): boolean =>
  reason instanceof DOMException && reason.name === 'TimeoutError';

/** An answer that is not JSON comes from something between us and the workshop, or was cut off. */
async function readJson(response: Response, url: string): Promise<unknown> {
  try {
    return await response.json();
  } catch {
    connection.write('silent');
    throw notReached(url);
  }
}

function problemsIn(answer: unknown, url: string, status: number): readonly Problem[] {
  const problems = (answer as { problems?: unknown } | null)?.problems;
  if (Array.isArray(problems) && problems.length > 0) return problems as Problem[];
  return [problem('answer-not-understood', url, { found: status })];
}
