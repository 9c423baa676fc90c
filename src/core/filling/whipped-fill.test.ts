import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { must } from '../problem.ts';
import { findAirOverrun } from './air-overrun.ts';
import { findLargestOverrun, findWhippedFill, type WhippedContainer } from './whipped-fill.ts';

const jar: WhippedContainer = {
  containerMl: 120,
  headspaceFraction: 0,
  unwhippedDensityGramsPerMl: 0.9,
  inclusions: [],
};
const sugar = { massFraction: 0.4, densityGramsPerMl: 1.6 };

describe('fill of a whipped base', () => {
  it('leaves the headspace empty', () => {
    const { fillGrams } = must(findWhippedFill({ ...jar, headspaceFraction: 0.1 }, 50));
    expect(fillGrams.toFixed()).toBe('64.8');
  });

  it('adds the volumes of base and sugar: a gram is 0.6 g of base at 0.6 g/ml and 0.4 g of sugar at 1.6 g/ml', () => {
    const found = must(findWhippedFill({ ...jar, inclusions: [sugar] }, 50));
    // 0.6 / 0.6 + 0.4 / 1.6 = 1.25 ml for a gram: 0.8 g/ml; 120 ml hold 96 g.
    expect(found.whippedDensityGramsPerMl.toFixed()).toBe('0.8');
    expect(found.fillGrams.toFixed()).toBe('96');
  });

  it('finds the largest overrun that still holds the declared grams, and it fills the jar', () => {
    const { largestOverrunPercent } = must(findLargestOverrun({ ...jar, inclusions: [sugar] }, 96));
    expect(largestOverrunPercent.toFixed()).toBe('50');
  });

  it('refuses what does not fit even unwhipped, a microgram above what does, thirds of it and all', () => {
    const dense = { ...jar, containerMl: 100, inclusions: [{ massFraction: 0.5, densityGramsPerMl: 3 }] };
    // A gram is 0.5 / 0.9 + 0.5 / 3 ml = 0.72222 ml, so 65 g take 46.9444 ml: a container of that fits exactly.
    const exactly = { ...dense, unwhippedDensityGramsPerMl: 0.75, containerMl: 50 };
    // With 0.75 g/ml a gram is 0.6667 + 0.1667 = 0.8333 ml: 60 g take 50 ml.
    expect(must(findLargestOverrun(exactly, 60)).largestOverrunPercent.toFixed()).toBe('0');
    expect(findLargestOverrun(exactly, '60.000001')).toMatchObject({
      ok: false,
      problems: [{ code: 'declared-does-not-fit', allowed: '60' }],
    });
  });

  it('refuses inclusions that leave no base', () => {
    const all = [sugar, { massFraction: 0.6, densityGramsPerMl: 2 }];
    expect(findWhippedFill({ ...jar, inclusions: all }, 50)).toMatchObject({
      ok: false,
      problems: [{ code: 'inclusions-leave-no-base', found: '1' }],
    });
  });
});

describe('overrun there and back', () => {
  const overruns = fc.integer({ min: 0, max: 3000 }).map((tenths) => tenths / 10);

  it('is found again from the densities', () => {
    fc.assert(
      fc.property(overruns, (overrun) => {
        const { whippedDensityGramsPerMl } = must(findWhippedFill(jar, overrun));
        const back = must(findAirOverrun(0.9, whippedDensityGramsPerMl));
        expect(back.overrunPercent.toNumber()).toBeCloseTo(overrun, 9);
        const share = overrun / 100;
        expect(back.airFraction.toNumber()).toBeCloseTo(share / (1 + share), 12);
      }),
    );
  });

  it('is found again from the fill, with headspace and sugar', () => {
    const full = {
      ...jar,
      headspaceFraction: 0.05,
      inclusions: [sugar, { massFraction: 0.1, densityGramsPerMl: 2.2 }],
    };
    fc.assert(
      fc.property(overruns, (overrun) => {
        const { fillGrams } = must(findWhippedFill(full, overrun));
        const back = must(findLargestOverrun(full, fillGrams.toDecimalPlaces(20, 1)));
        expect(back.largestOverrunPercent.toNumber()).toBeCloseTo(overrun, 9);
      }),
    );
  });

  it('grows the fill in proportion to the container', () => {
    const single = must(findWhippedFill(jar, 70)).fillGrams;
    const triple = must(findWhippedFill({ ...jar, containerMl: 360 }, 70)).fillGrams;
    expect(triple.toNumber()).toBeCloseTo(single.times(3).toNumber(), 12);
  });
});
