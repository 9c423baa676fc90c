import { problem } from '../../core/problem.ts';
import { giveUp, insertStepBegun, listStepsBegun } from '../../storage/index.ts';
import { record } from '../record.ts';
import type { UseCase } from '../use-case.ts';
import { viewBatch } from './batch-view.ts';
import { openBatch } from './open-batch.ts';
import { refuseDone, stepAt } from './step-at.ts';

/** A step has begun, and its time runs on every tablet. Begun twice, the second hand is told who was first. */
export const beginStep: UseCase<'beginStep'> = (context, { body, params }) =>
  record(
    context,
    body.stamp,
    async (tx, tell) => {
      const batch = await openBatch(tx, params.id ?? '', body.stamp);
      const { stamp, position, load, round } = body;
      const step = await stepAt(tx, batch.id, position);
      await refuseDone(tx, batch.id, step);
      if (step.kind !== 'whip' && (load !== 1 || round !== 1))
        giveUp(problem('step-without-rounds', step.what, { found: round, allowed: 1 }));
      const standing = (await listStepsBegun(tx, batch.id)).find(
        (row) => row.position === position && row.load === load && row.round === round && !row.is_struck,
      );
      if (standing) {
        giveUp(
          problem('step-begun-already', step.what, {
            found: standing.happened_at,
            parameters: { by: standing.person_name },
          }),
        );
      }
      await tell({
        kind: 'step-begun',
        subjectKind: 'batch',
        subjectId: batch.id,
        payload: { position, load, round },
      });
      await insertStepBegun(tx, { entry_id: stamp.id, batch_id: batch.id, position, load, round });
      return batch.id;
    },
    (id) => viewBatch(context, id),
  );
