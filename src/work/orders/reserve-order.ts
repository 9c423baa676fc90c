import { type Problem, problem } from '../../core/problem.ts';
import {
  findOrder,
  giveUp,
  insertReservations,
  type LotAtHand,
  listLotsAtHand,
  type OrderRow,
  type Writer,
} from '../../storage/index.ts';
import { inside } from '../inside.ts';
import { workshopToday } from '../local-date.ts';
import { isUsable } from '../lot-use.ts';
import { record, thingNotFound } from '../record.ts';
import { findStoppedBehind } from '../stopped-behind.ts';
import type { UseCase } from '../use-case.ts';
import { type FreeTins, listFreeTins } from './free-tins.ts';
import { viewOne } from './get-order.ts';
import { type OrderView, viewOrders } from './order-view.ts';

const sum = (rows: readonly { units: number }[]): number => rows.reduce((total, row) => total + row.units, 0);

/**
 * Keeps released tins for an order's lines, first-expired-first-out; as many as there are. Tins that were kept and may
 * not go any more, since their lot or one behind it was stopped or ended, are let go first, so that others can take
 * their place. Free tins with a stopped lot behind them are passed over; where only such are left, the lot is named.
 */
export const reserveOrder: UseCase<'reserveOrder'> = (context, { body, params }) =>
  record(
    context,
    body.stamp,
    async (tx, tell) => {
      const order = await openOrder(tx, params.id ?? '');
      const today = await workshopToday(inside(context, tx));
      const letGo = await keptInVain(tx, order, today);
      const stopped = await listStoppedTins(tx, order, today);
      const kept = await chooseTins(tx, order, today, letGo, new Set(stopped.keys()));
      if (kept.length + letGo.length === 0)
        giveUp(...(stopped.size > 0 ? stopped.values() : [nothingToKeep(order)]));
      await tell({
        kind: 'order-reserved',
        subjectKind: 'order',
        subjectId: order.id,
        payload: { kept, letGo },
      });
      const booked = [...kept, ...letGo.map((row) => ({ ...row, units: -row.units }))];
      await insertReservations(
        tx,
        booked.map((row) => ({ ...row, entry_id: body.stamp.id })),
      );
      return order.id;
    },
    (id) => viewOne(context, id),
  );

const nothingToKeep = (order: OrderRow) =>
  problem('nothing-to-keep', 'order', { found: String(order.number) });

export async function openOrder(tx: Writer, id: string): Promise<OrderRow> {
  const order = await findOrder(tx, id);
  if (!order) giveUp(thingNotFound('id', id));
  if (order.cancelled === 1) giveUp(problem('order-cancelled', 'id', { found: String(order.number) }));
  return order;
}

export interface Keeping {
  readonly order_line_id: string;
  readonly lot_id: string;
  readonly units: number;
}

/** What is kept for the order in lots that may not go any more. */
async function keptInVain(tx: Writer, order: OrderRow, today: string): Promise<Keeping[]> {
  const [view] = await viewOrders(tx, [order]);
  const kept = (view?.lines ?? []).flatMap((line) =>
    line.reserved.map((row) => ({ order_line_id: line.id, lot_id: row.lotId, units: row.units })),
  );
  const lots = await listLotsAtHand(tx, { lotIds: [...new Set(kept.map((row) => row.lot_id))] });
  const stopped = await stoppedOf(tx, lots);
  const mayGo = new Set(
    lots.filter((lot) => isUsable(lot, today) && !stopped.has(lot.id)).map((lot) => lot.id),
  );
  return kept.filter((row) => !mayGo.has(row.lot_id));
}

/** Free tins of what is ordered that a stopped lot behind them holds back, each with the reason. */
async function listStoppedTins(tx: Writer, order: OrderRow, today: string): Promise<Map<string, Problem>> {
  const [view] = await viewOrders(tx, [order]);
  const products = (view?.lines ?? []).map((line) => line.productId);
  const free = await listFreeTins(tx, products, today);
  return stoppedOf(
    tx,
    free.map((row) => row.lot),
  );
}

async function stoppedOf(tx: Writer, lots: readonly LotAtHand[]): Promise<Map<string, Problem>> {
  const stopped = new Map<string, Problem>();
  for (const lot of lots) {
    const reason = await findStoppedBehind(tx, lot);
    if (reason) stopped.set(lot.id, reason);
  }
  return stopped;
}

/** Which free tins an order's lines can have: the first to end first. */
export async function chooseTins(
  tx: Writer,
  order: OrderRow,
  today: string,
  letGo: readonly Keeping[] = [],
  stopped: ReadonlySet<string> = new Set(),
): Promise<Keeping[]> {
  const [view] = await viewOrders(tx, [order]);
  const lines = view?.lines ?? [];
  const free = await listFreeTins(
    tx,
    lines.map((line) => line.productId),
    today,
  );
  return lines.flatMap((line) =>
    takeFrom(
      free.filter((row) => row.lot.item_id === line.productId && !stopped.has(row.lot.id)),
      line,
      sum(letGo.filter((row) => row.order_line_id === line.id)),
    ),
  );
}

function takeFrom(free: readonly FreeTins[], line: OrderView['lines'][number], letGo: number): Keeping[] {
  let missing = line.units - sum(line.reserved) - sum(line.sent) + letGo;
  const taken: Keeping[] = [];
  for (const row of free) {
    const units = Math.min(missing, row.free);
    if (units <= 0) continue;
    taken.push({ order_line_id: line.id, lot_id: row.lot.id, units });
    missing -= units;
  }
  return taken;
}
