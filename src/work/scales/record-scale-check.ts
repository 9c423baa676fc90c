import { scaleTables } from '../../catalogue/index.ts';
import { type Problem, problem } from '../../core/problem.ts';
import { exact, toText } from '../../core/quantity/index.ts';
import { findActionLimit, judgeScaleCheck } from '../../core/weighing/index.ts';
import { findScale, giveUp, insertScaleCheck, orGiveUp, type ScaleRow } from '../../storage/index.ts';
import { inside } from '../inside.ts';
import { instantInUtc } from '../instant-in-utc.ts';
import { localDate, workshopZone } from '../local-date.ts';
import { record, thingNotFound } from '../record.ts';
import { scaleOf } from '../scale-error.ts';
import type { RequestOf, UseCase } from '../use-case.ts';
import { viewScaleRecord } from './get-scale-record.ts';

type Body = RequestOf<'recordScaleCheck'>['body'];

/**
 * A check weight put on, good or not: both stand, and the last one says whether the scale may be used. What frees it is
 * its own weight alone: a lighter one, or one that nobody knows, says little of what the scale weighs.
 */
export const recordScaleCheck: UseCase<'recordScaleCheck'> = (context, { params, body }) =>
  record(
    context,
    { ...body.stamp, at: instantInUtc(body.stamp.at) },
    async (tx, tell) => {
      const scale = await findScale(tx, params.id ?? '');
      if (!scale) giveUp(thingNotFound('id', params.id ?? ''));
      const wrong = whyNoReading(scale, body.readingGrams);
      if (wrong.length > 0) giveUp(...wrong);
      const weight = weightOn(scale, body);
      const limit = orGiveUp(findActionLimit(scaleOf(scale), weight, scaleTables));
      const { isGood } = judgeScaleCheck(body.readingGrams, body.weightGrams, limit.limitGrams);
      const row = {
        entry_id: body.stamp.id,
        scale_id: scale.id,
        checked_on: localDate(body.stamp.at, await workshopZone(inside(context, tx))),
        weight_grams: body.weightGrams,
        tolerance_grams: weight.toleranceGrams,
        reading_grams: body.readingGrams,
        limit_grams: toText(limit.limitGrams),
        limit_by: limit.decidedBy,
        is_good: isGood ? 1 : 0,
        is_own_weight: weight.isOwn ? 1 : 0,
      };
      const { entry_id: _, ...payload } = row;
      await tell({ kind: 'scale-checked', subjectKind: 'scale', subjectId: scale.id, payload });
      await insertScaleCheck(tx, row);
      return scale.id;
    },
    (id) => viewScaleRecord(context, id),
  );

interface WeightOn {
  readonly weightGrams: string;
  readonly toleranceGrams: string;
  readonly isOwn: boolean;
}

/** How far the scale's own weight may be off stands with the scale, whatever the page that asked for it knew. */
function weightOn(scale: ScaleRow, { weightGrams, toleranceGrams }: Body): WeightOn {
  const own = scale.check_weight_grams;
  const isOwn = own !== null && exact(own).eq(weightGrams);
  return {
    weightGrams,
    toleranceGrams: isOwn ? (scale.check_tolerance_grams ?? '0') : toleranceGrams,
    isOwn,
  };
}

/** What this scale cannot have shown was misread: no check failed. A negative reading it can show. */
function whyNoReading(scale: ScaleRow, readingGrams: string): Problem[] {
  const found = exact(readingGrams).toFixed();
  if (exact(readingGrams).abs().gt(scale.capacity_grams))
    return [problem('reading-above-capacity', 'readingGrams', { found, allowed: scale.capacity_grams })];
  return exact(readingGrams).mod(scale.readability_grams).isZero()
    ? []
    : [problem('reading-not-a-step', 'readingGrams', { found, allowed: scale.readability_grams })];
}
