import { upperTail } from './normal-share.ts';

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
