import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { exact } from '../quantity/index.ts';
import { findSmallestWeight, isBelowSmallestWeight } from './smallest-weight.ts';

describe('smallest weight', () => {
  it('is decided by the readability up to 0.41 d, by the repeatability above', () => {
    const decidedAt = (repeatabilityGrams: string) =>
      findSmallestWeight({ readabilityGrams: '0.1', repeatabilityGrams }, '0.01').decidedBy;
    expect(['0', '0.041', '0.0411'].map(decidedAt)).toEqual(['readability', 'readability', 'repeatability']);
  });

  it('takes a weight of just the smallest, though its quotient has no end: 0.82 g over 3 %', () => {
    const scale = { readabilityGrams: '0.15', repeatabilityGrams: 0 };
    // 2 x 0.41 x 0.15 / 0.03 = 4.1 g.
    expect(isBelowSmallestWeight('4.1', scale, '0.03')).toBe(false);
    expect(isBelowSmallestWeight('4.099999', scale, '0.03')).toBe(true);
  });

  it('halves when the tolerance doubles, and doubles with the step', () => {
    const steps = fc.integer({ min: 1, max: 1000 }).map((n) => exact(n).div(1000));
    const tolerances = fc.integer({ min: 1, max: 500 }).map((n) => exact(n).div(1000));
    fc.assert(
      fc.property(steps, tolerances, (step, tolerance) => {
        const at = (d = step, r = tolerance) =>
          findSmallestWeight(
            { readabilityGrams: d, repeatabilityGrams: 0 },
            r,
          ).smallestWeightGrams.toNumber();
        expect(at(step, tolerance.times(2))).toBeCloseTo(at() / 2, 9);
        expect(at(step.times(2))).toBeCloseTo(at() * 2, 9);
      }),
    );
  });
});
