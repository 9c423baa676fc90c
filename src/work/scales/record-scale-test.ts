import { toText } from '../../core/quantity/index.ts';
import { findRepeatability } from '../../core/weighing/index.ts';
import { findScale, giveUp, insertScaleTest, orGiveUp } from '../../storage/index.ts';
import { instantInUtc } from '../instant-in-utc.ts';
import { record, thingNotFound } from '../record.ts';
import type { UseCase } from '../use-case.ts';
import { viewScaleRecord } from './get-scale-record.ts';

/** Places that a standard deviation is kept with: more than any scale tells, so that what counts is not rounded. */
const PLACES = 12;

/** Ten weighings of one weight. Every test stands; the latest one counts. */
export const recordScaleTest: UseCase<'recordScaleTest'> = (context, { params, body }) =>
  record(
    context,
    { ...body.stamp, at: instantInUtc(body.stamp.at) },
    async (tx, tell) => {
      const scale = await findScale(tx, params.id ?? '');
      if (!scale) giveUp(thingNotFound('id', params.id ?? ''));
      const found = orGiveUp(
        findRepeatability(body.readings, {
          readabilityGrams: scale.readability_grams,
          capacityGrams: scale.capacity_grams,
        }),
      );
      const row = {
        entry_id: body.stamp.id,
        scale_id: scale.id,
        weight_grams: body.weightGrams,
        readings: JSON.stringify(body.readings),
        readability_grams: scale.readability_grams,
        deviation_grams: toText(found.deviationGrams.toDecimalPlaces(PLACES)),
      };
      const { entry_id: _, ...payload } = row;
      await tell({ kind: 'scale-tested', subjectKind: 'scale', subjectId: scale.id, payload });
      await insertScaleTest(tx, row);
      return scale.id;
    },
    (id) => viewScaleRecord(context, id),
  );
