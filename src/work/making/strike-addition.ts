import { problem } from '../../core/problem.ts';
import {
  giveUp,
  insertMovements,
  insertStrike,
  listAdditions,
  listMovementsOfEntry,
  listResizes,
  listSpills,
  listStepRecords,
  listStepsBegun,
  listWhipRounds,
  type MovementRow,
  type Writer,
} from '../../storage/index.ts';
import { newMovement } from '../new-movement.ts';
import { amountText } from '../quantity-text.ts';
import { record, thingNotFound } from '../record.ts';
import type { UseCase } from '../use-case.ts';
import { viewBatch } from './batch-view.ts';
import { openBatch } from './open-batch.ts';

/**
 * Strikes a wrong weighing, step, beginning, round, spill or resize: the entry stays readable, and what was weighed goes back to
 * the lot at the place it was taken from; without a resize the targets before it hold again, where nothing was weighed by
 * those that it set. Only while making: what is in a finished bowl cannot be taken out.
 */
export const strikeAddition: UseCase<'strikeAddition'> = (context, { body, params }) =>
  record(
    context,
    body.stamp,
    async (tx, tell) => {
      const batch = await openBatch(tx, params.id ?? '', body.stamp);
      const { stamp, entryId, reason } = body;
      await refuseUnstrikable(tx, batch.id, entryId);
      await refuseWeighedBy(tx, batch.id, entryId);
      const taken = (await listMovementsOfEntry(tx, entryId)).filter(isTaken);
      await tell({
        kind: 'entry-struck',
        subjectKind: 'batch',
        subjectId: batch.id,
        payload: {
          struckEntryId: entryId,
          reason,
          returned: taken.map((row) => ({
            lotId: row.lot_id,
            placeId: row.place_id,
            grams: amountText(-row.quantity, 'g'),
          })),
        },
      });
      await insertStrike(tx, { entry_id: stamp.id, struck_entry_id: entryId, reason });
      await insertMovements(
        tx,
        taken.map((row) =>
          newMovement(context, stamp.id, { ...row, kind: backAs(row), quantity: -row.quantity, reason }),
        ),
      );
      return batch.id;
    },
    (id) => viewBatch(context, id),
  );

/** Weighed in, or spilt; a spill may have given back what it struck, and that stays. */
const isTaken = ({ kind, quantity }: MovementRow): boolean =>
  kind === 'used' || (kind === 'binned' && quantity < 0);
/** What was thrown away by a slip is thrown away no longer, and was never in the batch. */
const backAs = ({ kind }: MovementRow): MovementRow['kind'] => (kind === 'binned' ? 'binned' : 'returned');

/** What was weighed by the targets of a resize would lie outside of its band without it, and nobody was asked why. */
async function refuseWeighedBy(tx: Writer, batchId: string, entryId: string): Promise<void> {
  const resize = (await listResizes(tx, batchId)).find((row) => row.entry_id === entryId);
  if (!resize) return;
  const since = (await listAdditions(tx, batchId)).filter((row) => !row.is_struck && row.seq > resize.seq);
  if (since.length === 0) return;
  const items = [...new Set(since.map((row) => row.lot_item_name))].join(', ');
  giveUp(problem('resize-weighed-by', 'entryId', { found: since.length, parameters: { items } }));
}

export async function refuseUnstrikable(tx: Writer, batchId: string, entryId: string): Promise<void> {
  const entries = [
    ...(await listAdditions(tx, batchId)),
    ...(await listStepRecords(tx, batchId)),
    ...(await listResizes(tx, batchId)),
    ...(await listSpills(tx, batchId)),
    ...(await listStepsBegun(tx, batchId)),
    ...(await listWhipRounds(tx, [batchId])),
  ];
  const entry = entries.find((row) => row.entry_id === entryId);
  if (!entry) giveUp(thingNotFound('entryId', entryId));
  if (entry.is_struck) giveUp(problem('entry-struck-already', 'entryId', { found: entry.happened_at }));
}
