import { problem } from '../../core/problem.ts';
import { giveUp, insertStrike, listFillWeights } from '../../storage/index.ts';
import { record, thingNotFound } from '../record.ts';
import type { UseCase } from '../use-case.ts';
import { openRun } from './open-run.ts';
import { viewRun } from './run-view.ts';

/** The tin was refilled or put aside: its weight stays readable and counts no more. */
export const strikeFill: UseCase<'strikeFill'> = (context, { body, params }) =>
  record(
    context,
    body.stamp,
    async (tx, tell) => {
      const run = await openRun(tx, params.id ?? '', body.stamp);
      const { stamp, entryId, reason } = body;
      const weight = (await listFillWeights(tx, [run.id])).find((row) => row.entry_id === entryId);
      if (!weight) giveUp(thingNotFound('entryId', entryId));
      if (weight.is_struck) giveUp(problem('entry-struck-already', 'entryId', { found: weight.happened_at }));
      await tell({
        kind: 'weight-struck',
        subjectKind: 'filling-run',
        subjectId: run.id,
        payload: { struckEntryId: entryId, number: weight.number, reason },
      });
      await insertStrike(tx, { entry_id: stamp.id, struck_entry_id: entryId, reason });
      return run.id;
    },
    (id) => viewRun(context, id),
  );
