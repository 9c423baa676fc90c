/**
 * The tests of a batch against published examples.
 *
 * Guide to the average quantity system in Australia: butter passes, potatoes fail (OIML R 87:2004 plan, whose
 * sizes and numbers are those of the single plan of SI 2006/659). Factors of the mean: Directive 76/211/EEC and
 * SI 2006/659 print three places, as do the National Trade Measurement Regulations 2009 (Australia) and, with the
 * finite batch allowed for, the Weights and Measures Regulations 1999 (New Zealand): tolerance 0.0006.
 * Chances of acceptance: binomial, computed outside this program; tolerance 0.00005 (four places).
 */
import { describe, expect, it } from 'vitest';
import { batchWeightTestCalculation } from '../../src/catalogue/batch-weight-test.ts';
import { samplingPlanCalculation } from '../../src/catalogue/sampling-plan.ts';
import { meanTestFactor, studentQuantile } from '../../src/core/filling/index.ts';
import { must } from '../../src/core/problem.ts';
import { countTests, meanTests } from '../../src/reference/index.ts';

/** Weights of which the first few are given, and the rest make up the mean. */
function weightsWithMean(count: number, mean: number, first: readonly number[]): number[] {
  const rest = (mean * count - first.reduce((sum, weight) => sum + weight, 0)) / (count - first.length);
  return [...first, ...Array.from({ length: count - first.length }, () => rest)];
}

describe('average quantity test, published examples', () => {
  it('passes the butter: 500 g, batch of 3500, mean 501 g, 2 below limit 1, none below limit 2', () => {
    const weightsGrams = weightsWithMean(125, 501, [484.9, 470]);
    expect(
      must(batchWeightTestCalculation.run({ nominalGrams: 500, batchSize: 3500, weightsGrams })),
    ).toMatchObject({
      sampleSize: 125,
      belowLimit1: 2,
      belowLimit2: 0,
      verdict: 'accept',
    });
  });

  it('fails the potatoes: 3 kg, batch of 148, mean 3.1 kg, one pack below limit 2', () => {
    const weightsGrams = weightsWithMean(50, 3100, [2909.9]);
    expect(
      must(batchWeightTestCalculation.run({ nominalGrams: 3000, batchSize: 148, weightsGrams })),
    ).toMatchObject({
      sampleSize: 50,
      belowLimit2: 1,
      verdict: 'reject',
      decidedBy: 'below-limit-2',
    });
  });

  it('allows 7 below limit 1 in the butter and no more', () => {
    const verdictWith = (light: number): string =>
      must(
        batchWeightTestCalculation.run({
          nominalGrams: 500,
          batchSize: 3500,
          weightsGrams: weightsWithMean(
            125,
            501,
            Array.from({ length: light }, () => 484.9),
          ),
        }),
      ).verdict;
    expect([verdictWith(7), verdictWith(8)]).toEqual(['accept', 'reject']);
  });
});

describe('factor of the mean, printed values', () => {
  it.each([
    [20, 0.64],
    [30, 0.503],
    [50, 0.379],
    [80, 0.295],
    [125, 0.234],
  ])('is that of the law for %i packs', (sampleSize, printed) => {
    expect(meanTestFactor(sampleSize).toNumber()).toBe(printed);
  });

  it('is that of each row of the mean test', () => {
    const rows = meanTests.filter((row) => row.sampleSize !== undefined);
    expect(rows).toHaveLength(3);
    for (const { sampleSize = 0, deviationFactor } of rows) {
      expect(meanTestFactor(sampleSize).toNumber()).toBe(deviationFactor);
    }
  });

  it.each([
    [12, 39, 0.746],
    [12, 79, 0.826],
    [12, 149, 0.86],
    [32, 399, 0.465],
    [32, 4000, 0.483],
  ])('with %i of %i packs weighed gives the New Zealand table', (sampleSize, batchSize, printed) => {
    const factor = studentQuantile(0.995, sampleSize - 1) / Math.sqrt(sampleSize);
    expect(Math.abs(factor * Math.sqrt(1 - sampleSize / batchSize) - printed)).toBeLessThan(0.0006);
  });

  it.each([
    [1, 63.6567],
    [2, 9.9248],
    [3, 5.8409],
  ])('rests on Student’s quantile of %i degrees of freedom, to four places', (degrees, printed) => {
    expect(Math.abs(studentQuantile(0.995, degrees) - printed)).toBeLessThan(0.00005);
  });
});

/** Sample, most accepted, share below limit 1, chance of acceptance. */
const CHANCES: readonly (readonly [number, number, number, number])[] = [
  [50, 3, 0.01, 0.9984],
  [50, 3, 0.025, 0.9638],
  [50, 3, 0.05, 0.7604],
  [50, 3, 0.1, 0.2503],
  [80, 5, 0.01, 0.9998],
  [80, 5, 0.025, 0.9848],
  [80, 5, 0.05, 0.7892],
  [80, 5, 0.1, 0.1769],
  [125, 7, 0.01, 1],
  [125, 7, 0.025, 0.9864],
  [125, 7, 0.05, 0.7117],
  [125, 7, 0.1, 0.0601],
  [20, 1, 0.01, 0.9831],
  [20, 1, 0.025, 0.9118],
  [20, 1, 0.05, 0.7358],
  [20, 1, 0.1, 0.3917],
];

const PLANS: Readonly<Record<number, readonly [string, number]>> = {
  20: ['destructive', 150],
  50: ['gb-single', 300],
  80: ['gb-single', 2000],
  125: ['gb-single', 5000],
};

const binomial = (n: number, k: number): number =>
  Array.from({ length: k }, (_, index) => (n - index) / (index + 1)).reduce(
    (product, part) => product * part,
    1,
  );

describe('what a plan lets through', () => {
  it.each(CHANCES)(
    '%i packs, at most %i, with a share of %f: chance %f',
    (sampleSize, acceptAtMost, share, chance) => {
      const [scheme, batchSize] = PLANS[sampleSize] ?? [];
      let found = 0;
      for (let light = 0; light <= sampleSize; light += 1) {
        const answer = must(samplingPlanCalculation.run({ scheme, batchSize, nonStandard: light }));
        expect(answer).toMatchObject({ sampleSize, acceptAtMost });
        if (answer.verdict === 'accept') {
          found += binomial(sampleSize, light) * share ** light * (1 - share) ** (sampleSize - light);
        }
      }
      expect(Math.abs(found - chance)).toBeLessThan(0.000051);
    },
  );
});

describe('every row of the published plans, at both ends of its band', () => {
  const rows = countTests.flatMap((row) => {
    if (row.scheme === 'all-weighed') return [];
    const first =
      row.scheme === 'eu-double'
        ? {
            sampleSize: row.firstSampleSize,
            acceptAtMost: row.firstAcceptAtMost,
            rejectFrom: row.firstRejectFrom,
          }
        : { sampleSize: row.sampleSize, acceptAtMost: row.acceptAtMost, rejectFrom: row.rejectFrom };
    const sizes = [row.batchSize.over + 1, row.batchSize.upTo ?? 10_000];
    return sizes.map((batchSize) => ({ scheme: row.scheme, batchSize, first }));
  });

  it('has seven rows', () => expect(rows).toHaveLength(14));

  it.each(rows)('$scheme, $batchSize packs', ({ scheme, batchSize, first }) => {
    expect(must(samplingPlanCalculation.run({ scheme, batchSize }))).toMatchObject(first);
  });
});
