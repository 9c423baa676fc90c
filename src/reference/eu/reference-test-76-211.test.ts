import { expect, it } from 'vitest';
import { expectBandsToMeet, expectSoundTable } from '../../../test/tables/expect-sound-table.ts';
import {
  countTests,
  meanTestFormulas,
  meanTests,
  referenceTestBatchRules,
  referenceTestSources,
} from './reference-test-76-211.ts';

it('has the plans of the directive and of Great Britain', () => {
  expect(countTests).toHaveLength(8);
  expect(meanTests).toHaveLength(4);
  for (const table of [countTests, meanTests, referenceTestBatchRules, meanTestFormulas]) {
    expectSoundTable(table, referenceTestSources);
  }
});

it('covers every batch size once in each scheme', () => {
  for (const scheme of ['gb-single', 'eu-double', 'destructive'] as const) {
    const bands = countTests.filter((row) => row.scheme === scheme).map((row) => row.batchSize);
    expectBandsToMeet(bands);
    expect(bands[0]?.over).toBe(99);
    expect(bands.at(-1)?.upTo).toBeNull();
  }
});

it('rejects from one more than it accepts', () => {
  for (const row of countTests) {
    if (row.scheme !== 'all-weighed') expect(row.rejectFrom).toBe(row.acceptAtMost + 1);
    if (row.scheme === 'eu-double') expect(row.totalSampleSize).toBe(row.firstSampleSize + row.secondSampleSize);
  }
});

it('agrees with the Student quantile behind the factors, to the three places printed', () => {
  for (const { sampleSize, deviationFactor } of meanTestFormulas[0]?.check ?? []) {
    const printed = meanTests.find((row) => row.sampleSize === sampleSize)?.deviationFactor;
    expect(Math.abs((printed ?? 0) - deviationFactor)).toBeLessThan(0.0005);
  }
});
