import { describe, expect, it } from 'vitest';
import { KNOWN_AT, type NetworkFirst, networkFirst } from './network-first.ts';

const NOW = '2026-11-26T10:03:00.000Z';
const never = <T>(): Promise<T> => new Promise(() => undefined);
const json = (body: unknown, status = 200) => Response.json(body, { status });

/** A cupboard for one answer. */
function cupboard(first?: Response) {
  let answer = first;
  return {
    read: async () => answer?.clone(),
    write: async (next: Response) => {
      answer = next;
    },
  };
}

async function run(more: Partial<NetworkFirst>) {
  const kept = cupboard();
  const later: Promise<unknown>[] = [];
  let isAnswered = false;
  const parts = { kept, patienceMs: 2_500, now: () => NOW, wait: () => never<void>() };
  const answer = await networkFirst({
    ...parts,
    ask: async () => json({ is: 'fresh' }),
    // As a browser does it: an event that was answered is over (Service Workers, waitUntil; from memory).
    outlive: (work) => {
      if (isAnswered) throw new Error('InvalidStateError');
      later.push(work);
    },
    ...more,
  });
  isAnswered = true;
  return { answer, kept: more.kept ?? kept, all: Promise.all(later) };
}
const known = () => cupboard(new Response('{"is":"known"}', { headers: { [KNOWN_AT]: NOW } }));
const isOf = async (answer: Response | undefined) =>
  ((await answer?.json()) as { is?: string } | undefined)?.is;

describe('an answer that is asked for first and kept', () => {
  it('is the workshop’s own, and is kept with the moment', async () => {
    const { answer, kept, all } = await run({});
    await all;
    expect(answer.headers.get(KNOWN_AT)).toBeNull();
    expect(await isOf(answer)).toBe('fresh');
    const later = await kept.read();
    expect([later?.headers.get(KNOWN_AT), await isOf(later)]).toEqual([NOW, 'fresh']);
  });

  it('is what was kept where nobody can be reached, and says from when', async () => {
    const { answer } = await run({ kept: known(), ask: () => Promise.reject(new TypeError('failed')) });
    expect([answer.headers.get(KNOWN_AT), await isOf(answer)]).toEqual([NOW, 'known']);
  });

  it('is what was kept where no answer comes in time; a late one is kept for the next', async () => {
    const kept = known();
    let arrive: ((answer: Response) => void) | undefined;
    const late = new Promise<Response>((resolve) => {
      arrive = resolve;
    });
    const { answer, all } = await run({ kept, ask: () => late, wait: () => Promise.resolve() });
    expect(await isOf(answer)).toBe('known');
    arrive?.(json({ is: 'late' }));
    await all;
    expect(await isOf(await kept.read())).toBe('late');
  });

  it('is waited for where nothing was kept, and its failure is the page’s to tell', async () => {
    const slow = new Promise<Response>((resolve) => setTimeout(() => resolve(json({ is: 'slow' })), 5));
    expect(await isOf((await run({ ask: () => slow, wait: () => Promise.resolve() })).answer)).toBe('slow');
    await expect(run({ ask: () => Promise.reject(new TypeError('failed')) })).rejects.toThrow('failed');
  });

  it('goes to the page also where there is no room to keep it', async () => {
    const full = { ...cupboard(), write: () => Promise.reject(new Error('QuotaExceededError')) };
    const { answer, all } = await run({ kept: full });
    await all;
    expect(await isOf(answer)).toBe('fresh');
  });

  it.each([401, 403, 404, 500])(
    'that refuses with %i goes through, and nothing of it is kept',
    async (status) => {
      const kept = known();
      const { answer, all } = await run({ kept, ask: async () => json({ problems: [] }, status) });
      await all;
      expect(answer.status).toBe(status);
      expect(await isOf(await kept.read())).toBe('known');
    },
  );
});
