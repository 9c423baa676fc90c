import { type Exact, exact } from '../quantity/index.ts';

/**
 * Whole-number ratios. A share of a formula, grams over total, mostly has no finite decimal: a third of 300 g is
 * 33.333... %, and three of them must still be 100 %. Shares are therefore kept as whole numerators over one whole
 * denominator, added there, and divided once at the end.
 */
export function greatestCommonDivisor(first: bigint, second: bigint): bigint {
  let [larger, smaller] = [first, second];
  while (smaller !== 0n) [larger, smaller] = [smaller, larger % smaller];
  return larger;
}

export const leastCommonMultiple = (first: bigint, second: bigint): bigint =>
  (first / greatestCommonDivisor(first, second)) * second;

/**
 * Division of whole numbers of nought or more by one denominator. A quotient that has an end is exact.
 *
 * One that has none is rounded half up, so far down that it is never rounded onto a limit that it misses: quotient and
 * a limit of p places differ, if at all, by at least 1 / (denominator x 10^p), and eight places more than the
 * denominator has digits keep apart every limit of up to seven places.
 */
export function divideBy(denominator: bigint): (numerator: bigint) => Exact {
  const places = denominator.toString().length + 8;
  const scale = 10n ** BigInt(places);
  const half = denominator / 2n;
  const exponent = `e-${places}`;
  return (numerator) => exact((numerator * scale + half) / denominator + exponent);
}
