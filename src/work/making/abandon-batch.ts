import { insertBatchClose } from '../../storage/index.ts';
import { record } from '../record.ts';
import type { UseCase } from '../use-case.ts';
import { viewBatch } from './batch-view.ts';
import { openBatch } from './open-batch.ts';

/** Gives a batch up: what was weighed in stays used, and nothing comes of it. */
export const abandonBatch: UseCase<'abandonBatch'> = (context, { body, params }) =>
  record(
    context,
    body.stamp,
    async (tx, tell) => {
      const batch = await openBatch(tx, params.id ?? '', body.stamp);
      await tell({
        kind: 'batch-abandoned',
        subjectKind: 'batch',
        subjectId: batch.id,
        payload: { number: batch.number, reason: body.reason },
      });
      await insertBatchClose(tx, {
        entry_id: body.stamp.id,
        batch_id: batch.id,
        outcome: 'abandoned',
        yield_ug: null,
        lot_id: null,
        reason: body.reason,
      });
      return batch.id;
    },
    (id) => viewBatch(context, id),
  );
