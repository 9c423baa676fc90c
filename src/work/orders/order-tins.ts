import type { Problem } from '../../core/problem.ts';
import {
  type LotAtHand,
  listLotsAtHand,
  listReservedByLot,
  type OrderRow,
  type Reader,
} from '../../storage/index.ts';
import { whyNotUsable } from '../lot-use.ts';
import { findStoppedBehind, type StoppedBehind, whyStoppedBehind } from '../stopped-behind.ts';
import { type OrderView, viewOrders } from './order-view.ts';

type Line = OrderView['lines'][number];

export interface Keeping {
  readonly order_line_id: string;
  readonly lot_id: string;
  readonly units: number;
}

/** The tins that an order has and can have, read once. */
export interface OrderTins {
  readonly lines: readonly Line[];
  /** Every lot of what is ordered. */
  readonly lots: ReadonlyMap<string, LotAtHand>;
  /** Kept for it, and may go. */
  readonly kept: readonly Keeping[];
  /** Kept for it in a lot that may not go any more, since it or a lot behind it was stopped or ended. */
  readonly keptInVain: readonly (Keeping & { readonly why: Problem })[];
  /** May go and are promised to nobody, the first to end first. */
  readonly free: readonly FreeTins[];
  /** Why free tins of what is still missing are held back by a lot behind them. */
  readonly heldBack: readonly Problem[];
}

interface FreeTins {
  readonly lot: LotAtHand;
  readonly units: number;
}

const sum = (rows: readonly { units: number }[]): number => rows.reduce((total, row) => total + row.units, 0);

export async function readOrderTins(db: Reader, order: OrderRow, today: string): Promise<OrderTins> {
  const [view] = await viewOrders(db, [order]);
  const lines = view?.lines ?? [];
  const listed = await listLotsAtHand(db, { itemIds: [...new Set(lines.map((line) => line.productId))] });
  const lots = new Map(listed.map((lot) => [lot.id, lot]));
  const stoppedBehind = await findStoppedBehind(db);
  const free = freeOf(listed, await listReservedByLot(db), today);
  const kept = lines.flatMap((line) => keptOf(line, lots, { today, stoppedBehind }));
  return {
    lines,
    lots,
    kept: kept.flatMap(({ why, ...keeping }) => (why ? [] : [keeping])),
    keptInVain: kept.flatMap(({ why, ...keeping }) => (why ? [{ ...keeping, why }] : [])),
    free: free.filter(({ lot }) => !stoppedBehind.has(lot.id)),
    heldBack: free
      .filter(({ lot }) => lines.some((line) => line.productId === lot.item_id && missingOf(line) > 0))
      .flatMap(({ lot }) => whyStoppedBehind(lot, stoppedBehind) ?? []),
  };
}

const missingOf = (line: Line): number => line.units - sum(line.reserved) - sum(line.sent);

interface MayGo {
  readonly today: string;
  readonly stoppedBehind: StoppedBehind;
}

const keptOf = (line: Line, lots: ReadonlyMap<string, LotAtHand>, { today, stoppedBehind }: MayGo) =>
  line.reserved.map((row) => {
    const lot = lots.get(row.lotId);
    if (!lot) throw new Error(`lot ${row.lotNumber} is kept for an order of something else`);
    const why = whyNotUsable(lot, today) ?? whyStoppedBehind(lot, stoppedBehind);
    return { order_line_id: line.id, lot_id: lot.id, units: row.units, why };
  });

type Reserved = Awaited<ReturnType<typeof listReservedByLot>>;

/** Of released filling runs, within their date, not kept for anybody. */
function freeOf(lots: readonly LotAtHand[], reserved: Reserved, today: string): FreeTins[] {
  const kept = new Map(reserved.map((row) => [row.lot_id, Number(row.units)]));
  return lots
    .filter((lot) => whyNotUsable(lot, today) === undefined)
    .map((lot) => ({ lot, units: lot.on_hand - (kept.get(lot.id) ?? 0) }))
    .filter((row) => row.units > 0);
}

/** Which free tins an order's lines can have, in place of tins kept in vain too where those are let go. */
export function chooseTins({ lines, free, keptInVain }: OrderTins): Keeping[] {
  return lines.flatMap((line) => {
    const letGo = sum(keptInVain.filter((row) => row.order_line_id === line.id));
    const own = free.filter((row) => row.lot.item_id === line.productId);
    return takeFrom(own, line, missingOf(line) + letGo);
  });
}

function takeFrom(free: readonly FreeTins[], line: Line, wanted: number): Keeping[] {
  let missing = wanted;
  const taken: Keeping[] = [];
  for (const { lot, units: most } of free) {
    const units = Math.min(missing, most);
    if (units <= 0) continue;
    taken.push({ order_line_id: line.id, lot_id: lot.id, units });
    missing -= units;
  }
  return taken;
}
