import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { netContentsTables } from '../../catalogue/index.ts';
import { must } from '../problem.ts';
import { findTargetForCoverage, findTargetOnAverage } from './target-fill.ts';

const target = (nominal: number, deviation: number | string) => {
  const { targetGrams, decidedBy } = must(findTargetOnAverage(nominal, deviation, netContentsTables));
  return [targetGrams.toFixed(), decidedBy];
};

describe('target fill on the average', () => {
  // 100 g: T = 4.5 g. Rule A up to s = T / 2 = 2.25; rule B up to s = T / 1.72 = 2.61628; rule C above (guidance, from memory).
  it.each([
    [0, '100', 'nominal'],
    ['2.25', '100', 'nominal'],
    ['2.251', '100.002', 'limit-1'],
    ['2.616', '100.732', 'limit-1'],
    ['2.617', '100.73524', 'limit-2'],
    ['5', '109.6', 'limit-2'],
  ])('with s = %s g is %s g, by %s', (deviation, grams, decidedBy) => {
    expect(target(100, deviation)).toEqual([grams, decidedBy]);
  });

  it('never lies below the label and never falls as the spread grows', () => {
    const deviations = fc.integer({ min: 0, max: 10_000 }).map((n) => n / 1000);
    fc.assert(
      fc.property(deviations, deviations, (one, other) => {
        const [less, more] = [Math.min(one, other), Math.max(one, other)];
        const [tight, wide] = [less, more].map(
          (s) => must(findTargetOnAverage(75, s, netContentsTables)).targetGrams,
        );
        expect(tight!.gte(75) && wide!.gte(tight!)).toBe(true);
      }),
    );
  });
});

describe('target fill for a coverage', () => {
  it('is the label itself for one half, or where nothing scatters', () => {
    expect(findTargetForCoverage(50, 2, 0.5)).toMatchObject({ decidedBy: 'nominal' });
    expect(findTargetForCoverage(50, 0, 0.999).targetGrams.toNumber()).toBe(50);
  });

  it('grows in proportion to the spread', () => {
    const once = findTargetForCoverage(50, 1, 0.99).giveawayGrams;
    expect(findTargetForCoverage(50, 3, 0.99).giveawayGrams.toNumber()).toBeCloseTo(
      once.times(3).toNumber(),
      12,
    );
    // 2.326348: normal quantile of 0.99, six places.
    expect(once.toNumber()).toBeCloseTo(2.326348, 6);
  });
});
