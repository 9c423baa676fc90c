import { Temporal } from 'temporal-polyfill';

/** How a day is named by somebody who stands in this one: `today`, `tomorrow`, or its weekday and date. */
export type Near = 'today' | 'tomorrow' | 'date';

export function nearDay(day: string, today: string): Near {
  if (day === today) return 'today';
  return Temporal.PlainDate.from(today).add({ days: 1 }).equals(day) ? 'tomorrow' : 'date';
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
