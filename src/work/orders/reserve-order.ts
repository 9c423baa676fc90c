import { problem } from '../../core/problem.ts';
import { findOrder, giveUp, insertReservations, type OrderRow, type Writer } from '../../storage/index.ts';
import { inside } from '../inside.ts';
import { workshopToday } from '../local-date.ts';
import { record, thingNotFound } from '../record.ts';
import type { UseCase } from '../use-case.ts';
import { type FreeTins, listFreeTins } from './free-tins.ts';
import { viewOne } from './get-order.ts';
import { type OrderView, viewOrders } from './order-view.ts';

const sum = (rows: readonly { units: number }[]): number => rows.reduce((total, row) => total + row.units, 0);

/** Keeps released tins for an order's lines, first-expired-first-out; as many as there are. */
export const reserveOrder: UseCase<'reserveOrder'> = (context, { body, params }) =>
  record(
    context,
    body.stamp,
    async (tx, tell) => {
      const order = await openOrder(tx, params.id ?? '');
      const today = await workshopToday(inside(context, tx));
      const kept = await chooseTins(tx, order, today);
      if (kept.length === 0) giveUp(problem('nothing-to-keep', 'order', { found: order.number }));
      await tell({ kind: 'order-reserved', subjectKind: 'order', subjectId: order.id, payload: { kept } });
      await insertReservations(
        tx,
        kept.map((row) => ({ ...row, entry_id: body.stamp.id })),
      );
      return order.id;
    },
    (id) => viewOne(context, id),
  );

export async function openOrder(tx: Writer, id: string): Promise<OrderRow> {
  const order = await findOrder(tx, id);
  if (!order) giveUp(thingNotFound('id', id));
  if (order.cancelled === 1) giveUp(problem('order-cancelled', 'id', { found: order.number }));
  return order;
}

export interface Keeping {
  readonly order_line_id: string;
  readonly lot_id: string;
  readonly units: number;
}

/** Which free tins an order's lines can have: the first to end first. */
export async function chooseTins(tx: Writer, order: OrderRow, today: string): Promise<Keeping[]> {
  const [view] = await viewOrders(tx, [order]);
  const lines = view?.lines ?? [];
  const free = await listFreeTins(
    tx,
    lines.map((line) => line.productId),
    today,
  );
  return lines.flatMap((line) =>
    takeFrom(
      free.filter((row) => row.lot.item_id === line.productId),
      line,
    ),
  );
}

function takeFrom(free: readonly FreeTins[], line: OrderView['lines'][number]): Keeping[] {
  let missing = line.units - sum(line.reserved) - sum(line.sent);
  const taken: Keeping[] = [];
  for (const row of free) {
    const units = Math.min(missing, row.free);
    if (units <= 0) continue;
    taken.push({ order_line_id: line.id, lot_id: row.lot.id, units });
    missing -= units;
  }
  return taken;
}
