import { Decimal } from 'decimal.js';

/**
 * Exact decimal numbers for everything that is measured, judged or paid.
 *
 * 60 significant digits: a product of three measured numbers of 20 digits each stays exact, where decimal.js's
 * default of 20 digits would round it (common practice, no source). This is the only room that imports decimal.js.
 */
const ExactDecimal = Decimal.clone({
  precision: 60,
  rounding: Decimal.ROUND_HALF_UP,
  toExpNeg: -60,
  toExpPos: 60,
});

export type Exact = Decimal;
export type ExactInput = number | string | Decimal;

/** A JSON number enters as its shortest decimal text: 29.4 becomes exactly 29.4. One that is exact never changes. */
export const exact = (value: ExactInput): Exact =>
  value instanceof ExactDecimal ? value : new ExactDecimal(value);

export const ZERO: Exact = exact(0);
export const ONE: Exact = exact(1);
export const HUNDRED: Exact = exact(100);

export function sumOf(values: Iterable<ExactInput>): Exact {
  let total = ZERO;
  for (const value of values) total = total.plus(value);
  return total;
}

export const smallest = (first: Exact, ...rest: Exact[]): Exact => ExactDecimal.min(first, ...rest);
export const largest = (first: Exact, ...rest: Exact[]): Exact => ExactDecimal.max(first, ...rest);

/** Rounds to a whole multiple of `step`: `nearest` (half up), `up` or `down`. */
export function roundToStep(
  value: Exact,
  step: ExactInput,
  direction: 'nearest' | 'up' | 'down' = 'nearest',
): Exact {
  const mode = { nearest: Decimal.ROUND_HALF_UP, up: Decimal.ROUND_CEIL, down: Decimal.ROUND_FLOOR }[
    direction
  ];
  const size = exact(step);
  return value.div(size).toDecimalPlaces(0, mode).times(size);
}

/** Fixed places, never an exponent: for text that a person reads or a file keeps. */
export const toText = (value: Exact, places?: number): string =>
  value.toFixed(...(places === undefined ? [] : [places]));
