/** Says in an answer that was kept when the workshop gave it. */
export const KNOWN_AT = 'x-known-at';

export interface KeptAnswers {
  readonly read: () => Promise<Response | undefined>;
  readonly write: (answer: Response) => Promise<void>;
}

export interface NetworkFirst {
  readonly ask: () => Promise<Response>;
  readonly kept: KeptAnswers;
  readonly wait: (ms: number) => Promise<void>;
  readonly patienceMs: number;
  readonly now: () => string;
  /** Work that goes on after the answer; told of at once, since afterwards a service worker is not kept awake for it. */
  readonly outlive: (work: Promise<unknown>) => void;
}

/**
 * The workshop's answer, which is kept; where none comes in time, what was kept of it, which says from when it is. A
 * refusal goes through as it is and is never kept. Where nothing was kept, there is nothing but to wait.
 */
export async function networkFirst({
  ask,
  kept,
  wait,
  patienceMs,
  now,
  outlive,
}: NetworkFirst): Promise<Response> {
  const asked = ask();
  const keeping = asked.then((answer) =>
    answer.status === 200 ? withMoment(answer.clone(), now()).then(kept.write) : undefined,
  );
  // No answer, or no room to keep it: the page is told the first by `asked`, and the second costs it nothing now.
  outlive(keeping.catch(() => undefined));
  const silence = wait(patienceMs).then(() => undefined);
  const first = await Promise.race([asked.catch(() => undefined), silence]);
  return first ?? (await kept.read()) ?? asked;
}

async function withMoment(answer: Response, at: string): Promise<Response> {
  const headers = new Headers(answer.headers);
  headers.set(KNOWN_AT, at);
  return new Response(await answer.blob(), { status: 200, headers });
}
