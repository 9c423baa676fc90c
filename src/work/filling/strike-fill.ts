import { problem } from '../../core/problem.ts';
import { giveUp, insertStrike, insertTinFate, listFillWeights } from '../../storage/index.ts';
import { record, thingNotFound } from '../record.ts';
import type { UseCase } from '../use-case.ts';
import { openRun } from './open-run.ts';
import { viewRun } from './run-view.ts';

/** The tin was put aside, or its weight was a slip: it stays readable and counts no more. */
export const strikeFill: UseCase<'strikeFill'> = (context, { body, params }) =>
  record(
    context,
    body.stamp,
    async (tx, tell) => {
      const run = await openRun(tx, params.id ?? '', body.stamp);
      const { stamp, entryId, reason, fate } = body;
      const weight = (await listFillWeights(tx, [run.id])).find((row) => row.entry_id === entryId);
      if (!weight) giveUp(thingNotFound('entryId', entryId));
      if (weight.is_struck) giveUp(problem('entry-struck-already', 'entryId', { found: weight.happened_at }));
      if (weight.is_refilled) giveUp(problem('tin-weighed-again', 'entryId', { found: weight.tin }));
      await tell({
        kind: 'weight-struck',
        subjectKind: 'filling-run',
        subjectId: run.id,
        payload: { struckEntryId: entryId, number: weight.number, reason, ...(fate !== null && { fate }) },
      });
      await insertStrike(tx, { entry_id: stamp.id, struck_entry_id: entryId, reason });
      if (fate !== null) await insertTinFate(tx, { entry_id: stamp.id, fate });
      return run.id;
    },
    (id) => viewRun(context, id),
  );
