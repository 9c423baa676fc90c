/**
 * Overrun against the University of Guelph's examples (ice cream technology, overrun calculations): 1090 and 560 g/l
 * give 94.6 %, 1100 g/l at 100 % is 550 g/l, a cup of 110 g unwhipped holds 104.76 g at 5 % and 100 g at 10 %, with its
 * 30 g tare 134.8 and 130 g. Tolerance 0.05 as printed, density exact.
 */
import { describe, expect, it } from 'vitest';
import { airOverrunCalculation } from '../../src/catalogue/air-overrun.ts';
import { whippedFillCalculation } from '../../src/catalogue/whipped-fill.ts';
import { must } from '../../src/core/problem.ts';

describe('overrun, published examples', () => {
  it('is 94.6 % from 1.090 to 0.560 g/ml', () => {
    const found = must(
      airOverrunCalculation.run({ unwhippedDensityGramsPerMl: 1.09, whippedDensityGramsPerMl: 0.56 }),
    );
    expect(Math.abs(found.overrunPercent - 94.6)).toBeLessThan(0.05);
  });

  it('halves a density of 1.100 g/ml at 100 %', () => {
    const found = must(
      whippedFillCalculation.run({
        containerMl: 1000,
        unwhippedDensityGramsPerMl: 1.1,
        overrunPercent: 100,
      }),
    );
    expect(found).toEqual({ fillGrams: 550, whippedDensityGramsPerMl: 0.55 });
  });

  it.each([
    [5, 104.76, 134.8],
    [10, 100, 130],
  ])('a cup of 110 g at %i %% holds %f g', (overrunPercent, net, gross) => {
    const { fillGrams } = must(
      whippedFillCalculation.run({ containerMl: 100, unwhippedDensityGramsPerMl: 1.1, overrunPercent }),
    );
    expect(Math.abs(fillGrams - net)).toBeLessThan(0.05);
    expect(Math.abs(fillGrams + 30 - gross)).toBeLessThan(0.05);
    const back = must(
      airOverrunCalculation.run({ sameVolumeUnwhippedGrams: 110, sameVolumeWhippedGrams: fillGrams }),
    );
    expect(back.overrunPercent).toBeCloseTo(overrunPercent, 9);
  });
});
