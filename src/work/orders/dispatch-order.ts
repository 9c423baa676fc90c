import { problem } from '../../core/problem.ts';
import {
  giveUp,
  insertDispatch,
  insertMovements,
  insertReservations,
  type MovementRow,
  type OrderRow,
} from '../../storage/index.ts';
import type { Context } from '../context.ts';
import { inside } from '../inside.ts';
import { lotTooSmall, spreadOverPlaces } from '../lot-use.ts';
import { newMovement } from '../new-movement.ts';
import { record, thingNotFound } from '../record.ts';
import type { UseCase } from '../use-case.ts';
import { viewOne } from './get-order.ts';
import { openOrder } from './open-order.ts';
import { chooseTins, type Keeping, type OrderTins, readOrderTins } from './order-tins.ts';
import { refuseTrackingOfErased } from './tracking-of-erased.ts';

/** Sends what is kept for the order, and first keeps what is free: tins of released filling runs only. */
export const dispatchOrder: UseCase<'dispatchOrder'> = (context, { body, params }) =>
  record(
    context,
    body.stamp,
    async (tx, tell) => {
      const order = await openOrder(tx, params.id ?? '');
      await refuseTrackingOfErased(tx, order, body.tracking);
      const tins = await readOrderTins(inside(context, tx), order);
      const parcel = packParcel(order, tins);
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
        tins.kept.map((row) => ({ ...row, units: -row.units, entry_id: body.stamp.id })),
      );
      await insertMovements(tx, movementsOf(context, parcel, tins, { entryId: body.stamp.id, dispatchId }));
      return order.id;
    },
    async (id) => {
      const view = await viewOne(context, id);
      return view.ok ? { ok: true, value: { id, order: view.value } } : view;
    },
  );

/**
 * What is kept for the order, and what is free for the rest of it. Tins kept in vain stop the parcel by name; free ones
 * that a stopped lot behind them holds back stay, and are named where nothing else is left.
 */
function packParcel(order: OrderRow, tins: OrderTins): Keeping[] {
  const [vain] = tins.keptInVain;
  if (vain) giveUp(vain.why);
  const parcel = merge([...tins.kept, ...chooseTins(tins)]);
  if (parcel.length > 0) return parcel;
  const nothing = problem('nothing-to-send', 'order', { found: String(order.number) });
  return giveUp(...(tins.heldBack.length > 0 ? tins.heldBack : [nothing]));
}

function merge(rows: readonly Keeping[]): Keeping[] {
  const sums = new Map<string, Keeping>();
  for (const row of rows) {
    const key = `${row.order_line_id} ${row.lot_id}`;
    sums.set(key, { ...row, units: row.units + (sums.get(key)?.units ?? 0) });
  }
  return [...sums.values()];
}

function movementsOf(
  context: Context,
  parcel: readonly Keeping[],
  { lots }: OrderTins,
  { entryId, dispatchId }: { readonly entryId: string; readonly dispatchId: string },
): MovementRow[] {
  return parcel.flatMap((row) => {
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
}
