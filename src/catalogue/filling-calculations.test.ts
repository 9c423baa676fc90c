import { describe, expect, it } from 'vitest';
import { airOverrunCalculation } from './air-overrun.ts';
import { batchWeightTestCalculation } from './batch-weight-test.ts';
import type { Calculation } from './define-calculation.ts';
import { fillingCalculations } from './filling-calculations.ts';
import { samplingPlanCalculation } from './sampling-plan.ts';
import { targetFillCalculation } from './target-fill.ts';
import { tolerableErrorCalculation } from './tolerable-error.ts';
import { unitsFromBatchCalculation } from './units-from-batch.ts';
import { whippedFillCalculation } from './whipped-fill.ts';

const listed: readonly Calculation[] = fillingCalculations;

function codesOf(calculation: Calculation, input: unknown): string[] {
  const result = calculation.run(input);
  return result.ok ? [] : result.problems.map(({ code, where }) => `${code} at ${where}`);
}

describe('the filling calculations', () => {
  it.each(listed)('$name answers its example, in its own schema', (calculation) => {
    const result = calculation.run(calculation.example.input);
    expect(result).toEqual({ ok: true, value: calculation.example.output });
    expect(calculation.output.safeParse(calculation.example.output).success).toBe(true);
  });

  it.each(listed)('$name refuses a field that it does not know, and an empty input', (calculation) => {
    const { input } = calculation.example;
    expect(codesOf(calculation, { ...(input as object), colour: 'green' })).toEqual([
      'field-unknown at colour',
    ]);
    expect(codesOf(calculation, {})).not.toEqual([]);
    expect(codesOf(calculation, null)).not.toEqual([]);
  });
});

describe('tolerable-error', () => {
  it.each([
    [0, 'value-too-small at nominal'],
    [-30, 'value-too-small at nominal'],
    [4.999, 'no-tolerable-error at nominal'],
    [25_000.001, 'no-tolerable-error at nominal'],
    [1e9, 'value-too-large at nominal'],
    ['30', 'field-wrong-type at nominal'],
  ])('refuses a nominal of %s', (nominal, code) => {
    expect(codesOf(tolerableErrorCalculation, { nominal, unit: 'g' })).toEqual([code]);
  });

  it('takes 5 and 25 000, the ends of the average system', () => {
    expect(codesOf(tolerableErrorCalculation, { nominal: 5, unit: 'ml' })).toEqual([]);
    expect(codesOf(tolerableErrorCalculation, { nominal: 25_000, unit: 'ml' })).toEqual([]);
  });
});

describe('sampling-plan', () => {
  const plan = (input: object) =>
    samplingPlanCalculation.run({ scheme: 'eu-double', batchSize: 300, ...input });

  it.each([
    [[1], 'accept', 30, 'first-sample'],
    [[2], 'second-sample', 30, 'first-sample'],
    [[3], 'reject', 30, 'first-sample'],
    [[2, 2], 'accept', 60, 'both-samples'],
    [[2, 3], 'reject', 60, 'both-samples'],
    [[1, 30], 'accept', 30, 'first-sample'],
    [[3, 0], 'reject', 30, 'first-sample'],
  ])('judges the double plan with %j found: %s', (nonStandard, verdict, sampleSize, decidedBy) => {
    expect(plan({ nonStandard })).toMatchObject({ ok: true, value: { verdict, sampleSize, decidedBy } });
  });

  it('takes one count without a list too', () => {
    expect(plan({ nonStandard: 2 })).toMatchObject({ value: { verdict: 'second-sample' } });
  });

  it('tells the plan alone where no count is given', () => {
    expect(plan({})).toEqual({
      ok: true,
      value: {
        sampleSize: 30,
        acceptAtMost: 1,
        rejectFrom: 3,
        bothSamples: { sampleSize: 60, acceptAtMost: 4, rejectFrom: 5 },
      },
    });
  });

  it.each([
    [99, 4],
    [80, 4],
    [79, 3],
    [20, 1],
    [19, 0],
    [1, 0],
  ])('weighs all of %i packs and lets 5 %%, %i, lie below', (batchSize, acceptAtMost) => {
    const withFound = (nonStandard: number) =>
      samplingPlanCalculation.run({ scheme: 'gb-single', batchSize, nonStandard });
    const plan = {
      sampleSize: batchSize,
      acceptAtMost,
      rejectFrom: acceptAtMost + 1,
      decidedBy: 'all-weighed',
    };
    expect(withFound(acceptAtMost)).toEqual({ ok: true, value: { ...plan, verdict: 'accept' } });
    expect(withFound(acceptAtMost + 1)).toEqual({ ok: true, value: { ...plan, verdict: 'reject' } });
  });

  it.each([
    [{ scheme: 'destructive', batchSize: 99 }, 'batch-too-small-to-destroy at batchSize'],
    [{ scheme: 'gb-single', batchSize: 100, nonStandard: 51 }, 'more-counted-than-sampled at nonStandard[0]'],
    [{ scheme: 'gb-single', batchSize: 100, nonStandard: [1, 1] }, 'samples-counted-wrong at nonStandard'],
    [
      { scheme: 'eu-double', batchSize: 100, nonStandard: [2, 31] },
      'more-counted-than-sampled at nonStandard[1]',
    ],
    [{ scheme: 'eu-double', batchSize: 50, nonStandard: [1, 1] }, 'samples-counted-wrong at nonStandard'],
    [{ scheme: 'gb-single', batchSize: 100, nonStandard: -1 }, 'value-too-small at nonStandard'],
    [{ scheme: 'gb-single', batchSize: 0 }, 'value-too-small at batchSize'],
    [{ scheme: 'gb-single', batchSize: 12.5 }, 'field-wrong-type at batchSize'],
    [{ scheme: 'military', batchSize: 100 }, 'value-not-one-of at scheme'],
  ])('refuses %j', (input, code) => {
    expect(codesOf(samplingPlanCalculation, input)).toEqual([code]);
  });
});

