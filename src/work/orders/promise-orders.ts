import { exact, gramsFromMicrograms, toText } from '../../core/quantity/index.ts';
import { type PromiseAnswer, type PromiseShort, promiseDate } from '../../core/stock/index.ts';
import type { Context } from '../context.ts';
import { findOrderBy } from './find-order-by.ts';
import type { PromiseView } from './promise-view.ts';
import type { OrderBook } from './read-order-book.ts';
import { sayPromise } from './say-promise.ts';
import { serveChecked } from './serve-checked.ts';
import type { OrderToServe, ServedOrder } from './serve-orders.ts';
import { usableStock } from './usable-stock.ts';
import { viewGoods } from './view-goods.ts';
import { shownAmount, viewSteps } from './view-steps.ts';

/** The answer to each order, the earlier promised served first: by the day wanted, then by number. */
export async function promiseOrders(
  context: Context,
  book: OrderBook,
  asked: readonly OrderToServe[],
): Promise<Map<string, PromiseView>> {
  const inTurn = [...asked].sort(
    (one, other) => one.wantedBy.localeCompare(other.wantedBy) || one.number - other.number,
  );
  const served = await serveChecked(context, book, inTurn);
  return new Map(served.map((one) => [one.order.id, viewPromise(book, one)]));
}

export function viewPromise(book: OrderBook, served: ServedOrder): PromiseView {
  const answer = answerQuestion(served);
  const orderBy = answer && served.question ? findOrderBy(book, served.question, answer) : null;
  return {
    answer: wordOf(book, served, answer),
    sentence: sayPromise(book, served, answer, orderBy),
    tinsReady: served.lines.reduce((sum, line) => sum + line.kept + line.free, 0),
    orderBy: served.barred.length === 0 ? orderBy : null,
    notForSale: served.barred.map((barred) => ({ ...barred, reasons: [...barred.reasons] })),
    earliest: earliestOf(book, served, answer),
    short: (answer?.shortOf ?? []).map((short) => viewShort(book, served, short)),
    steps: viewSteps(book, served, answer),
  };
}

/** The one word of it, without what stands behind. */
export const answerWord = (book: OrderBook, served: ServedOrder): PromiseView['answer'] =>
  wordOf(book, served, answerQuestion(served));

function answerQuestion({ question, unknown }: ServedOrder): PromiseAnswer | null {
  if (question === null || unknown.length > 0) return null;
  const result = promiseDate(question);
  // The needs were netted from this very question: that it cannot be answered would be our own mistake.
  if (!result.ok) throw new Error(`no promise: ${JSON.stringify(result.problems)}`);
  return result.value;
}

function wordOf(
  { today }: OrderBook,
  served: ServedOrder,
  answer: PromiseAnswer | null,
): PromiseView['answer'] {
  if (served.unknown.length > 0) return 'not-known';
  if (served.barred.length > 0) return 'not-for-sale';
  if (answer === null) return today <= served.order.wantedBy ? 'yes' : 'no';
  return answer.answer === 'if-bought' ? 'if-ordered' : answer.answer;
}

/** Not before something is bought, or a check is mended: then no day is promised, though the sentence counts the delivery. */
function earliestOf(
  { today }: OrderBook,
  { unknown, barred }: ServedOrder,
  answer: PromiseAnswer | null,
): PromiseView['earliest'] {
  if (unknown.length + barred.length > 0) return null;
  if (answer === null) return { from: today, to: today };
  const { earliest } = answer;
  return earliest === null || earliest.dependsOnSupplier ? null : { from: earliest.from, to: earliest.to };
}

function viewShort(
  book: OrderBook,
  { takenBy }: ServedOrder,
  short: PromiseShort,
): PromiseView['short'][number] {
  const { itemId, unit } = short;
  const need = shownAmount(short.need, unit);
  const stands = usableStock(book, itemId);
  return {
    itemKind: book.formulas.has(itemId) ? 'formula' : 'material',
    itemId,
    name: short.name,
    need,
    have: short.have,
    short: toText(exact(need).minus(short.have)),
    unit,
    onItsWay: viewGoods(book.onTheirWay.get(itemId)),
    onShelf: unit === 'g' ? toText(gramsFromMicrograms(stands)) : String(stands),
    promisedTo: [...(takenBy.get(itemId) ?? [])],
  };
}
