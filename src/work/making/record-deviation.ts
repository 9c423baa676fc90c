import { problem } from '../../core/problem.ts';
import {
  findBatch,
  giveUp,
  insertDeviation,
  listBatchLines,
  listBatchSteps,
  type Writer,
} from '../../storage/index.ts';
import { record, refuseBefore, thingNotFound } from '../record.ts';
import type { UseCase } from '../use-case.ts';
import { viewBatch } from './batch-view.ts';

/** May be written while making and afterwards: what was noticed late belongs into the record too. */
export const recordDeviation: UseCase<'recordDeviation'> = (context, { body, params }) =>
  record(
    context,
    body.stamp,
    async (tx, tell) => {
      const batch = await findBatch(tx, params.id ?? '');
      if (!batch) giveUp(thingNotFound('id', params.id ?? ''));
      const { stamp, screen, what, why } = body;
      refuseBefore(stamp, batch.started_at, `batch ${batch.number}`);
      if (screen !== null) await refuseUnknownScreen(tx, batch.id, screen);
      await tell({
        kind: 'deviation-recorded',
        subjectKind: 'batch',
        subjectId: batch.id,
        payload: { screen, what, why },
      });
      await insertDeviation(tx, { entry_id: stamp.id, batch_id: batch.id, screen, what, why });
      return batch.id;
    },
    (id) => viewBatch(context, id),
  );

async function refuseUnknownScreen(tx: Writer, batchId: string, screen: number): Promise<void> {
  const screens = (await listBatchLines(tx, batchId)).length + (await listBatchSteps(tx, batchId)).length;
  if (screen >= screens) giveUp(problem('screen-unknown', 'screen', { found: screen + 1, allowed: screens }));
}
