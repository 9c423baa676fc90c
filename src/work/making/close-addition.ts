import type { Market } from '../../contract/index.ts';
import { problem } from '../../core/problem.ts';
import {
  type BatchHead,
  findBatchLine,
  giveUp,
  insertAdditionClose,
  insertDeviation,
  listAdditionsAt,
  type SignedAddition,
} from '../../storage/index.ts';
import { say } from '../../words/index.ts';
import type { Context } from '../context.ts';
import { inside } from '../inside.ts';
import { workshopZone } from '../local-date.ts';
import { gramsText } from '../quantity-text.ts';
import { record, thingNotFound } from '../record.ts';
import type { UseCase } from '../use-case.ts';
import { viewBatch } from './batch-view.ts';
import { findScreen } from './find-screen.ts';
import { openJudge } from './judge-weighed.ts';
import { openBatch } from './open-batch.ts';
import { standingAt, weighState } from './weigh-state.ts';

/** What is left out makes all the rest more: that is told before it counts, as it is of what is weighed. */
async function refuseOverWithoutRest(
  within: Context,
  batch: BatchHead,
  {
    last: { position, lot_id, lot_item_name },
    inUg,
  }: { readonly last: SignedAddition; readonly inUg: number },
): Promise<void> {
  const judge = openJudge(within, {
    batchId: batch.id,
    revisionId: batch.revision_id,
    markets: JSON.parse(batch.markets) as Market[],
  });
  const wrong = await judge({ position, lot_id, actual_ug: 0 });
  if (wrong === null || (await judge()) !== null) return;
  const reason = say(wrong, { timeZone: await workshopZone(within) });
  giveUp(
    problem('closed-over-limits', 'position', {
      found: gramsText(inUg),
      parameters: { item: lot_item_name, reason },
    }),
  );
}

/**
 * Of what was weighed in parts, or of what a larger batch asks more of: that is all there is, and the position is done
 * with what is in.
 */
export const closeAddition: UseCase<'closeAddition'> = (context, { body, params }) =>
  record(
    context,
    body.stamp,
    async (tx, tell) => {
      const batch = await openBatch(tx, params.id ?? '', body.stamp);
      const line = await findBatchLine(tx, batch.id, body.position);
      if (!line) giveUp(thingNotFound('position', String(body.position)));
      const additions = await listAdditionsAt(tx, batch.id, body.position);
      const state = weighState(line, additions);
      if (state.isDone)
        giveUp(problem('addition-done-already', 'position', { found: gramsText(state.inUg) }));
      const last = standingAt(line, additions).at(-1);
      if (!last) giveUp(problem('nothing-weighed-yet', 'position'));
      if (batch.purpose === 'sale' && !body.isOverKnown)
        await refuseOverWithoutRest(inside(context, tx), batch, { last, inUg: state.inUg });
      await tell({
        kind: 'addition-closed',
        subjectKind: 'batch',
        subjectId: batch.id,
        payload: {
          position: body.position,
          afterEntryId: last.entry_id,
          inGrams: gramsText(state.inUg),
          targetGrams: gramsText(line.target_ug),
          deviation: body.deviation,
        },
      });
      const entry = { entry_id: body.stamp.id, batch_id: batch.id };
      await insertAdditionClose(tx, { ...entry, position: body.position, after_entry_id: last.entry_id });
      await insertDeviation(tx, {
        ...entry,
        ...body.deviation,
        screen: await findScreen(tx, batch.id, 'addition', body.position),
      });
      return batch.id;
    },
    (id) => viewBatch(context, id),
  );
