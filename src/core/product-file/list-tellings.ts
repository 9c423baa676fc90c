import { Temporal } from 'temporal-polyfill';

/** The rows on serious undesirable effects, as the tables have them. */
export interface TellingRule {
  readonly market: 'GB' | 'NI' | 'EU' | 'US';
  readonly rule: string;
  readonly days?: number | undefined;
  readonly businessDays?: number | undefined;
  readonly confidence: string;
  readonly source: string;
}

export interface Telling extends TellingRule {
  /** The last day, that day included; null: without delay, and no number of days is in the tables. */
  readonly by: string | null;
  readonly isPast: boolean;
}

/**
 * Who has to be told of a serious undesirable effect and by when: calendar days, or business days, after the day on
 * which it was received. Business days are Monday to Friday: a public holiday would make the day later, never sooner,
 * so that leaving holidays out is the cautious side.
 */
export const listTellings = (
  rules: readonly TellingRule[],
  receivedOn: string,
  today: string,
): readonly Telling[] =>
  rules.map((rule) => {
    const by = lastDayOf(rule, receivedOn);
    return { ...rule, by, isPast: by !== null && today > by };
  });

function lastDayOf({ days, businessDays }: TellingRule, receivedOn: string): string | null {
  const from = Temporal.PlainDate.from(receivedOn);
  if (days !== undefined) return from.add({ days }).toString();
  return businessDays === undefined ? null : addBusinessDays(from, businessDays).toString();
}

const SATURDAY = 6;

function addBusinessDays(from: Temporal.PlainDate, count: number): Temporal.PlainDate {
  let day = from;
  for (let left = count; left > 0; ) {
    day = day.add({ days: 1 });
    if (day.dayOfWeek < SATURDAY) left -= 1;
  }
  return day;
}
