import { problem } from '../../core/problem.ts';
import {
  giveUp,
  insertRevisionStep,
  insertStepRecord,
  listBatchLines,
  listBatchSteps,
} from '../../storage/index.ts';
import { record } from '../record.ts';
import type { UseCase } from '../use-case.ts';
import { viewBatch } from './batch-view.ts';
import { openWithoutRecipe } from './begin-without-recipe.ts';

/** A step as it was done, between the weighings: it is recorded, and becomes one of the method. */
export const stepWithoutRecipe: UseCase<'stepWithoutRecipe'> = (context, { body, params }) =>
  record(
    context,
    body.stamp,
    async (tx, tell) => {
      const { batchId, row } = await openWithoutRecipe(tx, params.id ?? '', body.stamp);
      // Made again by hand, the method is the one that stands.
      if (row.is_first === 0) giveUp(problem('method-stands', 'what'));
      const lines = await listBatchLines(tx, batchId);
      const position = (await listBatchSteps(tx, batchId)).length;
      const stage = lines.at(-1)?.stage ?? '';
      const { kind, what, celsius, minutes } = body;
      await tell({
        kind: 'step-without-recipe',
        subjectKind: 'batch',
        subjectId: batchId,
        payload: { position, stage, kind, what, celsius, minutes },
      });
      await insertRevisionStep(tx, {
        revision_id: row.revision_id,
        position,
        stage,
        kind,
        what,
        least_celsius: celsius,
        most_celsius: null,
        minutes,
        caution: '',
        round_minutes: null,
        rounds: null,
        grows_percent: null,
        least_hours: null,
        most_hours: null,
      });
      await insertStepRecord(tx, {
        entry_id: body.stamp.id,
        batch_id: batchId,
        position,
        celsius,
        minutes,
        remark: '',
        weighed: null,
      });
      return batchId;
    },
    (id) => viewBatch(context, id),
  );
