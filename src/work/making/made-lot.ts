import { Temporal } from 'temporal-polyfill';
import type { formulas } from '../../contract/index.ts';
import type { LotAtHand } from '../../storage/index.ts';

type Details = Pick<formulas.RevisionDetails, 'settingHours' | 'keepMonths'>;

export interface MadeLotDates {
  readonly best_before: string | null;
  readonly keep_until: string | null;
  readonly firm_from: string | null;
  readonly firm_to: string | null;
}

/**
 * Dates of what was made: nothing keeps longer than the first of its lots to end. A base is looked at again after its
 * keep months at the latest; what sets is firm between the shortest and the longest setting time, counted from the
 * moment at which making ended.
 */
export function findMadeLotDates(
  kind: string,
  details: Details,
  made: { readonly at: string; readonly on: string },
  wentIn: readonly Pick<LotAtHand, 'best_before'>[],
): MadeLotDates {
  const ends = wentIn.flatMap((lot) => (lot.best_before === null ? [] : [lot.best_before])).sort();
  const first = ends[0] ?? null;
  return {
    best_before: first,
    keep_until: kind === 'base' ? earlier(first, monthsAfter(made.on, details.keepMonths)) : null,
    firm_from: hoursAfter(made.at, details.settingHours?.least),
    firm_to: hoursAfter(made.at, details.settingHours?.most),
  };
}

/** A day that the month lacks falls back to its last. */
const monthsAfter = (day: string, months: number | null): string | null =>
  months === null ? null : Temporal.PlainDate.from(day).add({ months }).toString();

const hoursAfter = (instant: string, hours: number | undefined): string | null =>
  hours === undefined
    ? null
    : Temporal.Instant.from(instant)
        .add({ minutes: Math.round(hours * 60) })
        .toString();

const earlier = (one: string | null, other: string | null): string | null => {
  if (one === null || other === null) return one ?? other;
  return one < other ? one : other;
};
