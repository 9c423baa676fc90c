import { Temporal } from 'temporal-polyfill';
import { type PromiseAnswer, type PromiseQuestion, promiseDate } from '../../core/stock/index.ts';
import type { OrderBook } from './read-order-book.ts';

/**
 * The last day on which what is short can be ordered so that all of it goes by the day it is wanted, at the longest
 * setting time: the greatest delay from today that still is in time, since a later order is never here earlier. null:
 * all of it is on its way already, or even ordered today it is too late, or nobody has said how long delivery takes.
 */
export function findOrderBy(
  { today, onTheirWay }: Pick<OrderBook, 'today' | 'onTheirWay'>,
  question: PromiseQuestion,
  answer: PromiseAnswer,
): string | null {
  const toOrder = new Set(answer.shortOf.map((short) => short.itemId).filter((id) => !onTheirWay.has(id)));
  if (answer.answer !== 'if-bought' || toOrder.size === 0) return null;
  const first = Temporal.PlainDate.from(today);
  const isInTime = (days: number) => isInTimeDelayed(question, toOrder, days);
  let [inTime, tooLate] = [0, first.until(question.wantedBy, { largestUnit: 'days' }).days + 1];
  while (tooLate - inTime > 1) {
    const middle = Math.floor((inTime + tooLate) / 2);
    if (isInTime(middle)) inTime = middle;
    else tooLate = middle;
  }
  return first.add({ days: inTime }).toString();
}

function isInTimeDelayed(question: PromiseQuestion, toOrder: ReadonlySet<string>, days: number): boolean {
  const items = question.items.map((item) =>
    toOrder.has(item.itemId) && item.leadDays !== null ? { ...item, leadDays: item.leadDays + days } : item,
  );
  const delayed = promiseDate({ ...question, items });
  return delayed.ok && delayed.value.answer === 'if-bought';
}
