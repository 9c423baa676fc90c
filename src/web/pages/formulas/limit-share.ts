import { exact, toText } from '../../../core/quantity/index.ts';

/**
 * Share of a limit in percent, to one place, half up from the exact figures; with more places where it would stand on
 * another side of 100 than it does.
 */
export function shareOfLimit(percent: string, limitPercent: string): string {
  const value = exact(percent);
  const share = value.times(100).div(limitPercent);
  const side = value.cmp(limitPercent);
  for (let places = 1; places < share.decimalPlaces(); places += 1) {
    const short = share.toDecimalPlaces(places);
    if (short.cmp(100) === side) return toText(short);
  }
  return toText(share);
}

interface Judged {
  readonly verdict: string;
  readonly mostPercent: string;
  readonly limitPercent: string | null;
}

const RANK: Readonly<Record<string, number>> = {
  prohibited: 0,
  over: 1,
  unknown: 3,
  within: 2,
  'no-rule': 4,
};

/** Prohibited and over first, then within by how close it comes, then what is not known. */
export const closestFirst = <Row extends Judged>(rows: readonly Row[]): Row[] =>
  [...rows].sort(
    (one, other) => (RANK[one.verdict] ?? 9) - (RANK[other.verdict] ?? 9) || compareShares(other, one),
  );

/** By multiplying, since a limit may be nought. What has no limit for this use comes close to none. */
function compareShares(one: Judged, other: Judged): number {
  if (one.limitPercent === null || other.limitPercent === null)
    return Number(one.limitPercent !== null) - Number(other.limitPercent !== null);
  return exact(one.mostPercent)
    .times(other.limitPercent)
    .comparedTo(exact(other.mostPercent).times(one.limitPercent));
}
