import type { AskedProduct } from '../../check/index.ts';
import type { Market } from '../../contract/index.ts';
import type { Context } from '../context.ts';
import { checkForSale } from '../formulas/index.ts';
import { saying } from '../saying.ts';
import type { BookFormula, OrderBook } from './read-order-book.ts';
import {
  type Barred,
  type OrderToServe,
  type ServedLine,
  type ServedOrder,
  serveOrders,
} from './serve-orders.ts';

/**
 * Orders in turn, each with what it leaves to be made that may not be made for sale in its markets, by the check that the
 * start of a batch asks. Each formula is checked once for the same markets. The order still stands, so what it needs is
 * not given to others meanwhile.
 */
export async function serveChecked(
  context: Context,
  book: OrderBook,
  orders: readonly OrderToServe[],
): Promise<ServedOrder[]> {
  const served = serveOrders(book, orders);
  const known = new Map<string, Barred | null>();
  const barOf = async ({ formula, markets, products }: Making): Promise<Barred | null> => {
    const key = [formula.id, ...products.map(({ id }) => id), ...[...markets].sort()].join(' ');
    const bar = known.get(key);
    if (bar !== undefined) return bar;
    const found = await findBar(context, formula, markets, products);
    known.set(key, found);
    return found;
  };
  const checked: ServedOrder[] = [];
  for (const order of served) {
    const barred = new Set<Barred>();
    for (const making of listMakings(book, order)) {
      const bar = await barOf(making);
      if (bar) barred.add(bar);
    }
    checked.push({ ...order, barred: [...barred] });
  }
  return checked;
}

interface Making {
  readonly formula: BookFormula;
  readonly markets: readonly Market[];
  /** Filled from it; none of a base, which is not filled. */
  readonly products: readonly AskedProduct[];
}

/** Mixtures for the tins, each for the markets of its product; bases for the markets of all that is made of them. */
function listMakings({ formulas }: OrderBook, { lines, nets }: ServedOrder): Making[] {
  const ask = (id: string, markets: readonly Market[], products: readonly AskedProduct[] = []) => {
    const formula = formulas.get(id);
    return formula ? [{ formula, markets, products }] : [];
  };
  return [
    ...lines
      .filter((line) => line.toMake > 0)
      .flatMap(({ product }) =>
        ask(product.formulaId, product.details.markets, [{ id: product.id, name: product.details.name }]),
      ),
    ...nets
      .filter(({ item, toMake }) => formulas.get(item.itemId)?.kind === 'base' && !toMake.isZero())
      .flatMap(({ item }) => ask(item.itemId, marketsOf(lines))),
  ];
}

/** Where everything is sold that these lines leave to be made. */
const marketsOf = (lines: readonly ServedLine[]): Market[] => [
  ...new Set(lines.filter((line) => line.toMake > 0).flatMap((line) => line.product.details.markets)),
];

/** What nobody has written down cannot be checked: the order says that it is not known. */
async function findBar(
  context: Context,
  { id, name, revision }: BookFormula,
  markets: readonly Market[],
  products: readonly AskedProduct[],
): Promise<Barred | null> {
  if (revision === null) return null;
  const checked = await checkForSale(context, revision.id, markets, products);
  const reasons = checked.ok ? checked.value.hindrances : [saying('order-check-fails')];
  return reasons.length === 0 ? null : { formulaId: id, name, number: revision.number, reasons };
}
