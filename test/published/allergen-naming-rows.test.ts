import { describe, expect, it } from 'vitest';
import { allergens } from '../../src/catalogue/allergens.ts';
import { must } from '../../src/core/problem.ts';
import { type FragranceAllergen, fragranceAllergens } from '../../src/reference/index.ts';
import { justAbove, justBelow } from './least-step.ts';

/**
 * Every entry of Annex III that has to be named (Regulation (EU) 2023/1545, Commission ingredient database, December
 * 2025; Great Britain: the list of 24 as kept, several CAS numbers from memory), on both sides of its threshold, in both
 * uses, in each market, around the days of placing and of making available. Exact: no tolerance. What is expected is
 * worked out here from the rows alone, by the two sentences of the duty.
 */
interface Case {
  readonly market: 'EU' | 'NI' | 'GB' | 'US';
  readonly use: 'leave-on' | 'rinse-off';
  readonly firstSupplied: string;
  readonly lastSupplied?: string;
}

const MARKETS = ['EU', 'NI', 'GB', 'US'] as const;
const USES = ['leave-on', 'rinse-off'] as const;
const SUPPLIES = [
  { firstSupplied: '2005-03-10' },
  { firstSupplied: '2005-03-11' },
  { firstSupplied: '2026-07-31', lastSupplied: '2028-07-31' },
  { firstSupplied: '2026-07-31', lastSupplied: '2028-08-01' },
  { firstSupplied: '2026-08-01' },
] as const;

const CASES: readonly Case[] = MARKETS.flatMap((market) =>
  USES.flatMap((use) => SUPPLIES.map((supply) => ({ market, use, ...supply }))),
);

/** In force: placed from the first day on, or still made available from the second day on. */
function isInForce(
  dates: { readonly requiredForPlacingFrom: string; readonly requiredForMakingAvailableFrom: string },
  { firstSupplied, lastSupplied = firstSupplied }: Case,
): boolean {
  return (
    firstSupplied >= dates.requiredForPlacingFrom || lastSupplied >= dates.requiredForMakingAvailableFrom
  );
}

/** Whether one CAS number of an entry has the duty. */
function hasDuty(row: FragranceAllergen, cas: string, asked: Case): boolean {
  if (asked.market === 'US') return false;
  if (asked.market === 'GB') return row.gb.listed && (row.gb.cas ?? []).includes(cas);
  return isInForce(row.newMembers?.cas.includes(cas) ? row.newMembers : row, asked);
}

const thresholdOf = (row: FragranceAllergen, { use }: Case): number =>
  use === 'leave-on' ? row.thresholdLeaveOnPercent : row.thresholdRinseOffPercent;

function isNamed(name: string, labelName: string, percent: number, asked: Case): boolean {
  const answer = must(allergens.run({ ...asked, contributions: [{ name, percent }] }));
  expect(answer.unknown).toEqual([]);
  return answer.named.some((named) => named.labelName === labelName);
}

describe.each(fragranceAllergens)('entry $entry, $labelName', (row) => {
  it('is named just over its threshold and not at it, where and when the duty holds', () => {
    for (const asked of CASES) {
      const threshold = thresholdOf(row, asked);
      // Under its label name it may be any of its members, so that one with the duty is enough.
      const isListed = asked.market !== 'GB' || row.gb.listed;
      const isDue = asked.market !== 'US' && isListed && (asked.market === 'GB' || isInForce(row, asked));
      const found = [threshold, justBelow(threshold), justAbove(threshold), 100].map((percent) =>
        isNamed(row.labelName, row.labelName, percent, asked),
      );
      expect([asked, found]).toEqual([asked, [false, false, isDue, isDue]]);
    }
  });

  it('counts each member from its own day and in its own scope', () => {
    // A name that several entries or members go by says nothing of one number.
    const own = row.members.filter(({ name, cas }) => cas.length === 1 && name !== row.labelName);
    for (const { name, cas } of own) {
      for (const asked of CASES.filter(({ use }) => use === 'leave-on')) {
        const isDue = hasDuty(row, cas[0] ?? '', asked);
        expect([name, asked, isNamed(name, row.labelName, 0.5, asked)]).toEqual([name, asked, isDue]);
      }
    }
  });
});

it('goes over all 81 entries', () => {
  expect(fragranceAllergens).toHaveLength(81);
  expect(new Set(fragranceAllergens.map((row) => row.thresholdLeaveOnPercent))).toEqual(new Set([0.001]));
  expect(new Set(fragranceAllergens.map((row) => row.thresholdRinseOffPercent))).toEqual(new Set([0.01]));
});