describe('batch-weight-test', () => {
  const tested = (input: object) =>
    batchWeightTestCalculation.run({ nominalGrams: 30, batchSize: 3, weightsGrams: [30, 30, 30], ...input });

  it('has no deviation for a single pack', () => {
    expect(tested({ batchSize: 1, weightsGrams: [30] })).toMatchObject({
      value: { standardDeviationGrams: null, verdict: 'accept' },
    });
  });

  it('judges a 3 g sample by the minimum way only, and says that it has no limits', () => {
    const small = { nominalGrams: 3, weightsGrams: [3, 3.1, 3.2] };
    expect(tested({ ...small, basis: 'minimum' })).toMatchObject({
      value: { verdict: 'accept', belowLimit1: null, belowLimit2: null, decidedBy: 'below-nominal' },
    });
    expect(codesOf(batchWeightTestCalculation, { ...small, batchSize: 3 })).toEqual([
      'no-tolerable-error at nominalGrams',
    ]);
  });

  it.each([
    [{ weightsGrams: [] }, 'value-too-small at weightsGrams'],
    [{ weightsGrams: [30, 0, 30] }, 'value-too-small at weightsGrams[1]'],
    [{ weightsGrams: [30, -1, 30] }, 'value-too-small at weightsGrams[1]'],
    [{ weightsGrams: [30, 30] }, 'weights-not-the-sample at weightsGrams'],
    [{ batchSize: 100, weightsGrams: [30] }, 'weights-not-the-sample at weightsGrams'],
    [{ batchSize: 0 }, 'value-too-small at batchSize'],
    [{ batchSize: 10_001 }, 'value-too-large at batchSize'],
  ])('refuses %j', (input, code) => {
    expect(
      codesOf(batchWeightTestCalculation, {
        nominalGrams: 30,
        batchSize: 3,
        weightsGrams: [30, 30, 30],
        ...input,
      }),
    ).toEqual([code]);
  });
});

describe('target-fill', () => {
  const run = (input: object) =>
    codesOf(targetFillCalculation, { nominalGrams: 100, standardDeviationGrams: 1, ...input });

  it('aims above the label by z s for a coverage', () => {
    const asked = { nominalGrams: 100, standardDeviationGrams: 2, basis: 'minimum', coverage: 0.975 };
    const found = targetFillCalculation.run(asked);
    // 1.959964: standard normal quantile, six places.
    expect(found.ok && Math.abs(found.value.giveawayGrams - 2 * 1.959964)).toBeLessThan(2e-6);
    expect(found).toMatchObject({ value: { decidedBy: 'coverage' } });
  });

  it.each([
    [{ basis: 'minimum' }, 'field-missing at coverage'],
    [{ basis: 'average', coverage: 0.9 }, 'coverage-not-for-average at coverage'],
    [{ basis: 'minimum', coverage: 1 }, 'value-not-below at coverage'],
    [{ basis: 'minimum', coverage: 0.499 }, 'value-too-small at coverage'],
    [{ basis: 'average', nominalGrams: 4 }, 'no-tolerable-error at nominalGrams'],
    [{ basis: 'average', standardDeviationGrams: -1 }, 'value-too-small at standardDeviationGrams'],
    [{}, 'value-not-one-of at basis'],
  ])('refuses %j', (input, code) => {
    expect(run(input)).toEqual([code]);
  });
});

