import { done, refused } from '../../core/problem.ts';
import {
  listCustomers,
  listLotsAtHand,
  listSentOfLots,
  type Reader,
  type SentTins,
} from '../../storage/index.ts';
import type { AskedContext } from '../context.ts';
import { getRunCost } from '../filling/index.ts';
import { localDate, workshopZone } from '../local-date.ts';
import { amountText } from '../quantity-text.ts';
import { thingNotFound } from '../record.ts';
import { saying } from '../saying.ts';
import { viewLot, viewLotsById } from '../stock/index.ts';
import type { UseCase } from '../use-case.ts';
import { balanceLot } from './balance-lot.ts';
import { type ReachedLot, walkLots } from './walk-lots.ts';

/** From one lot forward to orders and back to every lot behind it, with its mass balance and, for tins, their cost. */
export const traceLot: UseCase<'traceLot'> = async (context, { params }) => {
  const db = context.storage.db;
  const [lot] = await listLotsAtHand(db, { lotIds: [params.id ?? ''] });
  if (!lot) return refused(thingNotFound('id', params.id ?? ''));
  const zone = await workshopZone(context);
  const today = localDate(context.machine.now(), zone);
  const forward = await walkLots(db, lot.id, 'forward');
  const back = await walkLots(db, lot.id, 'back');
  const wentInto = await withLots(db, forward, today);
  const madeOf = await withLots(db, back, today);
  const sent = await listSentOfLots(db, [lot.id, ...forward.map((reached) => reached.lotId)]);
  const tins = [
    ...(lot.item_kind === 'product' ? [viewLot(lot, today, 0)] : []),
    ...wentInto.map((row) => row.lot),
  ];
  const unitsOnHand = tins
    .filter((row) => row.itemKind === 'product')
    .reduce((sum, row) => sum + Number(row.onHand), 0);
  const unitsSent = sent.reduce((sum, row) => sum + row.units, 0);
  const orders = await nameOrders(db, sent, zone);
  return done({
    lot: viewLot(lot, today, 0),
    sentence: saying('trace-answer', {
      number: lot.number,
      item: lot.item_name,
      sent: unitsSent,
      orders: new Set(orders.map((row) => row.orderId)).size,
      here: unitsOnHand,
      behind: madeOf.length,
      isTins: lot.item_kind === 'product' ? 'yes' : 'no',
    }),
    madeOf: madeOf.map(({ lot: view, reached }) => ({
      lot: view,
      depth: reached.depth,
      amount: amountText(reached.quantity, view.unit),
    })),
    wentInto: wentInto.map(({ lot: view, reached }) => ({ lot: view, depth: reached.depth })),
    orders,
    unitsSent,
    unitsOnHand,
    balance: await balanceLot(db, lot),
    cost: await costOf(context, lot.filling_run_id),
  });
};

async function withLots(db: Reader, reached: readonly ReachedLot[], today: string) {
  if (reached.length === 0) return [];
  const views = await viewLotsById(
    db,
    reached.map((row) => row.lotId),
    today,
  );
  const byId = new Map(views.map((view) => [view.id, view]));
  return reached
    .flatMap((row) => {
      const view = byId.get(row.lotId);
      return view ? [{ lot: view, reached: row }] : [];
    })
    .sort(
      (one, other) =>
        one.reached.depth - other.reached.depth || one.lot.number.localeCompare(other.lot.number),
    );
}

/** The chain keeps numbers only; names come from the one table that can be erased. */
async function nameOrders(db: Reader, sent: readonly SentTins[], zone: string) {
  const names =
    sent.length === 0
      ? new Map<string, string>()
      : new Map((await listCustomers(db)).map((row) => [row.id, row.name]));
  return sent.map((row) => ({
    orderId: row.orderId,
    number: row.orderNumber,
    customerName: row.customerId === null ? '' : (names.get(row.customerId) ?? ''),
    units: row.units,
    lotNumber: row.lotNumber,
    sentOn: localDate(row.sentAt, zone),
  }));
}

async function costOf(context: AskedContext, runId: string | null) {
  if (runId === null) return null;
  const cost = await getRunCost(context, { params: { id: runId }, query: undefined, body: undefined });
  return cost.ok ? cost.value : null;
}
