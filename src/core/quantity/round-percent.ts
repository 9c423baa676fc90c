import { type Exact, type ExactInput, exact } from './exact.ts';

/** Digits that matter to a reader: three that count, and three places where there is more (common practice, no source). */
const DIGITS = 3;
const LEAST_PLACES = 3;

/** Places after the point that a percentage is read with: three, or as many as show three digits that count. */
export function percentPlaces(percent: ExactInput): number {
  const value = exact(percent);
  if (value.isZero()) return LEAST_PLACES;
  const leading = value.abs().toExponential();
  const exponent = Number(leading.slice(leading.indexOf('e') + 1));
  return Math.max(LEAST_PLACES, DIGITS - 1 - exponent);
}

/**
 * A percentage for reading, the same wherever it is shown: rounded half up from the exact one, never to nought, and to
 * the whole only where it is the whole.
 */
export function roundPercent(percent: ExactInput): Exact {
  const value = exact(percent);
  let places = percentPlaces(value);
  while (value.lt(100) && value.toDecimalPlaces(places).eq(100)) places += 1;
  return value.toDecimalPlaces(places);
}