describe('air-overrun', () => {
  it('reads two weighings of one cup', () => {
    expect(airOverrunCalculation.run({ sameVolumeUnwhippedGrams: 90, sameVolumeWhippedGrams: 60 })).toEqual({
      ok: true,
      value: { overrunPercent: 50, airFraction: 1 / 3 },
    });
  });

  it.each([
    [{}, 'one-pair-wanted at input'],
    [{ unwhippedDensityGramsPerMl: 0.9 }, 'field-missing at whippedDensityGramsPerMl'],
    [{ sameVolumeWhippedGrams: 60 }, 'field-missing at sameVolumeUnwhippedGrams'],
    [{ unwhippedDensityGramsPerMl: 0.9, sameVolumeWhippedGrams: 60 }, 'one-pair-wanted at input'],
    [
      { unwhippedDensityGramsPerMl: 0.5, whippedDensityGramsPerMl: 0.9 },
      'whipped-not-lighter at whippedDensityGramsPerMl',
    ],
    [
      { sameVolumeUnwhippedGrams: 50, sameVolumeWhippedGrams: 60 },
      'whipped-not-lighter at sameVolumeWhippedGrams',
    ],
    [
      { unwhippedDensityGramsPerMl: 0.9, whippedDensityGramsPerMl: 0 },
      'value-too-small at whippedDensityGramsPerMl',
    ],
  ])('refuses %j', (input, code) => {
    expect(codesOf(airOverrunCalculation, input)).toEqual([code]);
  });
});

describe('whipped-fill', () => {
  const jar = { containerMl: 120, unwhippedDensityGramsPerMl: 0.9 };

  it.each([
    [{ ...jar }, 'overrun-or-declared at overrunPercent'],
    [{ ...jar, overrunPercent: 50, declaredGrams: 60 }, 'overrun-or-declared at declaredGrams'],
    [{ ...jar, declaredGrams: 108.001 }, 'declared-does-not-fit at declaredGrams'],
    [{ ...jar, overrunPercent: 50, headspaceFraction: 1 }, 'value-not-below at headspaceFraction'],
    [{ ...jar, overrunPercent: -1 }, 'value-too-small at overrunPercent'],
    [
      {
        ...jar,
        overrunPercent: 50,
        inclusions: [
          { massFraction: 0.5, densityGramsPerMl: 2 },
          { massFraction: 0.5, densityGramsPerMl: 2 },
        ],
      },
      'inclusions-leave-no-base at inclusions',
    ],
  ])('refuses %j', (input, code) => {
    expect(codesOf(whippedFillCalculation, input)).toEqual([code]);
  });

  it('lets what just fits unwhipped fit, with no overrun left', () => {
    expect(whippedFillCalculation.run({ ...jar, declaredGrams: 108 })).toEqual({
      ok: true,
      value: { fillGrams: 108, whippedDensityGramsPerMl: 0.9, largestOverrunPercent: 0 },
    });
  });
});

describe('units-from-batch', () => {
  const plan = { lossFraction: 0, targetFillGrams: 30 };

  it.each([
    [{ ...plan }, 'batch-or-units at input'],
    [{ ...plan, batchGrams: 100, units: 3 }, 'batch-or-units at input'],
    [{ ...plan, batchGrams: 100, retained: 4 }, 'retained-above-filled at retained'],
    [{ ...plan, units: 0 }, 'value-too-small at units'],
    [{ ...plan, units: 3, lossFraction: 1 }, 'value-too-large at lossFraction'],
    [{ ...plan, units: 3, targetFillGrams: 0 }, 'value-too-small at targetFillGrams'],
  ])('refuses %j', (input, code) => {
    expect(codesOf(unitsFromBatchCalculation, input)).toEqual([code]);
  });

  it('answers no units where the batch does not fill one', () => {
    expect(unitsFromBatchCalculation.run({ ...plan, batchGrams: 29.999 })).toMatchObject({
      value: { units: 0, leftoverGrams: 29.999 },
    });
  });
});
