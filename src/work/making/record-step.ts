import type { steps } from '../../contract/index.ts';
import { judgeCup } from '../../core/filling/index.ts';
import { findBowlGrams, judgeBowlWeight, judgeStep, readBowlEvents } from '../../core/making/index.ts';
import { problem } from '../../core/problem.ts';
import { exact } from '../../core/quantity/index.ts';
import {
  type BatchHead,
  giveUp,
  insertDeviation,
  insertStepRecord,
  listAdditions,
  listBatchLines,
  listBatchSteps,
  listStepRecords,
  type Writer,
} from '../../storage/index.ts';
import { record } from '../record.ts';
import type { RequestOf, UseCase } from '../use-case.ts';
import { buildScreens } from './batch-screens.ts';
import { viewBatch } from './batch-view.ts';
import { findBase } from './find-base.ts';
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

/** As its screen stands, with what lies in the bowl before it. */
async function screensOf(tx: Writer, batch: BatchHead) {
  return buildScreens({
    lines: await listBatchLines(tx, batch.id),
    steps: await listBatchSteps(tx, batch.id),
    additions: await listAdditions(tx, batch.id),
    stepRecords: await listStepRecords(tx, batch.id),
    base: await findBase(tx, batch),
  });
}

async function refuseUnexplained(tx: Writer, batch: BatchHead, body: Body): Promise<void> {
  const screens = await screensOf(tx, batch);
  const at = screens.findIndex((each) => each.kind === 'step' && each.position === body.position);
  const screen = screens[at];
  if (screen?.kind !== 'step') return;
  const asked = judgeStep({ ...screen, kind: screen.stepKind }, body);
  const net = screen.stepKind === 'weigh' && body.weighed ? netOf(body.weighed) : null;
  const bowl = findBowlGrams(readBowlEvents(screens.slice(0, at)));
  const odd = net === null ? [] : judgeBowlWeight(net, bowl, 'weighed.grossGrams');
  const problems = [...asked, ...odd];
  if (problems.length > 0) giveUp(...problems);
}

const netOf = ({ grossGrams, tareGrams }: steps.StepWeighed) => exact(grossGrams).minus(tareGrams);

/** A cup needs its volume; what cannot be its weight is asked about before it stands in the record. */
function refuseMisweighed(kind: string, weighed: steps.StepWeighed): void {
  if (kind === 'cup' && weighed.cupMl === null) giveUp(problem('number-missing', 'weighed.cupMl'));
  const cup = judgeCup({ ...weighed, cupMl: weighed.cupMl ?? 1 });
  if (!cup.ok) giveUp(...cup.problems.map((each) => ({ ...each, where: `weighed.${each.where}` })));
}
