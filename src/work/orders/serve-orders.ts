import type { Saying } from '../../contract/index.ts';
import { type Exact, ZERO } from '../../core/quantity/index.ts';
import { type NetNeed, netNeeds, type PromiseQuestion, sortByMaking } from '../../core/stock/index.ts';
import { gatherItems } from './gather-items.ts';
import { mayGo } from './may-go.ts';
import type { OrderView } from './order-view.ts';
import type { BookProduct, OrderBook } from './read-order-book.ts';
import { ShelfLeft, type TinsDrawn } from './shelf-left.ts';
import { Makings } from './size-makings.ts';

/** An order as far as it has to be met from the shelf. */
export interface OrderToServe {
  readonly id: string;
  readonly number: number;
  readonly wantedBy: string;
  readonly lines: readonly LineToServe[];
}

export interface LineToServe {
  readonly productId: string;
  readonly sent: number;
  /** Not sent yet. */
  readonly open: number;
  /** Of those, kept tins that may go. */
  readonly kept: number;
  /** Kept tins that may not go any more: their lot or one behind it was stopped, or it ended. */
  readonly keptInVain: number;
}

export interface ServedLine extends LineToServe, TinsDrawn {
  readonly product: BookProduct;
  readonly toMake: number;
}

/** A formula that may not be made for sale now, and why. */
export interface Barred {
  readonly formulaId: string;
  readonly name: string;
  /** Of its revision in force. */
  readonly number: number;
  readonly reasons: readonly Saying[];
}

export interface ServedOrder {
  readonly order: OrderToServe;
  readonly lines: readonly ServedLine[];
  /** What is asked of the shelf beyond finished tins; null: nothing has to be filled or made. */
  readonly question: PromiseQuestion | null;
  readonly nets: readonly NetNeed[];
  /** Of these nobody has written down how they are made, so nothing can be said. */
  readonly unknown: readonly string[];
  /** What it leaves to be made that may not be made for sale; empty where nobody asked the check. */
  readonly barred: readonly Barred[];
  /** Numbers of the earlier orders that take of an item. */
  readonly takenBy: ReadonlyMap<string, readonly number[]>;
}

const sum = (rows: readonly { units: number }[]): number => rows.reduce((total, row) => total + row.units, 0);

/** Open orders as the shelf is asked for them. */
export const listOrdersToServe = (book: OrderBook): OrderToServe[] => toServe(book, book.orders);

/** Kept tins of a lot that may not go any more are missing again. */
export function toServe(book: OrderBook, views: readonly OrderView[]): OrderToServe[] {
  const going = new Set(book.lots.filter((lot) => mayGo(book, lot)).map((lot) => lot.id));
  return views.map((view) => ({
    id: view.id,
    number: view.number,
    wantedBy: view.wantedBy,
    lines: view.lines.map((line) => lineToServe(line, going)),
  }));
}

function lineToServe(line: OrderView['lines'][number], going: ReadonlySet<string>): LineToServe {
  const kept = sum(line.reserved.filter((row) => going.has(row.lotId)));
  const sent = sum(line.sent);
  return {
    productId: line.productId,
    sent,
    open: Math.max(0, line.units - sent),
    kept,
    keptInVain: sum(line.reserved) - kept,
  };
}

/** Serves the orders in the order given, each from what the ones before it left. */
export function serveOrders(book: OrderBook, orders: readonly OrderToServe[]): ServedOrder[] {
  const shelf = new ShelfLeft(book);
  const makings = new Makings();
  return orders.map((order) => serveOrder(book, order, shelf, makings));
}

function serveOrder(book: OrderBook, order: OrderToServe, shelf: ShelfLeft, makings: Makings): ServedOrder {
  const lines = order.lines.flatMap((line) => {
    const product = book.products.get(line.productId);
    return product ? [serveLine(line, product, shelf)] : [];
  });
  const { needs, unknown } = needsOf(book, lines, makings);
  const bare = { order, lines, question: null, nets: [], unknown, barred: [], takenBy: new Map() };
  if (needs.size === 0 || unknown.length > 0) return bare;
  const question: PromiseQuestion = {
    now: book.now,
    timeZone: book.timeZone,
    wantedBy: order.wantedBy,
    workday: null,
    needs: [...needs].map(([itemId, quantity]) => ({ itemId, quantity })),
    items: gatherItems(book, shelf, [...needs.keys()]),
  };
  const nets = netAll(question, book.today);
  if (nets === undefined) {
    const loop = lines.filter((line) => line.toMake > 0).map((line) => line.product.name);
    return { ...bare, unknown: loop };
  }
  const takenBy = new Map(nets.map(({ item }) => [item.itemId, shelf.takenBy(item.itemId)]));
  shelf.take(nets, order.number);
  const undone = nets.filter(({ item, short }) => book.formulas.has(item.itemId) && !short.isZero());
  return { ...bare, question, nets, takenBy, unknown: undone.map(({ item }) => item.name) };
}

function serveLine(line: LineToServe, product: BookProduct, shelf: ShelfLeft): ServedLine {
  const missing = Math.max(0, line.open - line.kept);
  const drawn = shelf.drawTins(product, missing);
  return { ...line, ...drawn, product, toMake: missing - drawn.free - drawn.waiting - drawn.inBowl };
}

/** Grams of mixtures to make, and a tin, a lid and a label for each piece that is still to be filled. */
function needsOf(book: OrderBook, lines: readonly ServedLine[], makings: Makings) {
  const needs = new Map<string, Exact>();
  const unknown: string[] = [];
  const ask = (itemId: string | null, more: Exact | number) => {
    if (itemId !== null) needs.set(itemId, (needs.get(itemId) ?? ZERO).plus(more));
  };
  for (const { product, toMake, inBowl } of lines) {
    const { tinId, lidId, labelId } = product.details;
    if (toMake + inBowl > 0) for (const part of [tinId, lidId, labelId]) ask(part, toMake + inBowl);
    if (toMake === 0) continue;
    const formula = book.formulas.get(product.formulaId);
    const grams = formula?.percents ? makings.add(product, toMake) : undefined;
    if (grams === undefined) unknown.push(formula?.name ?? product.name);
    else ask(product.formulaId, grams);
  }
  return { needs, unknown };
}

/** Nothing where a formula contains itself: how such a thing is made, nobody knows. */
function netAll(question: PromiseQuestion, today: string): NetNeed[] | undefined {
  const sorted = sortByMaking(question);
  const nets = sorted.ok ? netNeeds(question, sorted.value, () => today) : sorted;
  return nets.ok ? nets.value : undefined;
}
