import { problem } from '../../core/problem.ts';
import { exact } from '../../core/quantity/index.ts';
import { giveUp, insertStepBegun, listStepsBegun } from '../../storage/index.ts';
import { record } from '../record.ts';
import type { UseCase } from '../use-case.ts';
import { viewBatch } from './batch-view.ts';
import { openBatch } from './open-batch.ts';
import { type MethodStep, refuseDone, stepAt } from './step-at.ts';

/** A step has begun, and its time runs on every tablet. Begun twice, the second hand is told who was first. */
export const beginStep: UseCase<'beginStep'> = (context, { body, params }) =>
  record(
    context,
    body.stamp,
    async (tx, tell) => {
      const batch = await openBatch(tx, params.id ?? '', body.stamp);
      const { stamp, position, load, round, minutes } = body;
      const step = await stepAt(tx, batch.id, position);
      await refuseDone(tx, batch.id, step);
      if (load > 1 || round > 1) refuseNoRounds(step, load, round);
      if (minutes !== null && exact(minutes).lte(0))
        giveUp(problem('value-not-above', 'minutes', { found: minutes, allowed: 0 }));
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
        payload: { position, load, round, minutes },
      });
      await insertStepBegun(tx, { entry_id: stamp.id, batch_id: batch.id, position, load, round, minutes });
      return batch.id;
    },
    (id) => viewBatch(context, id),
  );

/** Whipping goes in loads and rounds; what melts is heated, then held hot. */
function refuseNoRounds(step: MethodStep, load: number, round: number): void {
  if (step.kind === 'whip' || (step.kind === 'melt' && load === 1 && round === 2)) return;
  giveUp(problem('step-without-rounds', step.what, { found: round, allowed: 1 }));
}
