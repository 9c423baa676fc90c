import { problem } from '../../core/problem.ts';
import {
  findBatchLine,
  giveUp,
  insertAdditionClose,
  insertDeviation,
  listAdditionsAt,
} from '../../storage/index.ts';
import { gramsText } from '../quantity-text.ts';
import { record, thingNotFound } from '../record.ts';
import type { UseCase } from '../use-case.ts';
import { viewBatch } from './batch-view.ts';
import { findScreen } from './find-screen.ts';
import { openBatch } from './open-batch.ts';
import { standingAt, weighState } from './weigh-state.ts';

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
