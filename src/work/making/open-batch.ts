import type { Stamp } from '../../contract/index.ts';
import { problem } from '../../core/problem.ts';
import { type BatchHead, findBatch, giveUp, type Writer } from '../../storage/index.ts';
import { refuseBefore, thingNotFound } from '../record.ts';

/**
 * A batch that is still being made; what is made or given up takes no more entries. `isAfterAll`: what went in while a
 * tablet was away went in, whatever became of the batch since.
 */
export async function openBatch(
  tx: Writer,
  id: string,
  stamp: Stamp,
  { isAfterAll = false }: { readonly isAfterAll?: boolean } = {},
): Promise<BatchHead> {
  const batch = await findBatch(tx, id);
  if (!batch) giveUp(thingNotFound('id', id));
  if (batch.outcome !== null && !isAfterAll) {
    giveUp(problem('batch-not-making', `batch ${batch.number}`, { found: batch.outcome, allowed: 'making' }));
  }
  refuseBefore(stamp, batch.started_at, `batch ${batch.number}`);
  return batch;
}
