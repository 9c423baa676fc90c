import { done, problem, type Result, refused } from '../problem.ts';
import { exact } from '../quantity/index.ts';
import { findBand } from './find-band.ts';
import type { CountTestRow, SamplingScheme } from './net-contents-tables.ts';

export interface CountStage {
  readonly sampleSize: number;
  readonly acceptAtMost: number;
  readonly rejectFrom: number;
}

export interface SamplingPlan {
  readonly scheme: SamplingScheme | 'all-weighed';
  readonly first: CountStage;
  /** Both samples together, where the first may leave it open. */
  readonly both?: CountStage;
}

const bandOf = ({ batchSize }: CountTestRow) => batchSize;

/**
 * How many packs to take, and how many of them may lie below limit 1 (counts of packs).
 *
 * Below 100 packs every pack is weighed and at most 5 % may lie below; a destructive test is not for so few.
 * Source: Directive 76/211/EEC Annex II (double and destructive plan); SI 2006/659 Schedule 2 (single plan).
 */
export function findSamplingPlan(
  batchSize: number,
  scheme: SamplingScheme,
  countTests: readonly CountTestRow[],
): Result<SamplingPlan> {
  const all = countTests.filter((row) => row.scheme === 'all-weighed');
  const whole = findBand(all, bandOf, batchSize);
  if (whole !== undefined && scheme !== 'destructive') return done(planForAll(batchSize, whole));
  const row = findBand(
    countTests.filter((test) => test.scheme === scheme),
    bandOf,
    batchSize,
  );
  if (row === undefined || row.scheme === 'all-weighed') {
    return refused(
      problem('batch-too-small-to-destroy', 'batchSize', {
        found: batchSize,
        allowed: 100,
        source: 'Directive 76/211/EEC Annex II',
      }),
    );
  }
  return done(planFrom(row));
}

function planForAll(
  batchSize: number,
  { maxDefectiveFraction }: Extract<CountTestRow, { scheme: 'all-weighed' }>,
): SamplingPlan {
  const acceptAtMost = exact(batchSize).times(maxDefectiveFraction).floor().toNumber();
  return {
    scheme: 'all-weighed',
    first: { sampleSize: batchSize, acceptAtMost, rejectFrom: acceptAtMost + 1 },
  };
}

function planFrom(row: Exclude<CountTestRow, { scheme: 'all-weighed' }>): SamplingPlan {
  const { scheme, acceptAtMost, rejectFrom } = row;
  if (scheme !== 'eu-double') {
    return { scheme, first: { sampleSize: row.sampleSize, acceptAtMost, rejectFrom } };
  }
  return {
    scheme,
    first: {
      sampleSize: row.firstSampleSize,
      acceptAtMost: row.firstAcceptAtMost,
      rejectFrom: row.firstRejectFrom,
    },
    both: { sampleSize: row.totalSampleSize, acceptAtMost, rejectFrom },
  };
}
