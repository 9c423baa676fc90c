import { problem } from '../../core/problem.ts';
import { type BatchHead, findBatch, giveUp, type Writer } from '../../storage/index.ts';
import { thingNotFound } from '../record.ts';

/** A batch that is still being made; what is made or given up takes no more entries. */
export async function openBatch(tx: Writer, id: string): Promise<BatchHead> {
  const batch = await findBatch(tx, id);
  if (!batch) giveUp(thingNotFound('id', id));
  if (batch.outcome !== null) {
    giveUp(problem('batch-not-making', `batch ${batch.number}`, { found: batch.outcome, allowed: 'making' }));
  }
  return batch;
}
