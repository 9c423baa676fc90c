import { judgeLoss } from '../../core/filling/index.ts';
import { exact, toText } from '../../core/quantity/index.ts';
import type { Reader } from '../../storage/index.ts';
import { readLearntLoss } from '../learnt-loss.ts';
import { saying } from '../saying.ts';
import type { RunRecords } from './run-records.ts';
import type { RunView } from './run-shapes.ts';

type Loss = NonNullable<NonNullable<RunView['closing']>['loss']>;

/** What stayed behind of the batch, beside what does as a rule; null: another run of it is still being filled. */
export async function viewLoss(db: Reader, { head, details, close }: RunRecords): Promise<Loss | null> {
  if (!close) return null;
  const { learnt, own } = await readLearntLoss(db, head.formula_id, head.batch_id);
  if (own === null) return null;
  const expected = {
    percent: learnt?.percent ?? details.bowlLossPercent,
    mostPercent: learnt?.mostPercent ?? null,
  };
  const { isAbnormal, moreGrams } = judgeLoss(own, expected);
  const percent = toText(exact(own.lostGrams).times(100).div(own.inGrams).toDecimalPlaces(1));
  const grams = toText(exact(own.lostGrams));
  return {
    percent,
    grams,
    isAbnormal,
    says: saying(isAbnormal ? 'loss-abnormal' : 'loss-usual', {
      batch: head.batch_number,
      grams: toText(exact(own.lostGrams).toDecimalPlaces(1)),
      percent,
      usual: toText(exact(expected.percent)),
      from: learnt?.from ?? 'typed',
      batches: learnt?.batches ?? 0,
      least: learnt ? toText(learnt.leastPercent) : '',
      most: learnt ? toText(learnt.mostPercent) : '',
      more: toText(moreGrams.toDecimalPlaces(1)),
    }),
  };
}
