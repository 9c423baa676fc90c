import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { boundSafetyTables } from '../../catalogue/safety-tables.ts';
import { fragranceAllergens, ifraLimits, restrictedSubstances } from '../../reference/index.ts';
import { judgeLimits, type LimitsAnswer } from './judge-limits.ts';
import { nameAllergens } from './name-allergens.ts';
import type { Contribution } from './substance.ts';

const tables = boundSafetyTables();
const NAMES = [
  ...new Set([
    ...fragranceAllergens.map((row) => row.labelName),
    ...ifraLimits.map((row) => row.name),
    ...restrictedSubstances.map((row) => row.name),
  ]),
];

/** Whole hundred-thousandths of a per cent, so that halves and sums stay decimals that a person could write. */
const contribution = fc.record({
  name: fc.constantFrom(...NAMES),
  percent: fc.integer({ min: 2, max: 400_000 }).map((steps) => steps / 100_000),
});
const composition = fc.array(contribution, { minLength: 1, maxLength: 25 });

const judge = (contributions: readonly Contribution[]): LimitsAnswer =>
  judgeLimits(tables, { market: 'EU', use: 'leave-on', category: '5A', date: '2026-11-25', contributions });
const name = (contributions: readonly Contribution[]) =>
  nameAllergens(tables, { market: 'EU', use: 'leave-on', firstSupplied: '2026-11-25', contributions });

const RANK = ['no-rule', 'within', 'unknown', 'over', 'prohibited'];
const ranks = (answer: LimitsAnswer): Map<string, number> =>
  new Map(
    answer.verdicts.map(({ ruleId, name: own, reason, verdict }) => [
      `${ruleId ?? own}|${reason === 'needs-certificate'}`,
      RANK.indexOf(verdict),
    ]),
  );

describe('properties of every check', () => {
  it('never worsens a verdict when inert oil is added', () => {
    fc.assert(
      fc.property(composition, fc.integer({ min: 1, max: 99 }), (contributions, oil) => {
        const thinned = contributions.map(({ name: own, percent }) => ({
          name: own,
          percent: (percent * (100 - oil)) / 100,
        }));
        const before = ranks(judge(contributions));
        // A sum of shares may choose another rule to show once it is within: only rules met before are compared.
        for (const [rule, rank] of ranks(
          judge([...thinned, { name: 'Helianthus Annuus Seed Oil', percent: oil }]),
        )) {
          expect(rank).toBeLessThanOrEqual(before.get(rule) ?? RANK.length);
        }
      }),
    );
  });

  it('changes nothing when a contribution comes in two parts', () => {
    fc.assert(
      fc.property(composition, (contributions) => {
        const halves = contributions.flatMap(({ name: own, percent }) => {
          const whole = Math.round(percent * 100_000);
          const part = Math.floor(whole / 3);
          return [part, whole - part].map((steps) => ({ name: own, percent: steps / 100_000 }));
        });
        expect(judge(halves)).toEqual(judge(contributions));
        expect(name(halves)).toEqual(name(contributions));
      }),
    );
  });

  it('does not depend on the order of the lines', () => {
    fc.assert(
      fc.property(composition, (contributions) => {
        const reversed = contributions.toReversed();
        expect(ranks(judge(reversed))).toEqual(ranks(judge(contributions)));
        const labels = (list: readonly Contribution[]) =>
          name(list)
            .named.map(({ labelName }) => labelName)
            .sort();
        expect(labels(reversed)).toEqual(labels(contributions));
      }),
    );
  });

  it('names no less when everything is stronger', () => {
    fc.assert(
      fc.property(composition, fc.integer({ min: 1, max: 10 }), (contributions, factor) => {
        const stronger = contributions.map(({ name: own, percent }) => ({
          name: own,
          percent: percent * factor,
        }));
        const labels = name(stronger).named.map(({ labelName }) => labelName);
        expect(labels).toEqual(
          expect.arrayContaining(name(contributions).named.map(({ labelName }) => labelName)),
        );
      }),
    );
  });
});
