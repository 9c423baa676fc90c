/**
 * Smallest weights against published examples.
 *
 * USP general chapter 41: s = 0.00015 g gives 0.3 g at 0.1 %. Pharmacy teaching pages: sensitivity over the
 * permitted error gives 120, 200 and 83.3 mg; 2 s stands for their sensitivity. A balance laboratory's
 * protocol: 0.0098 g with safety factor 1 is 0.0491 g with 5. Tolerances as printed there.
 */
import { describe, expect, it } from 'vitest';
import { smallestWeightCalculation } from '../../src/catalogue/smallest-weight.ts';
import { must } from '../../src/core/problem.ts';
import { smallestWeightRules } from '../../src/reference/index.ts';

const smallest = (input: object): number => must(smallestWeightCalculation.run(input)).smallestWeightGrams;
const FINE = 0.000001;

describe('smallest weight, published examples', () => {
  it('is 0.3 g for a repeatability of 0.00015 g at 0.1 %', () => {
    const found = smallest({ readabilityGrams: FINE, repeatabilityGrams: 0.00015, relativeTolerance: 0.001 });
    expect(Math.abs(found - 0.3)).toBeLessThan(1e-9);
  });

  it.each([
    [6, 0.05, 120, 1e-9],
    [10, 0.05, 200, 1e-9],
    [2.5, 0.03, 83.3, 0.05],
  ])('a sensitivity of %f mg within %f gives %f mg', (milligrams, relativeTolerance, printed, tolerance) => {
    const repeatabilityGrams = milligrams / 2 / 1000;
    const found = smallest({ readabilityGrams: FINE, repeatabilityGrams, relativeTolerance }) * 1000;
    expect(Math.abs(found - printed)).toBeLessThan(tolerance);
  });

  it('grows fivefold with a safety factor of five', () => {
    const repeatabilityGrams = (0.0098 * 0.01) / 2;
    const found = smallest({ readabilityGrams: FINE, repeatabilityGrams, relativeTolerance: 0.01 / 5 });
    expect(Math.abs(found - 0.0491)).toBeLessThan(0.0003);
  });

  it('agrees with the table of readabilities and tolerances, exactly', () => {
    const table = smallestWeightRules.find(({ id }) => id === 'smallest-weight-general')?.examples ?? [];
    expect(table).toHaveLength(20);
    for (const { smallestWeightGrams, ...input } of table) expect(smallest(input)).toBe(smallestWeightGrams);
  });
});
