import { describe, expect, it } from 'vitest';
import type { Batch } from './batch.ts';
import { listNews } from './list-news.ts';

const entry = (entryId: string, by: string) => ({ entryId, by, at: '2026-11-26T10:04:00.000Z' });
const shea = (...entries: object[]) => ({ kind: 'addition', itemName: 'the shea', entries });
const melt = (done: object | null) => ({ kind: 'step', what: 'Melt', done });
const batchOf = (screens: object[], struck: object[] = [], id = 'b'): Batch =>
  ({ id, screens, struck }) as unknown as Batch;
const nobodyHere = () => false;

describe('what somebody else did meanwhile', () => {
  it('is what stands now and did not before', () => {
    const before = batchOf([shea(), melt(null)]);
    const now = batchOf([shea(entry('a', 'Ana')), melt(entry('m', 'Bo'))]);
    expect(listNews(before, now, nobodyHere)).toEqual([
      { kind: 'weighed', what: 'the shea', ...entry('a', 'Ana') },
      { kind: 'done', what: 'Melt', ...entry('m', 'Bo') },
    ]);
  });

  it('is nothing of what was entered here', () => {
    const now = batchOf([shea(entry('a', 'Ana'), entry('b', 'Bo'))]);
    expect(listNews(batchOf([shea()]), now, (id) => id === 'a').map(({ by }) => by)).toEqual(['Bo']);
  });

  it('is a strike too', () => {
    const struck = { entryId: 'a', what: 'the shea', struckBy: 'Bo', struckAt: '2026-11-26T10:05:00.000Z' };
    const before = batchOf([shea(entry('a', 'Ana'))]);
    expect(listNews(before, batchOf([shea()], [struck]), nobodyHere)).toMatchObject([
      { kind: 'struck', by: 'Bo', what: 'the shea' },
    ]);
  });

  it('is nothing where another batch is shown, or nothing changed', () => {
    const now = batchOf([shea(entry('a', 'Ana'))]);
    expect(listNews(batchOf([shea()], [], 'other'), now, nobodyHere)).toEqual([]);
    expect(listNews(now, now, nobodyHere)).toEqual([]);
  });
});
