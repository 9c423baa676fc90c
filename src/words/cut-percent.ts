import { exact, percentPlaces, toText } from '../core/quantity/index.ts';

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
  for (let places = percentPlaces(value); places < value.decimalPlaces(); places += 1) {
    const short = value.toDecimalPlaces(places);
    if (sides.every((bound) => short.cmp(bound) === value.cmp(bound))) return toText(short);
  }
  return toText(value);
}
