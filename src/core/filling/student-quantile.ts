/** Share of Student's distribution between -t and t: Abramowitz and Stegun 26.7.3 (odd) and 26.7.4 (even). */
function shareWithin(t: number, degreesOfFreedom: number): number {
  const angle = Math.atan(t / Math.sqrt(degreesOfFreedom));
  const squared = Math.cos(angle) ** 2;
  const isOdd = degreesOfFreedom % 2 === 1;
  let term = isOdd ? Math.cos(angle) : 1;
  let sum = degreesOfFreedom === 1 ? 0 : term;
  for (let k = isOdd ? 3 : 2; k < degreesOfFreedom; k += 2) {
    term *= ((k - 1) / k) * squared;
    sum += term;
  }
  return isOdd ? (2 / Math.PI) * (angle + Math.sin(angle) * sum) : Math.sin(angle) * sum;
}

/**
 * Quantile t of Student's distribution: the share `probability` lies at or below t. No unit.
 *
 * Valid range: 0.5 <= probability <= 0.9999, whole degrees of freedom from 1 to 100 000. Error below 1e-8.
 * Method: halving of the finite sums of Abramowitz and Stegun 26.7.3 and 26.7.4.
 */
export function studentQuantile(probability: number, degreesOfFreedom: number): number {
  if (!(probability >= 0.5 && probability <= 0.9999)) throw new RangeError(`no quantile of ${probability}`);
  const within = 2 * probability - 1;
  let low = 0;
  let high = 10_000;
  for (let halving = 0; halving < 80; halving += 1) {
    const middle = (low + high) / 2;
    if (shareWithin(middle, degreesOfFreedom) < within) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
