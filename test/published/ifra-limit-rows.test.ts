import { describe, expect, it } from 'vitest';
import { limits } from '../../src/catalogue/limits.ts';
import { must } from '../../src/core/problem.ts';
import { type IfraLimit, ifraLimits } from '../../src/reference/index.ts';
import { justAbove, justBelow } from './least-step.ts';

/**
 * Every category of every Standard as transcribed (IFRA Standards, 49th Amendment, read in a transcription): a limit is
 * allowed itself and not the least step above it; none where the Standard sets none; a prohibition at any amount; what is
 * not confirmed never passes. Exact: no tolerance.
 */
const LEAST = 1e-12;

function wordsOn(
  row: IfraLimit,
  category: string,
  percent: number,
  use = 'leave-on',
): (string | undefined)[] {
  const answer = must(
    limits.run({
      market: 'GB',
      use,
      category,
      date: '2026-11-25',
      contributions: [{ name: row.name, percent }],
    }),
  );
  return answer.verdicts
    .filter((each) => each.kind === 'ifra' && each.ruleId === row.id && each.reason !== 'needs-certificate')
    .map((each) => each.verdict);
}

describe.each(ifraLimits)('the Standard on $name', (row) => {
  it('is kept on both sides of each of its limits', () => {
    for (const [category, limit] of Object.entries(row.limits)) {
      if (typeof limit !== 'number') continue;
      const found = [justBelow(limit), limit, justAbove(limit)].map((percent) =>
        wordsOn(row, category, percent),
      );
      expect([category, limit, found]).toEqual([category, limit, [['within'], ['within'], ['over']]]);
    }
  });

  it('stops what it prohibits, lets pass what it leaves free, and is unknown where nobody confirmed it', () => {
    const EXPECTED = { prohibited: 'prohibited', 'no-restriction': 'within', unknown: 'unknown' } as const;
    for (const [category, limit] of Object.entries(row.limits)) {
      if (typeof limit === 'number') continue;
      const found = [LEAST, 50].map((percent) => wordsOn(row, category, percent));
      expect([category, found]).toEqual([category, [[EXPECTED[limit]], [EXPECTED[limit]]]]);
    }
  });
});

const phototoxic = ifraLimits.filter(({ sumGroup }) => sumGroup === 'phototoxic');

function sumOf(parts: readonly { readonly row: IfraLimit; readonly percent: number }[], use = 'leave-on') {
  const contributions = parts.map(({ row, percent }) => ({ name: row.name, percent }));
  const answer = must(limits.run({ market: 'GB', use, category: '5A', date: '2026-11-25', contributions }));
  const verdict = answer.verdicts.find(({ ruleId }) => ruleId === 'phototoxic-sum')?.verdict;
  return { verdict, share: answer.sumOfShares };
}

describe('phototoxic oils together', () => {
  const limited = phototoxic.flatMap((row) => {
    const limit = row.limits['5A'];
    return typeof limit === 'number' ? [{ row, limit }] : [];
  });

  it('may use up the limit exactly by halves, in every pair of them, and no step more', () => {
    expect(limited.length).toBeGreaterThan(3);
    for (const [index, one] of limited.entries()) {
      for (const other of limited.slice(index + 1)) {
        const half = (percent: number) =>
          sumOf([
            { row: one.row, percent },
            { row: other.row, percent: other.limit / 2 },
          ]);
        const names = `${one.row.name} and ${other.row.name}`;
        expect([names, half(one.limit / 2).verdict]).toEqual([names, 'within']);
        expect([names, half(justAbove(one.limit / 2)).verdict]).toEqual([names, 'over']);
        expect(half(one.limit / 2).share).toBe(1);
      }
    }
  });

  it('add up over all of them at once: an equal part of each limit', () => {
    // A sixteenth of a decimal ends, so that sixteenths of each limit are exact.
    const parts = limited.map(({ row, limit }) => ({ row, percent: limit / 16 }));
    expect(sumOf(parts).share).toBeCloseTo(limited.length / 16, 12);
    expect(sumOf(parts).verdict).toBe(limited.length > 16 ? 'over' : 'within');
    const [first] = limited;
    if (first === undefined) throw new Error('no phototoxic oil');
    const rest = parts.slice(1);
    const room = (first.limit * (16 - rest.length)) / 16;
    expect(sumOf([{ row: first.row, percent: room }, ...rest]).verdict).toBe('within');
    expect(sumOf([{ row: first.row, percent: room + 1e-9 }, ...rest]).verdict).toBe('over');
  });

  it('are free where the product is rinsed off', () => {
    for (const row of phototoxic.filter(({ rinseOffFree }) => rinseOffFree === true)) {
      expect([row.name, wordsOn(row, '9', 50, 'rinse-off')]).toEqual([row.name, ['within']]);
    }
  });
});
