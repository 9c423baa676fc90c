import type { Stamp } from '../../contract/index.ts';
import { problem } from '../../core/problem.ts';
import { ApiProblem } from './api-problem.ts';

/** What a sender sends: everything of the request but the stamp. */
export interface Unstamped {
  readonly params?: Readonly<Record<string, string>> | undefined;
  readonly body: object;
}
export interface Stamped {
  readonly params?: Readonly<Record<string, string>> | undefined;
  readonly body: object & { readonly stamp: Stamp };
}

export interface SenderParts<Answer> {
  readonly send: (request: Stamped) => Promise<Answer>;
  readonly stamp: () => Promise<Stamp>;
}

/**
 * Sends entries so that each counts once, whatever the network does.
 *
 * As long as nobody answered, the entry may have arrived. The same entry tried again goes with the same stamp. A changed
 * entry waits until the first is settled: had it arrived, the changed one would be a second entry, and the person is
 * told instead.
 */
export function makeSender<Answer>({ send, stamp }: SenderParts<Answer>) {
  let unsettled: { readonly said: string; readonly request: Stamped } | null = null;

  async function attempt(said: string, request: Stamped): Promise<Answer> {
    unsettled = { said, request };
    try {
      const answer = await send(request);
      unsettled = null;
      return answer;
    } catch (error) {
      if (error instanceof ApiProblem && error.isAnswered) unsettled = null;
      throw error;
    }
  }

  /** True: the earlier entry stands in the record. */
  async function settle(earlier: { readonly said: string; readonly request: Stamped }): Promise<boolean> {
    try {
      await attempt(earlier.said, earlier.request);
      return true;
    } catch (error) {
      if (error instanceof ApiProblem && error.isAnswered) return false;
      throw error;
    }
  }

  return async function sendEntry(request: Unstamped): Promise<Answer> {
    const said = JSON.stringify(request);
    if (unsettled?.said === said) return attempt(said, unsettled.request);
    if (unsettled !== null && (await settle(unsettled))) {
      throw new ApiProblem([problem('earlier-entry-arrived', 'stamp.id')], true);
    }
    return attempt(said, { ...request, body: { ...request.body, stamp: await stamp() } });
  };
}
