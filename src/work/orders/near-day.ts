import { Temporal } from 'temporal-polyfill';

/** How a day is named by somebody who stands in this one: `today`, `tomorrow`, its weekday, or its date. */
export type Near = 'today' | 'tomorrow' | 'week' | 'date';

/** A weekday alone means the next of its name, so it is enough for six days on (common practice, no source). */
const LONGEST_WEEK = 6;

export function nearDay(day: string, today: string): Near {
  const days = Temporal.PlainDate.from(today).until(day, { largestUnit: 'days' }).days;
  if (days === 0) return 'today';
  if (days === 1) return 'tomorrow';
  return days > 1 && days <= LONGEST_WEEK ? 'week' : 'date';
}

export const NIGHT_ENDS = 5;

/** Hours at which each part of the day begins, as people in Britain mostly say it (common practice, no source). */
const PARTS = [
  [22, 'night'],
  [18, 'evening'],
  [13, 'afternoon'],
  [12, 'noon'],
  [NIGHT_ENDS, 'morning'],
  [0, 'night'],
] as const;

export type DayPart = (typeof PARTS)[number][1];

export function dayPart(instant: string, timeZone: string): DayPart {
  const { hour } = Temporal.Instant.from(instant).toZonedDateTimeISO(timeZone);
  return PARTS.find(([from]) => hour >= from)?.[1] ?? 'night';
}
