import { Temporal } from 'temporal-polyfill';
import type { SafetyTables } from './safety-tables.ts';

/** A law that asks for more on labels, by the two days on which it begins. */
export interface NamingChange {
  /** First day on which a unit placed on the market must comply. */
  readonly requiredForPlacingFrom: string;
  /** First day on which every unit still made available must comply. */
  readonly requiredForMakingAvailableFrom: string;
}

export interface OldStock {
  /** Last day on which a unit with the older words may be placed on the market. */
  readonly placedUntil: string;
  /** Last day on which what was placed by then may be sold on. */
  readonly soldUntil: string;
  readonly verdict: 'may-be-placed' | 'may-be-sold-on' | 'placed-too-late' | 'sold-too-late';
}

const dayBefore = (day: string): string => Temporal.PlainDate.from(day).subtract({ days: 1 }).toString();

/** Every pair of days on which a duty to name fragrance allergens began or begins, the earliest first. */
export function listNamingChanges({ allergens }: Pick<SafetyTables, 'allergens'>): NamingChange[] {
  const rows = [...(allergens.byEntryId?.values() ?? [])];
  const days = rows.flatMap((row) => (row.newMembers === undefined ? [row] : [row, row.newMembers]));
  const pairs = new Map(
    days.map(({ requiredForPlacingFrom, requiredForMakingAvailableFrom }) => [
      `${requiredForPlacingFrom} ${requiredForMakingAvailableFrom}`,
      { requiredForPlacingFrom, requiredForMakingAvailableFrom },
    ]),
  );
  return [...pairs].sort(([one], [other]) => (one < other ? -1 : 1)).map(([, change]) => change);
}

/**
 * A unit under the wording of before a change: it may be placed on the market up to the day before the first date, and
 * what was placed by then may be made available up to the day before the second (Regulation (EU) 2023/1545, Article 1
 * and its Annex: 31 July 2026 and 31 July 2028). Days as YYYY-MM-DD; `placedOn` is the unit's own day of first supply.
 */
export function judgeOldStock(
  { requiredForPlacingFrom, requiredForMakingAvailableFrom }: NamingChange,
  { placedOn, today }: { readonly placedOn: string; readonly today: string },
): OldStock {
  const verdict =
    placedOn >= requiredForPlacingFrom
      ? 'placed-too-late'
      : today >= requiredForMakingAvailableFrom
        ? 'sold-too-late'
        : today >= requiredForPlacingFrom
          ? 'may-be-sold-on'
          : 'may-be-placed';
  return {
    placedUntil: dayBefore(requiredForPlacingFrom),
    soldUntil: dayBefore(requiredForMakingAvailableFrom),
    verdict,
  };
}
