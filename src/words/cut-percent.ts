import { type Exact, exact, toText } from '../core/quantity/index.ts';

/** Digits that matter to a reader: three that count, and two places where there is a whole number (common practice, no source). */
const DIGITS = 3;
const LEAST_PLACES = 2;

/** Places after the point in which the third digit that counts stands: 3 for 0.0123 -> 0.0123, 2 for 43.604 -> 43.60. */
function placesFor(value: Exact): number {
  if (value.isZero()) return LEAST_PLACES;
  const leading = value.abs().toExponential();
  const exponent = Number(leading.slice(leading.indexOf('e') + 1));
  return Math.max(LEAST_PLACES, DIGITS - 1 - exponent);
}

/**
 * A percentage for reading. It is cut to the digits that matter, and only so far that it stays on its side of every
 * bound that is shown beside it: what is over a limit never reads as the limit, and what lies on it never as over.
 */
export function cutPercent(
  percent: string | number,
  bounds: readonly (string | number | null)[] = [],
): string {
  const value = exact(percent);
  const sides = bounds.flatMap((bound) => (bound === null ? [] : [exact(bound)]));
  for (let places = placesFor(value); places < value.decimalPlaces(); places += 1) {
    const short = value.toDecimalPlaces(places);
    if (sides.every((bound) => short.cmp(bound) === value.cmp(bound))) return toText(short);
  }
  return toText(value);
}
