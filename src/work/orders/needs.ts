import { type Exact, MICROGRAMS_PER_GRAM, ZERO } from '../../core/quantity/index.ts';
import type { Context } from '../context.ts';
import { type OrderBook, readOrderBook } from './read-order-book.ts';
import { listOrdersToServe, type ServedOrder, serveOrders } from './serve-orders.ts';

/** What all open orders take, after tins sent, kept and free, and bases that stand or set, were counted. */
export interface OpenNeeds {
  /** Tins that are neither kept nor free: they have to be released, filled or made. */
  readonly missing: ReadonlyMap<string, number>;
  /** Of those, tins for which nothing is in a bowl or on the way: they have to be made from the start. */
  readonly toMake: ReadonlyMap<string, number>;
  /** Of each mixture, base, material and piece of packaging, in whole micrograms or pieces. */
  readonly amounts: ReadonlyMap<string, number>;
  /** Bases to melt beyond what stands and sets, in whole micrograms. */
  readonly toMelt: ReadonlyMap<string, number>;
  /** What nobody has, in whole micrograms or pieces. */
  readonly short: ReadonlyMap<string, number>;
}

export async function needsOfOpenOrders(context: Context): Promise<OpenNeeds> {
  const book = await readOrderBook(context);
  return sumNeeds(book, serveOrders(book, listOrdersToServe(book)));
}

export function sumNeeds(book: OrderBook, served: readonly ServedOrder[]): OpenNeeds {
  const lines = served.flatMap((order) => order.lines);
  const nets = served.flatMap((order) => order.nets);
  const inLedger = (pick: (net: (typeof nets)[number]) => Exact) =>
    sumBy(nets.map((net) => [net.item.itemId, ledgerUnits(pick(net), net.item.unit)]));
  const bases = nets.filter(({ item }) => book.formulas.get(item.itemId)?.kind === 'base');
  return {
    missing: sumBy(lines.map((line) => [line.product.id, line.waiting + line.inBowl + line.toMake])),
    toMake: sumBy(lines.map((line) => [line.product.id, line.toMake])),
    amounts: inLedger((net) => net.need),
    toMelt: sumBy(bases.map((net) => [net.item.itemId, ledgerUnits(net.toMake, 'g')])),
    short: inLedger((net) => net.short),
  };
}

/** Taken up to the whole microgram: a need is never made smaller than it is. */
const ledgerUnits = (quantity: Exact, unit: 'g' | 'pieces'): number =>
  (unit === 'g' ? quantity.times(MICROGRAMS_PER_GRAM) : quantity.plus(ZERO)).ceil().toNumber();

function sumBy(rows: readonly (readonly [string, number])[]): Map<string, number> {
  const sums = new Map<string, number>();
  for (const [key, value] of rows) if (value > 0) sums.set(key, (sums.get(key) ?? 0) + value);
  return sums;
}
