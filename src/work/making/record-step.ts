import type { steps } from '../../contract/index.ts';
import { judgeCup } from '../../core/filling/index.ts';
import { askAboutCup, judgeBowlWeight, judgeStep } from '../../core/making/index.ts';
import { type Problem, problem } from '../../core/problem.ts';
import { type Exact, exact } from '../../core/quantity/index.ts';
import {
  type BatchHead,
  giveUp,
  insertDeviation,
  insertStepRecord,
  type Writer,
} from '../../storage/index.ts';
import { record } from '../record.ts';
import type { RequestOf, UseCase } from '../use-case.ts';
import { viewBatch } from './batch-view.ts';
import { bowlBeforeStep } from './bowl-before-step.ts';
import { findScreen } from './find-screen.ts';
import { openBatch } from './open-batch.ts';
import { refuseDone, stepAt } from './step-at.ts';

type Body = RequestOf<'recordStep'>['body'];

/**
 * A step done. A second record of the same step is refused until the first is struck; a temperature that the step does
 * not want, a shorter time and an odd weight of the bowl need what was done differently and why, as a weighing does.
 */
export const recordStep: UseCase<'recordStep'> = (context, { body, params }) =>
  record(
    context,
    body.stamp,
    async (tx, tell) => {
      const batch = await openBatch(tx, params.id ?? '', body.stamp);
      const { stamp, position, celsius, minutes, remark, weighed, deviation } = body;
      const step = await stepAt(tx, batch.id, position);
      await refuseDone(tx, batch.id, step);
      if (weighed) refuseMisweighed(step.kind, weighed);
      if (!deviation) await refuseUnexplained(tx, batch, body);
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

async function refuseUnexplained(tx: Writer, batch: BatchHead, body: Body): Promise<void> {
  const before = await bowlBeforeStep(tx, batch, body.position);
  if (!before) return;
  const { screen, bowlGrams } = before;
  const asked = judgeStep({ ...screen, kind: screen.stepKind }, body);
  const odd = body.weighed ? judgeWeighed(screen.stepKind, body.weighed, bowlGrams) : [];
  const problems = [...asked, ...odd];
  if (problems.length > 0) giveUp(...problems);
}

function judgeWeighed(kind: string, weighed: steps.StepWeighed, bowlGrams: Exact): Problem[] {
  const { cupMl } = weighed;
  if (kind === 'weigh') return judgeBowlWeight(netOf(weighed), bowlGrams, 'weighed.grossGrams');
  return kind === 'cup' && cupMl !== null ? askAboutCup({ ...weighed, cupMl }, bowlGrams, 'weighed') : [];
}

const netOf = ({ grossGrams, tareGrams }: steps.StepWeighed) => exact(grossGrams).minus(tareGrams);

/** A cup needs its volume; what cannot be its weight is asked about before it stands in the record. */
function refuseMisweighed(kind: string, weighed: steps.StepWeighed): void {
  if (kind === 'cup' && weighed.cupMl === null) giveUp(problem('number-missing', 'weighed.cupMl'));
  const cup = judgeCup({ ...weighed, cupMl: weighed.cupMl ?? 1 });
  if (!cup.ok) giveUp(...cup.problems.map((each) => ({ ...each, where: `weighed.${each.where}` })));
}
