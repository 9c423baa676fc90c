import { problem } from '../../core/problem.ts';
import { giveUp, insertStepRecord, listBatchSteps, listStepRecords } from '../../storage/index.ts';
import { record, thingNotFound } from '../record.ts';
import type { UseCase } from '../use-case.ts';
import { viewBatch } from './batch-view.ts';
import { openBatch } from './open-batch.ts';

/** A step done. A second record of the same step is refused until the first is struck. */
export const recordStep: UseCase<'recordStep'> = (context, { body, params }) =>
  record(
    context,
    body.stamp,
    async (tx, tell) => {
      const batch = await openBatch(tx, params.id ?? '', body.stamp);
      const { stamp, position, celsius, minutes, remark } = body;
      const step = (await listBatchSteps(tx, batch.id)).find((row) => row.position === position);
      if (!step) giveUp(thingNotFound('position', String(position)));
      const standing = (await listStepRecords(tx, batch.id)).find(
        (row) => row.position === position && !row.is_struck,
      );
      if (standing) {
        giveUp(
          problem('step-done-already', step.what, {
            found: standing.happened_at,
            parameters: { by: standing.person_name },
          }),
        );
      }
      await tell({
        kind: 'step-recorded',
        subjectKind: 'batch',
        subjectId: batch.id,
        payload: { position, celsius, minutes, remark },
      });
      await insertStepRecord(tx, {
        entry_id: stamp.id,
        batch_id: batch.id,
        position,
        celsius,
        minutes,
        remark,
      });
      return batch.id;
    },
    (id) => viewBatch(context, id),
  );
