const SQRT_TWO_PI = Math.sqrt(2 * Math.PI);
const density = (x: number): number => Math.exp((-x * x) / 2) / SQRT_TWO_PI;

/** Below this the series converges in few terms, above it the continued fraction does. */
const SERIES_UP_TO = 2.5;

/** Share of the standard normal distribution above x >= 0; relative error below 1e-12 (from the two expansions). */
export function upperTail(x: number): number {
  return x <= SERIES_UP_TO ? 0.5 - density(x) * seriesOf(x) : density(x) / fractionOf(x);
}

/** x + x^3/3 + x^5/15 + ...: Abramowitz and Stegun 26.2.11. */
function seriesOf(x: number): number {
  let term = x;
  let sum = x;
  for (let odd = 3; term > sum * 1e-17; odd += 2) {
    term *= (x * x) / odd;
    sum += term;
  }
  return sum;
}

/** x + 1/(x + 2/(x + 3/(x + ...))): Abramowitz and Stegun 26.2.14. */
function fractionOf(x: number): number {
  let value = x;
  for (let depth = 200; depth >= 1; depth -= 1) value = x + depth / value;
  return value;
}

/** Share of the standard normal distribution below x, for any x. */
export const normalShareBelow = (x: number): number => (x >= 0 ? 1 - upperTail(x) : upperTail(-x));
