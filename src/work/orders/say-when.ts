import type { Saying } from '../../contract/index.ts';
import { localDate } from '../local-date.ts';
import { saying } from '../saying.ts';
import { nearDay } from './near-day.ts';
import type { OrderBook } from './read-order-book.ts';
import { sayMomentOf } from './say-moment.ts';

/** Instants, at the best and at the longest. null: not known before something is bought. */
export interface Span {
  readonly from: string | null;
  readonly to: string | null;
}

type Clock = Pick<OrderBook, 'now' | 'today' | 'timeZone'>;

/** The later of two spans: what needs both can begin then. */
export const laterOf = (one: Span, other: Span): Span => ({
  from: laterInstant(one.from, other.from),
  to: laterInstant(one.to, other.to),
});

const laterInstant = (one: string | null, other: string | null): string | null =>
  one === null || other === null ? null : Date.parse(one) >= Date.parse(other) ? one : other;

const dayOf = ({ now, today, timeZone }: Clock, instant: string): string =>
  Date.parse(instant) <= Date.parse(now) ? today : localDate(instant, timeZone);

/**
 * Work is said in whole days: nobody has told the workshop's hours, and a time of day would be more than is known. No
 * day lies in the past.
 */
export function sayWhen(clock: Clock, { from, to }: Span): Saying {
  if (from === null || to === null) return saying('order-when-here');
  const [day, last] = [dayOf(clock, from), dayOf(clock, to)];
  return saying(day === last ? 'order-when-day' : 'order-when-days', {
    day,
    dayNear: nearDay(day, clock.today),
    last,
    lastNear: nearDay(last, clock.today),
  });
}

/** What sets goes by parts of the day; what began to be firm already is said to, and what is over is due now. */
export function sayFirm(clock: Clock, { from, to }: Span): Saying {
  if (from === null || to === null) return saying('order-when-here');
  const has = (instant: string) => Date.parse(instant) <= Date.parse(clock.now);
  if (has(to)) return saying('order-when-overdue');
  const parts = { ...sayMomentOf(clock, 'from', from), ...sayMomentOf(clock, 'to', to) };
  if (has(from)) return saying('order-when-firm-by', parts);
  const isOne = parts.from === parts.to && parts.fromPart === parts.toPart;
  return saying(isOne ? 'order-when-firm-at' : 'order-when-firm-between', parts);
}
