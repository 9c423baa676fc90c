import { afterEach, describe, expect, it, vi } from 'vitest';
import { problem } from '../../core/problem.ts';
import { ApiProblem } from '../api/api-problem.ts';
import { connection } from '../api/connection.ts';
import { keepClaim } from './keep-claim.ts';
import type { KeptEntry } from './kept-entry.ts';

const at = '2026-11-26T08:05:00Z';
const entry = {
  ...{ id: 'e1', route: 'recordStep', params: { id: 'b1' }, at, state: 'left', tab: 't', until: 0 },
  body: { stamp: { id: 'e1', at, by: 'p1', device: 'tablet' } },
} as unknown as KeptEntry;

describe('an entry that is kept as a question', () => {
  afterEach(() => {
    vi.restoreAllMocks();
    vi.unstubAllGlobals();
    connection.write('answers');
  });

  it('is silence where the workshop never answers, and holds nobody up', async () => {
    const over = new AbortController();
    vi.spyOn(AbortSignal, 'timeout').mockReturnValue(over.signal);
    // A computer that fell asleep: nothing comes until somebody gives up.
    const asleep = (_url: string, { signal }: RequestInit) =>
      new Promise<Response>((_answer, fail) => {
        signal?.addEventListener('abort', () => fail(signal.reason));
        if (signal === undefined || signal === null) fail(new Error('nobody gives up'));
      });
    vi.stubGlobal('navigator', { userAgent: 'tablet' });
    vi.stubGlobal('fetch', vi.fn(asleep));
    const kept = keepClaim(entry, [problem('step-done-already', 'Melt')]).catch((error) => error);
    over.abort(new DOMException('over', 'TimeoutError'));
    const silence = await kept;
    expect(silence).toBeInstanceOf(ApiProblem);
    expect(silence.isAnswered).toBe(false);
    expect(AbortSignal.timeout).toHaveBeenCalled();
  });
});
