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
  const daysUntil = (day: string) => Temporal.PlainDate.from(today).until(day, { largestUnit: 'days' }).days;
  const isInTime = (days: number) => isInTimeDelayed(question, toOrder, days);
  const leads = answer.shortOf
    .filter((short) => toOrder.has(short.itemId))
    .map((short) => short.leadDays ?? 0);
  const latest = findLatest(
    daysUntil(question.wantedBy) - daysUntil(answer.earliest?.to ?? question.wantedBy),
    daysUntil(question.wantedBy) - Math.max(...leads),
    isInTime,
  );
  return Temporal.PlainDate.from(today).add({ days: latest }).toString();
}

/**
 * Between what is in time in any case, since everything comes so many days later, and what cannot be, since the goods
 * themselves come too late. Mostly it is one of the two ends.
 */
function findLatest(surely: number, most: number, isInTime: (days: number) => boolean): number {
  if (surely >= most || isInTime(most)) return Math.max(surely, most);
  if (!isInTime(surely + 1)) return surely;
  let [inTime, tooLate] = [surely + 1, most];
  while (tooLate - inTime > 1) {
    const middle = Math.floor((inTime + tooLate) / 2);
    if (isInTime(middle)) inTime = middle;
    else tooLate = middle;
  }
  return inTime;
}

function isInTimeDelayed(question: PromiseQuestion, toOrder: ReadonlySet<string>, days: number): boolean {
  const items = question.items.map((item) =>
    toOrder.has(item.itemId) && item.leadDays !== null ? { ...item, leadDays: item.leadDays + days } : item,
  );
  const delayed = promiseDate({ ...question, items });
  return delayed.ok && delayed.value.answer === 'if-bought';
}
