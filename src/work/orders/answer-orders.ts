import type { z } from 'zod';
import type { orders } from '../../contract/index.ts';
import { done, type Problem, problem, refused } from '../../core/problem.ts';
import { findOrder, listOrders as readOrders } from '../../storage/index.ts';
import type { Context } from '../context.ts';
import { readAtOnce } from '../read-at-once.ts';
import { thingNotFound } from '../record.ts';
import { saying } from '../saying.ts';
import type { RequestOf, UseCase } from '../use-case.ts';
import { readOrderTins } from './order-tins.ts';
import { type OrderView, viewOrders } from './order-view.ts';
import { promiseOrders } from './promise-orders.ts';
import type { PromiseView } from './promise-view.ts';
import { type OrderBook, readOrderBook } from './read-order-book.ts';
import { listOrdersToServe, type OrderToServe, toServe } from './serve-orders.ts';

type Wish = RequestOf<'previewPromise'>['body'];
type AnsweredOrder = z.output<typeof orders.orderView> & { promise: PromiseView };

/** One order and the answer to it, with all the others that are open competing for the same tins. */
export const getOrder: UseCase<'getOrder'> = (asked, { params: { id = '' } }) =>
  readAtOnce(asked, async (context) => {
    const { db } = context.storage;
    const row = await findOrder(db, id);
    const [view] = row ? await viewOrders(db, [row]) : [];
    if (!view) return refused(thingNotFound('id', id));
    const [answered] = await answer(context, [view]);
    if (!row || !answered) return refused(thingNotFound('id', id));
    const isOver = view.state === 'sent' || view.state === 'cancelled';
    const { oldLabels } = isOver ? { oldLabels: [] } : await readOrderTins(context, row);
    return done({ ...answered, labelNotes: [...oldLabels] });
  });

/** Every order, the next promised first. The shelf is read once, however many there are. */
export const listOrders: UseCase<'listOrders'> = (asked) =>
  readAtOnce(asked, async (context) => {
    const { db } = context.storage;
    return done(await answer(context, await viewOrders(db, await readOrders(db))));
  });

async function answer(context: Context, views: readonly OrderView[]): Promise<AnsweredOrder[]> {
  const isOver = (view: OrderView) => view.state === 'sent' || view.state === 'cancelled';
  const promises = views.every(isOver) ? new Map<string, PromiseView>() : await promiseOpen(context);
  return views.map((view) => ({ ...view, promise: promises.get(view.id) ?? overPromise(view) }));
}

async function promiseOpen(context: Context) {
  const book = await readOrderBook(context);
  return promiseOrders(context, book, listOrdersToServe(book));
}

/** An order without anything to send was sent, or cancelled. */
const overPromise = ({ state }: OrderView): PromiseView => ({
  answer: state === 'cancelled' ? 'cancelled' : 'sent',
  sentence: saying(state === 'cancelled' ? 'order-is-cancelled' : 'order-is-sent'),
  tinsReady: 0,
  orderBy: null,
  notForSale: [],
  earliest: null,
  short: [],
  steps: [],
});

/**
 * The answer before an order is entered or changed: it stands after the orders that were promised for the same day or
 * an earlier one, and says which of the later ones it makes late. A changed order (orderId) takes its own place.
 */
export const previewPromise: UseCase<'previewPromise'> = (asked, { body }) =>
  readAtOnce(asked, (context) => preview(context, body));

async function preview(context: Context, wish: Wish): ReturnType<UseCase<'previewPromise'>> {
  const { db } = context.storage;
  const book = await readOrderBook(context);
  const row = wish.orderId === undefined ? undefined : await findOrder(db, wish.orderId);
  const problems = whyNotAsked(book, wish, row !== undefined);
  if (problems.length > 0) return refused(...problems);
  const [before] = row ? toServe(book, await viewOrders(db, [row])) : [];
  const asked = orderAsked(before, wish);
  const open = listOrdersToServe(book);
  const others = open.filter((order) => order.id !== asked.id);
  const answers = await promiseOrders(context, book, [...others, asked]);
  const promise = answers.get(asked.id);
  if (promise === undefined) throw new Error('an order was asked about and not answered');
  const without = await promiseOrders(context, book, open);
  const isInTime = (promised?: PromiseView) =>
    promised?.answer === 'yes' || promised?.answer === 'if-ordered';
  const late = others.filter(({ id }) => isInTime(without.get(id)) && !isInTime(answers.get(id)));
  return done({ ...promise, makesLate: late.map(({ number }) => number).sort((one, other) => one - other) });
}

function whyNotAsked(book: OrderBook, { lines, orderId }: Wish, isThere: boolean): Problem[] {
  const problems = orderId === undefined || isThere ? [] : [thingNotFound('orderId', orderId)];
  for (const [index, { productId }] of lines.entries()) {
    const product = book.products.get(productId);
    const where = `lines[${index}].productId`;
    if (!product) problems.push(thingNotFound(where, productId));
    else if (lines.findIndex((line) => line.productId === productId) < index)
      problems.push(problem('product-twice', where, { found: product.name }));
  }
  return problems;
}

/** What was sent of the order, or is kept for it, stays with its lines. */
function orderAsked(before: OrderToServe | undefined, wish: Wish): OrderToServe {
  return {
    id: before?.id ?? 'asked',
    number: before?.number ?? Number.MAX_SAFE_INTEGER,
    wantedBy: wish.wantedBy,
    lines: wish.lines.map(({ productId, units }) => {
      const line = before?.lines.find((row) => row.productId === productId);
      const { sent = 0, kept = 0, keptInVain = 0 } = line ?? {};
      return { productId, open: Math.max(0, units - sent), sent, kept, keptInVain };
    }),
  };
}
