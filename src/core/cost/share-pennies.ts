import { type Exact, type ExactInput, exact, sumOf } from '../quantity/index.ts';

export interface SharedPennies {
  readonly total: Exact;
  /** In the order of the parts; null where the part is. */
  readonly parts: readonly (Exact | null)[];
}

const PENNY_PLACES = 2;
const ROUND_DOWN = 3;
const ROUND_HALF_UP = 4;

/**
 * A sum of money and its parts as they are shown, in whole hundredths, so that what stands in the lines adds up to what
 * stands below them. The total is rounded (half up); each part is cut off, and the pennies that are left go, one each,
 * to the largest remainders (Hamilton's method; equal remainders: the earlier part first). What is unknown gets none.
 * Valid range: parts of nought or more.
 */
export function sharePennies(parts: readonly (ExactInput | null)[]): SharedPennies {
  const known = parts.flatMap((part, index) => (part === null ? [] : [{ index, exact: exact(part) }]));
  const total = sumOf(known.map((part) => part.exact)).toDecimalPlaces(PENNY_PLACES, ROUND_HALF_UP);
  const cut = known.map((part) => ({ ...part, shown: part.exact.toDecimalPlaces(PENNY_PLACES, ROUND_DOWN) }));
  const left = total
    .minus(sumOf(cut.map((part) => part.shown)))
    .times(100)
    .toNumber();
  const byRemainder = [...cut].sort((one, other) =>
    other.exact.minus(other.shown).comparedTo(one.exact.minus(one.shown)),
  );
  const lifted = new Set(byRemainder.slice(0, left).map((part) => part.index));
  const shown = new Map(
    cut.map((part) => [part.index, lifted.has(part.index) ? part.shown.plus('0.01') : part.shown]),
  );
  return { total, parts: parts.map((_, index) => shown.get(index) ?? null) };
}
