import type { trace } from '../../contract/index.ts';
import { done, refused } from '../../core/problem.ts';
import { toText } from '../../core/quantity/index.ts';
import { shareLots } from '../../core/stock/index.ts';
import {
  listCustomers,
  listLotsAtHand,
  listReachedLots,
  listSentOfLots,
  type MadeFrom,
  type ReachedLotRow,
  type Reader,
  type SentTins,
} from '../../storage/index.ts';
import type { AskedContext } from '../context.ts';
import { getRunCost } from '../filling/index.ts';
import { localDate, workshopZone } from '../local-date.ts';
import { amountText } from '../quantity-text.ts';
import { thingNotFound } from '../record.ts';
import { saying } from '../saying.ts';
import { viewLot } from '../stock/index.ts';
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
  const forward = await walkLots(db, [lot.id], 'forward');
  const back = await walkLots(db, [lot.id], 'back');
  const wentInto = await withLots(db, forward.reached);
  const madeOf = await withLots(db, back.reached);
  const sent = await listSentOfLots(db, [lot.id, ...forward.reached.map((reached) => reached.lotId)]);
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
    madeOf: shareOut(lot.id, back.steps, madeOf),
    wentInto: wentInto.map(({ lot: view, reached }) => ({ lot: view, depth: reached.depth })),
    orders,
    unitsSent,
    unitsOnHand,
    balance: await balanceLot(db, lot),
    cost: await costOf(context, lot.filling_run_id),
  });
};

interface Reached {
  readonly lot: trace.ReachedLotView;
  readonly reached: ReachedLot;
}

/** How much of each lot is in this one, not how much of it was ever taken; null where nobody can know. */
function shareOut(start: string, steps: readonly MadeFrom[], madeOf: readonly Reached[]) {
  const units = new Map(madeOf.map(({ lot }) => [lot.id, lot.unit]));
  const uses = steps.map(({ usedLotId, madeLotId, quantity }) => ({
    usedLot: usedLotId,
    madeLot: madeLotId,
    quantity: amountText(quantity, units.get(usedLotId) ?? 'g'),
  }));
  const shares = shareLots(start, uses, new Map(madeOf.map(({ lot }) => [lot.id, lot.cameIn])));
  return madeOf.map(({ lot, reached }) => {
    const share = shares.get(lot.id);
    return { lot, depth: reached.depth, amount: share ? toText(share.toDecimalPlaces(SHOWN_PLACES)) : null };
  });
}

/** A ten-thousandth of a gram is finer than any scale of such a workshop (common practice, no source). */
const SHOWN_PLACES = 4;

async function withLots(db: Reader, reached: readonly ReachedLot[]): Promise<Reached[]> {
  const rows = await listReachedLots(
    db,
    reached.map((row) => row.lotId),
  );
  const byId = new Map(rows.map((row) => [row.id, viewReached(row)]));
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

const viewReached = (row: ReachedLotRow): trace.ReachedLotView => ({
  id: row.id,
  number: row.number,
  itemKind: row.item_kind as trace.ReachedLotView['itemKind'],
  itemName: row.item_name,
  unit: row.unit as trace.ReachedLotView['unit'],
  onHand: amountText(row.on_hand, row.unit),
  status: row.status as trace.ReachedLotView['status'],
  cameIn: amountText(row.received, row.unit),
});

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
