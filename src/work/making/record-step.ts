import type { making } from '../../contract/index.ts';
import { judgeCup } from '../../core/filling/index.ts';
import { problem } from '../../core/problem.ts';
import { exact } from '../../core/quantity/index.ts';
import {
  giveUp,
  insertDeviation,
  insertStepRecord,
  listBatchSteps,
  listStepRecords,
} from '../../storage/index.ts';
import { record, thingNotFound } from '../record.ts';
import type { UseCase } from '../use-case.ts';
import { viewBatch } from './batch-view.ts';
import { findScreen } from './find-screen.ts';
import { openBatch } from './open-batch.ts';

/**
 * A step done. A second record of the same step is refused until the first is struck; a temperature that the step does
 * not want needs what was done differently and why, as a weight does.
 */
export const recordStep: UseCase<'recordStep'> = (context, { body, params }) =>
  record(
    context,
    body.stamp,
    async (tx, tell) => {
      const batch = await openBatch(tx, params.id ?? '', body.stamp);
      const { stamp, position, celsius, minutes, remark, weighed, deviation } = body;
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
      if (weighed) refuseMisweighed(step.kind, weighed);
      if (!deviation) refuseOtherHeat(step, celsius);
      await tell({
        kind: 'step-recorded',
        subjectKind: 'batch',
        subjectId: batch.id,
        payload: { position, celsius, minutes, remark, weighed, deviation },
      });
      await insertStepRecord(tx, {
        entry_id: stamp.id,
        batch_id: batch.id,
        position,
        celsius,
        minutes,
        remark,
        weighed: weighed && JSON.stringify(weighed),
      });
      if (deviation) {
        const screen = await findScreen(tx, batch.id, 'step', position);
        await insertDeviation(tx, { entry_id: stamp.id, batch_id: batch.id, ...deviation, screen });
      }
      return batch.id;
    },
    (id) => viewBatch(context, id),
  );

type Step = Awaited<ReturnType<typeof listBatchSteps>>[number];

/** Both ends of what is wanted are still wanted. */
function refuseOtherHeat(step: Step, celsius: string | null): void {
  if (celsius === null) return;
  const { least_celsius: least, most_celsius: most, what } = step;
  const isBelow = least !== null && exact(celsius).lt(least);
  const isAbove = most !== null && exact(celsius).gt(most);
  if (!isBelow && !isAbove) return;
  const parameters = { step: what, least: least ?? '', most: most ?? '' };
  giveUp(problem('heat-not-wanted', 'celsius', { found: celsius, parameters }));
}

/** A cup needs its volume; what cannot be its weight is asked about before it stands in the record. */
function refuseMisweighed(kind: string, weighed: making.StepWeighed): void {
  if (kind === 'cup' && weighed.cupMl === null) giveUp(problem('number-missing', 'weighed.cupMl'));
  const cup = judgeCup({ ...weighed, cupMl: weighed.cupMl ?? 1 });
  if (!cup.ok) giveUp(...cup.problems.map((each) => ({ ...each, where: `weighed.${each.where}` })));
}
