import type { BookProduct, OrderBook } from '../orders/read-order-book.ts';
import type { Barred } from '../orders/serve-orders.ts';
import type { MorningData, OrderInTurn } from './read-morning.ts';

/** Tins of one product that open orders lack and that stand alike: can be made, wait for a base, lack something, may not be made. */
export interface TinsToMake {
  readonly product: BookProduct;
  readonly units: number;
  /** The first order of them. */
  readonly first: OrderInTurn;
  /** How many more orders lack some of them. */
  readonly others: number;
  readonly state: 'ready' | 'waits' | 'lacks' | 'barred';
  /** It may not be made for sale, and why. */
  readonly barred: Barred | undefined;
  /** Bases still to be melted, or to set. */
  readonly waitsFor: readonly string[];
  /** What has to be bought first. */
  readonly lacks: readonly string[];
}

/**
 * The first wanted first. Each order is judged by what the earlier ones left for it, as its own page does: a later
 * order that lacks lids does not stop the tins of an earlier one.
 */
export function listTinsToMake({ book, orders }: MorningData): TinsToMake[] {
  const groups = new Map<string, TinsToMake>();
  for (const order of orders.filter(({ served }) => served.unknown.length === 0)) {
    for (const { product, toMake } of order.served.lines) {
      if (toMake === 0) continue;
      const own = judgeTins(book, order, product);
      const key = `${product.id} ${own.state}`;
      const before = groups.get(key);
      groups.set(key, {
        product,
        units: (before?.units ?? 0) + toMake,
        first: before?.first ?? order,
        others: before ? before.others + 1 : 0,
        state: own.state,
        barred: before?.barred ?? own.barred,
        waitsFor: join(before?.waitsFor, own.waitsFor),
        lacks: join(before?.lacks, own.lacks),
      });
    }
  }
  return [...groups.values()];
}

const join = (before: readonly string[] = [], more: readonly string[]) => [...new Set([...before, ...more])];

function judgeTins({ formulas }: OrderBook, { served }: OrderInTurn, { details, formulaId }: BookProduct) {
  const barred = served.barred.find((row) => row.formulaId === formulaId);
  if (barred) return { state: 'barred', barred, lacks: [], waitsFor: [] } as const;
  const parts = partsOf(formulas, formulaId, [details.tinId, details.lidId, details.labelId]);
  const own = served.nets.filter(({ item }) => parts.has(item.itemId));
  const isFormula = (itemId: string) => formulas.has(itemId);
  const lacks = own.filter(({ item, short }) => !isFormula(item.itemId) && !short.isZero());
  const waitsFor = own.filter(
    ({ item, toMake, setting }) =>
      formulas.get(item.itemId)?.kind === 'base' && (!toMake.isZero() || setting.length > 0),
  );
  const state = lacks.length > 0 ? 'lacks' : waitsFor.length > 0 ? 'waits' : 'ready';
  return {
    state,
    barred: undefined,
    lacks: lacks.map(({ item }) => item.itemId),
    waitsFor: waitsFor.map(({ item }) => item.itemId),
  } as const;
}

/** Packaging, and everything that the formula takes down to the last base. */
function partsOf(formulas: OrderBook['formulas'], formulaId: string, packaging: readonly (string | null)[]) {
  const parts = new Set(packaging);
  const visit = (id: string): void => {
    if (parts.has(id)) return;
    parts.add(id);
    for (const line of formulas.get(id)?.lines ?? []) visit(line.item_id);
  };
  visit(formulaId);
  return parts;
}
