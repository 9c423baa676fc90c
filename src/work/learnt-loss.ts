import { type BatchLoss, type LearntLoss, learnLoss } from '../core/filling/index.ts';
import { gramsFromMicrograms } from '../core/quantity/index.ts';
import { type BatchLossRow, listBatchLosses, type Reader } from '../storage/index.ts';

const lossOf = (row: BatchLossRow): BatchLoss => ({
  inGrams: gramsFromMicrograms(row.in_ug),
  lostGrams: gramsFromMicrograms(row.lost_ug),
});

export interface BatchesBefore {
  readonly learnt: LearntLoss | null;
  /** Of the batch that is asked about; null: it is not filled to its end. */
  readonly own: BatchLoss | null;
}

/** What stays behind of batches of this formula, or of the workshop; the batch that is asked about left out. */
export async function readLearntLoss(
  db: Reader,
  formulaId: string,
  batchId: string | null = null,
): Promise<BatchesBefore> {
  const rows = await listBatchLosses(db);
  // A trial is there to be tried, and no rule of what stays behind.
  const others = rows.filter((row) => row.batch_id !== batchId && row.purpose === 'sale');
  const own = rows.find((row) => row.batch_id === batchId);
  return {
    learnt: learnLoss(others.filter((row) => row.formula_id === formulaId).map(lossOf), others.map(lossOf)),
    own: own ? lossOf(own) : null,
  };
}
