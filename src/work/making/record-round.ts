import type { steps } from '../../contract/index.ts';
import { judgeCup } from '../../core/filling/index.ts';
import { askAboutCup } from '../../core/making/index.ts';
import { problem } from '../../core/problem.ts';
import { ZERO } from '../../core/quantity/index.ts';
import { type BatchHead, giveUp, insertWhipRound, listWhipRounds, type Writer } from '../../storage/index.ts';
import { record } from '../record.ts';
import type { RequestOf, UseCase } from '../use-case.ts';
import { viewBatch } from './batch-view.ts';
import { bowlBeforeStep } from './bowl-before-step.ts';
import { openBatch } from './open-batch.ts';
import { type MethodStep, refuseDone, stepAt } from './step-at.ts';

type Body = RequestOf<'recordRound'>['body'];

/** A round of whipping, looked at: each is an entry of its own, so that it is known when to stop the next time. */
export const recordRound: UseCase<'recordRound'> = (context, { body, params }) =>
  record(
    context,
    body.stamp,
    async (tx, tell) => {
      const batch = await openBatch(tx, params.id ?? '', body.stamp);
      const { stamp, position, cups, sure, ...round } = body;
      const step = await stepAt(tx, batch.id, position);
      if (step.kind !== 'whip') giveUp(problem('step-without-rounds', step.what));
      await refuseDone(tx, batch.id, step);
      await refuseSecond(tx, batch.id, step, body);
      refuseMisweighedCups(cups);
      await refuseDoubtfulCups(tx, batch, body);
      await tell({
        kind: 'whip-round-recorded',
        subjectKind: 'batch',
        subjectId: batch.id,
        payload: { position, ...round, cups, sure },
      });
      await insertWhipRound(tx, {
        entry_id: stamp.id,
        batch_id: batch.id,
        position,
        ...round,
        cups: JSON.stringify(cups),
      });
      return batch.id;
    },
    (id) => viewBatch(context, id),
  );

async function refuseSecond(
  tx: Writer,
  batchId: string,
  step: MethodStep,
  { load, round, goes }: Body,
): Promise<void> {
  const standing = (await listWhipRounds(tx, [batchId])).filter(
    (row) => row.position === step.position && row.load === load && !row.is_struck,
  );
  const same = standing.find((row) => row.round === round);
  if (same) {
    const parameters = { by: same.person_name, round };
    giveUp(problem('round-done-already', step.what, { found: same.happened_at, parameters }));
  }
  // A load that is whipped has no later round: the other hand stopped it, or stops what was whipped on.
  const stop = standing.find((row) => row.goes === 'stop' && row.round < round);
  const later = goes === 'stop' ? standing.find((row) => row.round > round) : undefined;
  const other = stop ?? later;
  if (!other) return;
  const [stopped, beside] = stop ? [stop.round, round] : [round, other.round];
  const parameters = { by: other.person_name, stopped, round: beside };
  giveUp(problem('load-stopped-already', step.what, { found: other.happened_at, parameters }));
}

/** More than lies in the bowl, or a density that nothing whipped has: asked, unless somebody said that it is so. */
async function refuseDoubtfulCups(
  tx: Writer,
  batch: BatchHead,
  { position, cups, sure }: Body,
): Promise<void> {
  const bowlGrams = (await bowlBeforeStep(tx, batch, position))?.bowlGrams ?? ZERO;
  const problems = cups
    .flatMap((cup, index) => askAboutCup(cup, bowlGrams, `cups[${index}]`))
    .filter(({ code }) => !sure.includes(code));
  if (problems.length > 0) giveUp(...problems);
}

/** What cannot be a cup's weight is asked about before it stands in the record. */
export function refuseMisweighedCups(cups: readonly steps.FullCup[]): void {
  const problems = cups.flatMap((cup, index) => {
    const judged = judgeCup(cup);
    return judged.ok
      ? []
      : judged.problems.map((each) => ({ ...each, where: `cups[${index}].${each.where}` }));
  });
  if (problems.length > 0) giveUp(...problems);
}
