import { problem } from '../../core/problem.ts';
import {
  giveUp,
  insertDispatch,
  insertMovements,
  insertReservations,
  listFreeProductLots,
  type OrderRow,
  shelfPlaceId,
  type Writer,
} from '../../storage/index.ts';
import { workshopToday } from '../local-date.ts';
import { record } from '../record.ts';
import type { UseCase } from '../use-case.ts';
import { viewOne } from './get-order.ts';
import { viewOrders } from './order-view.ts';
import { chooseTins, type Keeping, openOrder } from './reserve-order.ts';

/** Sends what is kept for the order, and first keeps what is free: tins of released filling runs only. */
export const dispatchOrder: UseCase<'dispatchOrder'> = (context, { body, params }) =>
  record(
    context,
    body.stamp,
    async (tx, tell) => {
      const order = await openOrder(tx, params.id ?? '');
      const kept = await keptFor(tx, order);
      const fresh = await chooseTins(tx, order, await workshopToday(context));
      const parcel = merge([...kept, ...fresh]);
      if (parcel.length === 0) giveUp(problem('nothing-to-send', 'order', { found: order.number }));
      const dispatchId = context.machine.newId();
      await tell({
        kind: 'order-dispatched',
        subjectKind: 'order',
        subjectId: order.id,
        payload: { dispatchId, parcel, tracking: body.tracking },
      });
      await insertDispatch(tx, {
        id: dispatchId,
        entry_id: body.stamp.id,
        order_id: order.id,
        tracking: body.tracking,
      });
      await insertReservations(
        tx,
        kept.map((row) => ({ ...row, units: -row.units, entry_id: body.stamp.id })),
      );
      await bookOut(tx, parcel, body.stamp.id, dispatchId, context.machine.newId);
      return order.id;
    },
    async (id) => {
      const view = await viewOne(context, id);
      return view.ok ? { ok: true, value: { id, order: view.value } } : view;
    },
  );

/** What is kept for the order and may still go: a lot blocked or rejected since stays here, and is named. */
async function keptFor(tx: Writer, order: OrderRow): Promise<Keeping[]> {
  const [view] = await viewOrders(tx, [order]);
  const kept: Keeping[] = [];
  for (const line of view?.lines ?? []) {
    const sendable = new Set(
      (await listFreeProductLots(tx, line.productId, '0000-01-01')).map((lot) => lot.id),
    );
    for (const row of line.reserved) {
      if (!sendable.has(row.lotId)) giveUp(problem('lot-not-released', 'order', { found: row.lotNumber }));
      kept.push({ order_line_id: line.id, lot_id: row.lotId, units: row.units });
    }
  }
  return kept;
}

function merge(rows: readonly Keeping[]): Keeping[] {
  const sums = new Map<string, Keeping>();
  for (const row of rows) {
    const key = `${row.order_line_id} ${row.lot_id}`;
    sums.set(key, { ...row, units: row.units + (sums.get(key)?.units ?? 0) });
  }
  return [...sums.values()];
}

async function bookOut(
  tx: Writer,
  parcel: readonly Keeping[],
  entryId: string,
  dispatchId: string,
  newId: () => string,
): Promise<void> {
  const place = await shelfPlaceId(tx);
  await insertMovements(
    tx,
    parcel.map((row) => ({
      id: newId(),
      entry_id: entryId,
      lot_id: row.lot_id,
      place_id: place,
      kind: 'sold',
      quantity: -row.units,
      reason: '',
      batch_id: null,
      filling_run_id: null,
      order_line_id: row.order_line_id,
      dispatch_id: dispatchId,
    })),
  );
}
