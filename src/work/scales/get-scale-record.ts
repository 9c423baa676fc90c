import type { z } from 'zod';
import { nominalCheckWeights } from '../../catalogue/index.ts';
import type { scales } from '../../contract/index.ts';
import { done, type Result, refused } from '../../core/problem.ts';
import { gramsFromMicrograms, sumOf, toText } from '../../core/quantity/index.ts';
import { judgeScaleCheck, proposeCheckWeights } from '../../core/weighing/index.ts';
import {
  findScale,
  listScaleChecks,
  listScaleTests,
  listWeighedOn,
  type Reader,
  type ScaleRow,
} from '../../storage/index.ts';
import type { Context } from '../context.ts';
import { thingNotFound } from '../record.ts';
import { repeatabilityOf } from '../scale-error.ts';
import type { UseCase } from '../use-case.ts';

type ScaleRecord = z.output<typeof scales.scaleRecord>;

/** Checks that a page shows: a year of working days (common practice, no source). */
const MOST_CHECKS = 250;
/** Weighings that tell near which mass a scale is used (common practice, no source). */
const LAST_WEIGHINGS = 50;

export const getScaleRecord: UseCase<'getScaleRecord'> = (context, { params }) =>
  viewScaleRecord(context, params.id ?? '');

export async function viewScaleRecord(
  { storage: { db } }: Context,
  id: string,
): Promise<Result<ScaleRecord>> {
  const scale = await findScale(db, id);
  if (!scale) return refused(thingNotFound('id', id));
  const weighed = (await listWeighedOn(db, id, LAST_WEIGHINGS)).map(gramsFromMicrograms);
  return done({
    id,
    tests: await viewTests(db, scale),
    checks: await viewChecks(db, id),
    proposedWeights: proposeCheckWeights(scale.capacity_grams, weighed, nominalCheckWeights),
  });
}

async function viewTests(db: Reader, scale: ScaleRow): Promise<ScaleRecord['tests']> {
  const used = repeatabilityOf(scale);
  return (await listScaleTests(db, scale.id)).map((row, place) => {
    const readings = JSON.parse(row.readings) as string[];
    return {
      entryId: row.entry_id,
      at: row.happened_at,
      by: row.person_name,
      weightGrams: row.weight_grams,
      readings,
      readabilityGrams: row.readability_grams,
      meanGrams: toText(sumOf(readings).div(readings.length)),
      deviationGrams: row.deviation_grams,
      isUsed: place === 0 && used?.from === 'measured',
    };
  });
}

async function viewChecks(db: Reader, id: string): Promise<ScaleRecord['checks']> {
  return (await listScaleChecks(db, id, MOST_CHECKS)).map((row) => ({
    entryId: row.entry_id,
    at: row.happened_at,
    on: row.checked_on,
    by: row.person_name,
    weightGrams: row.weight_grams,
    toleranceGrams: row.tolerance_grams,
    readingGrams: row.reading_grams,
    deviationGrams: toText(
      judgeScaleCheck(row.reading_grams, row.weight_grams, row.limit_grams).deviationGrams,
    ),
    limitGrams: row.limit_grams,
    limitBy: row.limit_by as ScaleRecord['checks'][number]['limitBy'],
    isGood: row.is_good === 1,
  }));
}
