import type { Market, Saying } from '../../contract/index.ts';
import type { Context } from '../context.ts';
import { checkForSale } from '../formulas/index.ts';
import { saying } from '../saying.ts';
import type { BookFormula, OrderBook } from './read-order-book.ts';
import { type Bars, barKey, marketsOf, type ServedOrder } from './serve-orders.ts';

/**
 * What these orders leave to be made and may not be made for sale in their markets, by the check that the start of a
 * batch asks. Each formula is checked once for the same markets.
 */
export async function barMakings(
  context: Context,
  book: OrderBook,
  served: readonly ServedOrder[],
): Promise<Bars> {
  const asked = new Map(
    served
      .flatMap((order) => listMakings(book, order))
      .map((one) => [barKey(one.formula.id, one.markets), one]),
  );
  const bars = new Map<string, NonNullable<ReturnType<Bars['get']>>>();
  for (const [key, { formula, markets }] of asked) {
    if (formula.revision === null) continue;
    const reasons = await whyBarred(context, formula.revision.id, markets);
    const { id, name, revision } = formula;
    if (reasons.length > 0) bars.set(key, { formulaId: id, name, number: revision?.number ?? 0, reasons });
  }
  return bars;
}

interface Asked {
  readonly formula: BookFormula;
  readonly markets: readonly Market[];
}

/** Mixtures for the tins, each for the markets of its product; bases for the markets of all that is made of them. */
function listMakings({ formulas }: OrderBook, { lines, nets }: ServedOrder): Asked[] {
  const ask = (id: string, markets: readonly Market[]) => {
    const formula = formulas.get(id);
    return formula ? [{ formula, markets }] : [];
  };
  return [
    ...lines
      .filter((line) => line.toMake > 0)
      .flatMap(({ product }) => ask(product.formulaId, product.details.markets)),
    ...nets
      .filter(({ item, toMake }) => formulas.get(item.itemId)?.kind === 'base' && !toMake.isZero())
      .flatMap(({ item }) => ask(item.itemId, marketsOf(lines))),
  ];
}

async function whyBarred(
  context: Context,
  revisionId: string,
  markets: readonly Market[],
): Promise<readonly Saying[]> {
  const checked = await checkForSale(context, revisionId, markets);
  return checked.ok ? checked.value.hindrances : [saying('order-check-fails')];
}
