import type { OldLabel } from '../../check/index.ts';
import type { Saying } from '../../contract/index.ts';
import type { Problem } from '../../core/problem.ts';
import { type LotAtHand, listLotsAtHand, listReservedByLot, type OrderRow } from '../../storage/index.ts';
import type { Context } from '../context.ts';
import { findOldLabels, sayOldLabel, whyTooOld } from '../filling/find-old-labels.ts';
import { workshopToday } from '../local-date.ts';
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
  /** Why free tins of what is still missing are held back: by a lot behind them, or by their labels. */
  readonly heldBack: readonly Problem[];
  /** Labels that a newer law asks for more, with the days until which they will do. */
  readonly oldLabels: readonly Saying[];
}

interface FreeTins {
  readonly lot: LotAtHand;
  readonly units: number;
}

const sum = (rows: readonly { units: number }[]): number => rows.reduce((total, row) => total + row.units, 0);

export async function readOrderTins(context: Context, order: OrderRow): Promise<OrderTins> {
  const { db } = context.storage;
  const today = await workshopToday(context);
  const [view] = await viewOrders(db, [order]);
  const lines = view?.lines ?? [];
  const listed = await listLotsAtHand(db, { itemIds: [...new Set(lines.map((line) => line.productId))] });
  const lots = new Map(listed.map((lot) => [lot.id, lot]));
  const stoppedBehind = await findStoppedBehind(db);
  const oldLabels = await findOldLabels(context, listed, order.placed_on);
  const bars: Bars = { today, stoppedBehind, oldLabels };
  const free = freeOf(listed, await listReservedByLot(db), today);
  const kept = lines.flatMap((line) => keptOf(line, lots, bars));
  return {
    lines,
    lots,
    kept: kept.flatMap(({ why, ...keeping }) => (why ? [] : [keeping])),
    keptInVain: kept.flatMap(({ why, ...keeping }) => (why ? [{ ...keeping, why }] : [])),
    free: free.filter(({ lot }) => whyHeldBack(lot, bars) === undefined),
    heldBack: free
      .filter(({ lot }) => lines.some((line) => line.productId === lot.item_id && missingOf(line) > 0))
      .flatMap(({ lot }) => whyHeldBack(lot, bars) ?? []),
    oldLabels: listed.flatMap((lot) =>
      (oldLabels.get(lot.id) ?? []).map((old) => sayOldLabel(old, lot.number)),
    ),
  };
}

const missingOf = (line: Line): number => line.units - sum(line.reserved) - sum(line.sent);

interface Bars {
  readonly today: string;
  readonly stoppedBehind: StoppedBehind;
  readonly oldLabels: ReadonlyMap<string, readonly OldLabel[]>;
}

/** Why tins that are released and within their date may not go all the same. */
const whyHeldBack = (lot: LotAtHand, { stoppedBehind, oldLabels }: Bars): Problem | undefined =>
  whyStoppedBehind(lot, stoppedBehind) ?? whyTooOld(lot, oldLabels.get(lot.id));

const keptOf = (line: Line, lots: ReadonlyMap<string, LotAtHand>, bars: Bars) =>
  line.reserved.map((row) => {
    const lot = lots.get(row.lotId);
    if (!lot) throw new Error(`lot ${row.lotNumber} is kept for an order of something else`);
    const why = whyNotUsable(lot, bars.today) ?? whyHeldBack(lot, bars);
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
