import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { netContentsTables } from '../../catalogue/index.ts';
import { must } from '../problem.ts';
import { exact } from '../quantity/index.ts';
import { type BatchWeights, testBatchWeights } from './batch-weight-test.ts';

const repeat = (count: number, weight: number): number[] => Array.from({ length: count }, () => weight);
const test = (batch: Partial<BatchWeights> & Pick<BatchWeights, 'weightsGrams'>) =>
  must(
    testBatchWeights(
      { nominalGrams: 30, batchSize: batch.weightsGrams.length, basis: 'average', ...batch },
      netContentsTables,
    ),
  );

describe('test of a batch, all packs weighed', () => {
  it('accepts one in twenty below limit 1 and rejects two', () => {
    expect(test({ weightsGrams: [27.29, ...repeat(19, 30.5)] })).toMatchObject({
      verdict: 'accept',
      belowLimit1: 1,
    });
    expect(test({ weightsGrams: [27.29, 27.29, ...repeat(18, 30.5)] })).toMatchObject({
      verdict: 'reject',
      decidedBy: 'below-limit-1',
    });
  });

  it('takes packs of exactly limit 1, limit 2 and nominal as not below', () => {
    const at = test({ weightsGrams: [27.3, 24.6, 30, 40] });
    expect(at).toMatchObject({ belowLimit1: 1, belowLimit2: 0, belowNominal: 2 });
    const under = test({ weightsGrams: [27.299, 24.599, 29.999, 40] });
    expect(under).toMatchObject({ belowLimit1: 2, belowLimit2: 1, belowNominal: 3 });
  });

  it('rejects for a single pack below limit 2, whatever the mean', () => {
    expect(test({ weightsGrams: [24.599, ...repeat(40, 35)] })).toMatchObject({ decidedBy: 'below-limit-2' });
    expect(test({ weightsGrams: [24.6, ...repeat(40, 35)] })).toMatchObject({ verdict: 'accept' });
  });

  it('judges the mean exactly: ten packs of 29.9 and 30.1 stand at 30, which binary sums do not', () => {
    const weightsGrams = [...repeat(5, 29.9), ...repeat(5, 30.1)];
    expect(test({ weightsGrams })).toMatchObject({ verdict: 'accept' });
    expect(test({ weightsGrams: [...weightsGrams.slice(1), 29.899_999] })).toMatchObject({
      decidedBy: 'mean',
    });
  });

  it('names the gravest rule first and tells the others', () => {
    const { decidedBy, broken } = test({ weightsGrams: [20, 27, 27, 29] });
    expect(decidedBy).toBe('below-limit-2');
    expect(broken).toEqual(['below-limit-2', 'below-limit-1', 'mean']);
  });

  it('by the minimum way lets none lie below the label and looks at nothing else', () => {
    expect(test({ basis: 'minimum', weightsGrams: [30, 30, 45] })).toMatchObject({ verdict: 'accept' });
    expect(test({ basis: 'minimum', weightsGrams: [29.999, 30, 45] })).toMatchObject({
      verdict: 'reject',
      decidedBy: 'below-nominal',
      belowNominal: 1,
    });
  });

  it('from 100 packs on allows one in forty where all were weighed', () => {
    expect(test({ weightsGrams: [...repeat(3, 27), ...repeat(117, 30.5)] })).toMatchObject({
      verdict: 'accept',
    });
    expect(test({ weightsGrams: [...repeat(3, 27), ...repeat(116, 30.5)] })).toMatchObject({
      decidedBy: 'below-limit-1',
    });
  });
});

describe('test of a batch by its sample', () => {
  const sample = (light: number, weight = 30.5) => [...repeat(light, 27), ...repeat(50 - light, weight)];

  it('accepts 3 of 50 below limit 1 and rejects 4', () => {
    expect(test({ batchSize: 100, weightsGrams: sample(3) })).toMatchObject({ verdict: 'accept' });
    expect(test({ batchSize: 500, weightsGrams: sample(4) })).toMatchObject({ decidedBy: 'below-limit-1' });
  });

  it('allows a mean of nominal - 0.379 s and none lower', () => {
    // 25 packs a below and 25 above a mean m: s = a sqrt(50 / 49), so k s = 0.379 a sqrt(50 / 49).
    const half = 1;
    const allowance = 0.379 * half * Math.sqrt(50 / 49);
    const around = (mean: number) => [...repeat(25, mean - half), ...repeat(25, mean + half)];
    const verdictAt = (mean: number) =>
      test({ batchSize: 200, weightsGrams: around(Number(mean.toFixed(6))) });
    expect(verdictAt(30 - allowance + 0.00001)).toMatchObject({ verdict: 'accept' });
    expect(verdictAt(30 - allowance - 0.00001)).toMatchObject({ verdict: 'reject', decidedBy: 'mean' });
  });

  it('has no allowance for the mean where nothing scatters', () => {
    expect(test({ batchSize: 200, weightsGrams: repeat(50, 30) })).toMatchObject({ verdict: 'accept' });
    expect(test({ batchSize: 200, weightsGrams: repeat(50, 29.999) })).toMatchObject({ decidedBy: 'mean' });
  });

  it('refuses any other number of weights, and says which would do', () => {
    const found = testBatchWeights(
      { nominalGrams: 30, batchSize: 200, weightsGrams: repeat(49, 30), basis: 'average' },
      netContentsTables,
    );
    expect(found).toMatchObject({
      ok: false,
      problems: [{ code: 'weights-not-the-sample', found: 49, allowed: '50 or 200' }],
    });
  });

  it('refuses a pack that weighs nothing', () => {
    const found = testBatchWeights(
      { nominalGrams: 30, batchSize: 2, weightsGrams: [30, '-0.1'], basis: 'minimum' },
      netContentsTables,
    );
    expect(found).toMatchObject({ problems: [{ code: 'value-not-above', where: 'weightsGrams[1]' }] });
  });
});

describe('properties of the test', () => {
  const weights = fc.array(
    fc.integer({ min: 20_000, max: 40_000 }).map((n) => n / 1000),
    { minLength: 2, maxLength: 99 },
  );

  it('has mean and deviation of their definitions', () => {
    fc.assert(
      fc.property(weights, (weightsGrams) => {
        const { spread } = test({ weightsGrams });
        const mean = weightsGrams.reduce((sum, weight) => sum + weight, 0) / weightsGrams.length;
        const squares = weightsGrams.reduce((sum, weight) => sum + (weight - mean) ** 2, 0);
        expect(spread.mean.toNumber()).toBeCloseTo(mean, 9);
        expect(spread.standardDeviation?.toNumber()).toBeCloseTo(
          Math.sqrt(squares / (weightsGrams.length - 1)),
          9,
        );
      }),
    );
  });

  it('never turns an accepted batch into a rejected one by filling every pack more', () => {
    fc.assert(
      fc.property(weights, fc.integer({ min: 0, max: 5000 }), (weightsGrams, more) => {
        const heavier = weightsGrams.map((weight) => exact(weight).plus(exact(more).div(1000)));
        const isWorse =
          test({ weightsGrams }).verdict === 'accept' && test({ weightsGrams: heavier }).verdict === 'reject';
        expect(isWorse).toBe(false);
      }),
    );
  });
});
