import { Temporal } from 'temporal-polyfill';

/**
 * The latest instant at which a base may begin to set so that it is firm on the day wanted, even at the longest: the
 * last millisecond of that day less its longest setting time. Making and filling are taken as done on the day on which
 * the base is firm (common practice, no source).
 */
export function findLatestStart(wantedBy: string, longestHours: number, timeZone: string): string {
  const dayAfter = Temporal.PlainDate.from(wantedBy).add({ days: 1 }).toZonedDateTime(timeZone);
  return dayAfter
    .toInstant()
    .subtract({ milliseconds: 1, minutes: Math.round(longestHours * 60) })
    .toString();
}

/**
 * The last day on which a base is melted in good time: counted back in whole days, since nobody has told the workshop's
 * hours, so that its longest setting and the filling are over before the day of sending (common practice, no source).
 */
export const findLastMeltDay = (wantedBy: string, longestHours: number): string =>
  Temporal.PlainDate.from(wantedBy)
    .subtract({ days: 1 + Math.ceil(longestHours / 24) })
    .toString();
