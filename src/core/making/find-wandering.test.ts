import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { sumOf } from '../quantity/index.ts';
import { findWandering, type WanderingLine } from './find-wandering.ts';

const line = (key: string, percent: string, more: Partial<WanderingLine> = {}): WanderingLine => ({
  key,
  percent,
  tolerance: '0.02',
  limitPercent: null,
  reportLeastPercent: null,
  ...more,
});
const making = (grams: Record<string, string>) => new Map(Object.entries(grams));
const three = [
  making({ shea: '74', oil: '26' }),
  making({ shea: '75', oil: '25' }),
  making({ shea: '76', oil: '24' }),
];
const wandering = (lines: readonly WanderingLine[], makings = three) => {
  const found = findWandering(lines, makings);
  if (!found.ok) throw new Error(found.problems[0]?.code);
  return found.value;
};

describe('what wanders from making to making', () => {
  it('is told with mean, spread and range of its share, the line that uses most of its room first', () => {
    const found = wandering([line('shea', '75'), line('oil', '25')]);
    // Shares of oil 26, 25, 24 %: mean 25, sample deviation 1; its band is 24.5 to 25.5 %, so twice its room.
    expect(found.map(({ key }) => key)).toEqual(['oil', 'shea']);
    const [oil] = found;
    expect(oil?.meanPercent.toString()).toBe('25');
    expect(oil?.spreadPercent.toString()).toBe('1');
    expect(oil?.leastPercent.toString()).toBe('24');
    expect(oil?.mostPercent.toString()).toBe('26');
    expect(oil?.used?.toString()).toBe('2');
    expect(oil?.bound).toBe('band');
  });

  it('goes by the limit where that is nearer than the band', () => {
    const [first] = wandering([line('oil', '25', { limitPercent: '25.2' }), line('shea', '75')]);
    expect(first).toMatchObject({ key: 'oil', bound: 'limit' });
    expect(first?.used?.toString()).toBe('5');
    expect(first?.roomHighPercent.toString()).toBe('25.2');
  });

  it('goes by what the report asks for at least, where that is nearer', () => {
    const [first] = wandering([line('oil', '25', { reportLeastPercent: '24.8' }), line('shea', '75')]);
    expect(first).toMatchObject({ key: 'oil', bound: 'report' });
    expect(first?.used?.toString()).toBe('5');
  });

  it('is nothing where every making is the same', () => {
    const same = [three[1], three[1], three[1]].flatMap((each) => (each ? [each] : []));
    const [first] = wandering([line('shea', '75'), line('oil', '25')], same);
    expect(first?.used?.toString()).toBe('0');
    expect(first?.spreadPercent.toString()).toBe('0');
  });

  it('has no room left on its limit', () => {
    const [first] = wandering([line('oil', '25', { limitPercent: '25' }), line('shea', '75')]);
    expect(first).toMatchObject({ key: 'oil', bound: 'limit', used: null });
  });

  it('counts a line that was left out as nothing of it', () => {
    const found = wandering([line('wax', '1')]);
    expect(found[0]?.meanPercent.toString()).toBe('0');
  });

  it('never tells from fewer than three makings, or from one of nothing', () => {
    expect(findWandering([line('oil', '25')], three.slice(1))).toMatchObject({
      ok: false,
      problems: [{ code: 'makings-too-few', found: 2, allowed: 3 }],
    });
    const none = making({ oil: '0' });
    expect(findWandering([line('oil', '25')], [none, none, none])).toMatchObject({
      ok: false,
      problems: [{ code: 'mass-zero' }],
    });
  });

  it('keeps the means of all lines together at the whole', () => {
    const grams = fc.integer({ min: 1, max: 1_000_000 }).map(String);
    fc.assert(
      fc.property(fc.array(fc.tuple(grams, grams), { minLength: 3, maxLength: 8 }), (rows) => {
        const makings = rows.map(([shea, oil]) => making({ shea, oil }));
        const means = wandering([line('shea', '60'), line('oil', '40')], makings).map(
          ({ meanPercent }) => meanPercent,
        );
        expect(sumOf(means).minus(100).abs().lt('1e-40')).toBe(true);
      }),
    );
  });
});
