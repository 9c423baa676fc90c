import { problem } from '../../core/problem.ts';
import {
  giveUp,
  insertDispatch,
  insertMovements,
  insertReservations,
  type LotAtHand,
  listLotsAtHand,
  type OrderRow,
  type Writer,
} from '../../storage/index.ts';
import type { Context } from '../context.ts';
import { inside } from '../inside.ts';
import { workshopToday } from '../local-date.ts';
import { lotTooSmall, spreadOverPlaces, whyNotUsable } from '../lot-use.ts';
import { newMovement } from '../new-movement.ts';
import { record, thingNotFound } from '../record.ts';
import { findStoppedBehind } from '../stopped-behind.ts';
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
      const today = await workshopToday(inside(context, tx));
      const kept = await keptFor(tx, order, today);
      const fresh = await chooseTins(tx, order, today);
      const parcel = merge([...kept, ...fresh]);
      await refuseStoppedBehind(tx, parcel);
      if (parcel.length === 0) giveUp(problem('nothing-to-send', 'order', { found: String(order.number) }));
      const dispatchId = context.machine.newId();
      await tell({
        kind: 'order-dispatched',
        subjectKind: 'order',
        subjectId: order.id,
        // The number itself leads to the customer's door: it must not be in the chain for ever.
        payload: { dispatchId, parcel, hasTracking: body.tracking !== '' },
      });
      const dispatch = { id: dispatchId, entry_id: body.stamp.id, order_id: order.id };
      await insertDispatch(tx, dispatch, body.tracking);
      await insertReservations(
        tx,
        kept.map((row) => ({ ...row, units: -row.units, entry_id: body.stamp.id })),
      );
      await bookOut(context, tx, parcel, body.stamp.id, dispatchId);
      return order.id;
    },
    async (id) => {
      const view = await viewOne(context, id);
      return view.ok ? { ok: true, value: { id, order: view.value } } : view;
    },
  );

/** What is kept for the order and may still go: a lot blocked or ended since stops the parcel, by name. */
async function keptFor(tx: Writer, order: OrderRow, today: string): Promise<Keeping[]> {
  const [view] = await viewOrders(tx, [order]);
  const kept = (view?.lines ?? []).flatMap((line) =>
    line.reserved.map((row) => ({ order_line_id: line.id, lot_id: row.lotId, units: row.units })),
  );
  for (const lot of await lotsOf(tx, kept)) {
    const hindrance = whyNotUsable(lot, today);
    if (hindrance) giveUp(hindrance);
  }
  return kept;
}

const lotsOf = async (tx: Writer, rows: readonly Keeping[]): Promise<LotAtHand[]> =>
  rows.length === 0 ? [] : listLotsAtHand(tx, { lotIds: [...new Set(rows.map((row) => row.lot_id))] });

/** A lot blocked or rejected since the release, anywhere behind a tin, stops the parcel: that is what a recall is. */
async function refuseStoppedBehind(tx: Writer, parcel: readonly Keeping[]): Promise<void> {
  for (const lot of await lotsOf(tx, parcel)) {
    const stopped = await findStoppedBehind(tx, lot);
    if (stopped) giveUp(stopped);
  }
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
  context: Context,
  tx: Writer,
  parcel: readonly Keeping[],
  entryId: string,
  dispatchId: string,
): Promise<void> {
  const lots = new Map((await lotsOf(tx, parcel)).map((lot) => [lot.id, lot]));
  const movements = parcel.flatMap((row) => {
    const lot = lots.get(row.lot_id);
    if (!lot || lot.on_hand < row.units)
      giveUp(lot ? lotTooSmall(lot, row.units) : thingNotFound('lot', row.lot_id));
    return spreadOverPlaces(lot, row.units).map((taking) =>
      newMovement(context, entryId, {
        lot_id: lot.id,
        place_id: taking.place_id,
        kind: 'sold',
        quantity: -taking.quantity,
        order_line_id: row.order_line_id,
        dispatch_id: dispatchId,
      }),
    );
  });
  await insertMovements(tx, movements);
}
