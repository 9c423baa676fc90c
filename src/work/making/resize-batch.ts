import { problem } from '../../core/problem.ts';
import { toText } from '../../core/quantity/index.ts';
import { type BatchTargetRow, giveUp, insertResize, orGiveUp } from '../../storage/index.ts';
import { say } from '../../words/index.ts';
import { inside } from '../inside.ts';
import { gramsText } from '../quantity-text.ts';
import { record } from '../record.ts';
import type { UseCase } from '../use-case.ts';
import { viewBatch } from './batch-view.ts';
import { type LaidResize, type LineThen, layOutResize } from './lay-out-resize.ts';
import { openBatch } from './open-batch.ts';
import type { WeighingNote } from './weighing-note.ts';

/**
 * Makes the batch as large, or as small, as what is in of one line: every line gets a target anew, the percentages hold.
 * Upon what was shown: where something was weighed, struck or taken since, it is shown again first.
 */
export const resizeBatch: UseCase<'resizeBatch'> = (context, { body, params }) =>
  record(
    context,
    body.stamp,
    async (tx, tell) => {
      const batch = await openBatch(tx, params.id ?? '', body.stamp);
      const wish = { position: body.position, moreUg: 0 };
      const laid = orGiveUp(await layOutResize(inside(context, tx), batch, wish));
      const [hindrance] = laid.hindrances;
      if (hindrance)
        giveUp(
          problem('resize-hindered', `batch ${batch.number}`, { parameters: { reason: say(hindrance) } }),
        );
      if (laid.upon !== body.upon) giveUp(problem('resize-changed', `batch ${batch.number}`));
      const cause = laid.isUg >= laid.wasUg ? 'over' : 'under';
      const resize = {
        entry_id: body.stamp.id,
        batch_id: batch.id,
        cause,
        position: body.position,
        planned_ug: laid.isUg,
        tins: JSON.stringify(Object.fromEntries(laid.tins.map((tin) => [tin.productId, tin.is]))),
        reason: body.reason,
      };
      const targets = laid.lines.map((line) => targetOf(body.stamp.id, line));
      await tell({
        kind: 'batch-resized',
        subjectKind: 'batch',
        subjectId: batch.id,
        payload: storyOf(laid, { number: batch.number, cause, reason: body.reason }),
      });
      await insertResize(tx, resize, targets);
      return batch.id;
    },
    (id) => viewBatch(context, id),
  );

function targetOf(entryId: string, then: LineThen): BatchTargetRow {
  const { line, exact, targetUg, lowUg, highUg, weighing } = then;
  const before = JSON.parse(line.weighing) as WeighingNote;
  const note: WeighingNote = weighing
    ? {
        ...before,
        relativeError: weighing.relativeError,
        smallestWeightGrams: weighing.smallestWeightGrams,
        warning: weighing.warning,
      }
    : before;
  return {
    entry_id: entryId,
    batch_id: line.batch_id,
    position: line.position,
    exact_grams: toText(exact),
    target_ug: targetUg,
    low_ug: lowUg,
    high_ug: highUg,
    scale_id: weighing ? (weighing.scale?.id ?? null) : line.scale_id,
    weighing: JSON.stringify(note),
  };
}

const storyOf = (
  laid: LaidResize,
  more: { readonly number: string; readonly cause: string; readonly reason: string },
) => ({
  ...more,
  position: laid.position,
  wasGrams: gramsText(laid.wasUg),
  isGrams: gramsText(laid.isUg),
  tins: laid.tins.map(({ productId, is }) => ({ productId, units: is })),
  lines: laid.lines.map(({ line, exact, targetUg, lowUg, highUg }) => ({
    position: line.position,
    exactGrams: toText(exact),
    targetGrams: gramsText(targetUg),
    lowGrams: gramsText(lowUg),
    highGrams: gramsText(highUg),
  })),
});
