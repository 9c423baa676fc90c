import { Temporal } from 'temporal-polyfill';
import type { BookMaterial, OrderBook } from './read-order-book.ts';

/**
 * Days until goods of a material can be here: of what is on its way those until the day on which it is expected, or
 * where the supplier named none until the usual delivery from the day of ordering is over; else the usual delivery from
 * today. null: nobody has said, or the day is past, so that none can be promised.
 */
export function daysUntilHere(
  { today, onTheirWay }: Pick<OrderBook, 'today' | 'onTheirWay'>,
  { id, details: { leadDays } }: Pick<BookMaterial, 'id' | 'details'>,
): number | null {
  const goods = onTheirWay.get(id);
  if (!goods?.ordered_on) return leadDays;
  const usual = leadDays === null ? null : Temporal.PlainDate.from(goods.ordered_on).add({ days: leadDays });
  const due = goods.expected_on ?? usual;
  if (due === null) return null;
  const { days } = Temporal.PlainDate.from(today).until(due, { largestUnit: 'days' });
  return days < 0 ? null : days;
}
