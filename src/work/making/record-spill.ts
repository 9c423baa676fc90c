import { problem } from '../../core/problem.ts';
import { microgramsFromGrams } from '../../core/quantity/index.ts';
import {
  type BatchLineNow,
  findBatchLine,
  giveUp,
  insertMovements,
  insertSpill,
  insertStrike,
  type LotAtHand,
  listAdditionsAt,
  listLotsAtHand,
  listMovementsOfEntry,
  orGiveUp,
  type Writer,
} from '../../storage/index.ts';
import type { Context } from '../context.ts';
import { lotTooSmall, spreadOverPlaces } from '../lot-use.ts';
import { newMovement } from '../new-movement.ts';
import { gramsText } from '../quantity-text.ts';
import { record, thingNotFound } from '../record.ts';
import type { RequestOf, UseCase } from '../use-case.ts';
import { viewBatch } from './batch-view.ts';
import { openBatch } from './open-batch.ts';

type Body = RequestOf<'recordSpill'>['body'];

/**
 * Weighed out and spilt before it went in: the lot has it no longer, and the bowl never had it. Where it was entered
 * already, that weighing is struck in the same entry, and what was spilt of it is taken from the lot anew.
 */
export const recordSpill: UseCase<'recordSpill'> = (context, { body, params }) =>
  record(
    context,
    body.stamp,
    async (tx, tell) => {
      const batch = await openBatch(tx, params.id ?? '', body.stamp);
      const line = await findBatchLine(tx, batch.id, body.position);
      if (!line) giveUp(thingNotFound('position', String(body.position)));
      await refuseNotOfLine(tx, line, body);
      const spiltUg = orGiveUp(microgramsFromGrams(body.grams, 'grams'));
      await tell({
        kind: 'spill-recorded',
        subjectKind: 'batch',
        subjectId: batch.id,
        payload: {
          position: body.position,
          lotId: body.lotId,
          spiltGrams: gramsText(spiltUg),
          reason: body.reason,
          struckEntryId: body.entryId,
        },
      });
      if (body.entryId !== null) await takeBack(context, tx, { entryId: body.entryId, body });
      await insertSpill(tx, {
        entry_id: body.stamp.id,
        batch_id: batch.id,
        position: body.position,
        lot_id: body.lotId,
        spilt_ug: spiltUg,
        reason: body.reason,
      });
      await bin(context, tx, { batchId: batch.id, spiltUg, body });
      return batch.id;
    },
    (id) => viewBatch(context, id),
  );

/** What is struck with it was weighed in here, and what is spilt is of what goes in here, or of what did. */
async function refuseNotOfLine(tx: Writer, line: BatchLineNow, body: Body): Promise<void> {
  const own = await listAdditionsAt(tx, line.batch_id, line.position);
  const struck = own.find((row) => row.entry_id === body.entryId);
  if (body.entryId !== null && !struck) giveUp(thingNotFound('entryId', body.entryId));
  if (struck?.is_struck) giveUp(problem('entry-struck-already', 'entryId', { found: struck.happened_at }));
  const lot = await findLot(tx, body.lotId);
  const isOfLine = lot.item_id === line.item_id || own.some((row) => row.lot_id === lot.id);
  if (!isOfLine) giveUp(problem('lot-of-another-item', lot.number, { found: lot.item_name }));
}

async function takeBack(
  context: Context,
  tx: Writer,
  { entryId, body }: { readonly entryId: string; readonly body: Body },
): Promise<void> {
  const taken = (await listMovementsOfEntry(tx, entryId)).filter((row) => row.kind === 'used');
  if (taken.some((row) => row.lot_id !== body.lotId))
    giveUp(problem('spilt-of-another-lot', 'lotId', { found: body.lotId }));
  await insertStrike(tx, { entry_id: body.stamp.id, struck_entry_id: entryId, reason: body.reason });
  await insertMovements(
    tx,
    taken.map((row) =>
      newMovement(context, body.stamp.id, {
        ...row,
        kind: 'returned',
        quantity: -row.quantity,
        reason: body.reason,
      }),
    ),
  );
}

/** After what was entered went back: the lot is read again. */
async function bin(
  context: Context,
  tx: Writer,
  { batchId, spiltUg, body }: { readonly batchId: string; readonly spiltUg: number; readonly body: Body },
): Promise<void> {
  const lot = await findLot(tx, body.lotId);
  if (spiltUg > lot.on_hand) giveUp(lotTooSmall(lot, spiltUg));
  await insertMovements(
    tx,
    spreadOverPlaces(lot, spiltUg).map(({ place_id, quantity }) =>
      newMovement(context, body.stamp.id, {
        lot_id: lot.id,
        place_id,
        kind: 'binned',
        quantity: -quantity,
        batch_id: batchId,
        reason: body.reason,
      }),
    ),
  );
}

async function findLot(tx: Writer, lotId: string): Promise<LotAtHand> {
  const [lot] = await listLotsAtHand(tx, { lotIds: [lotId] });
  if (!lot) giveUp(thingNotFound('lotId', lotId));
  if (lot.unit !== 'g') giveUp(problem('lot-of-another-item', lot.number, { found: lot.item_name }));
  return lot;
}
