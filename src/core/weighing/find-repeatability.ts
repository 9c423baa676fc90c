import { done, problem, type Result, refused } from '../problem.ts';
import { type Exact, type ExactInput, exact, sumOf } from '../quantity/index.ts';

export interface Repeatability {
  readonly count: number;
  readonly meanGrams: Exact;
  /** Standard deviation, divisor n - 1. */
  readonly deviationGrams: Exact;
  /** Greatest less least. */
  readonly spanGrams: Exact;
}

/** USP general chapter 41: one test weight, weighed at least ten times. */
export const LEAST_WEIGHINGS = 10;

/**
 * Repeatability of a scale from one weight put on and off, in grams.
 *
 * Equation: s = sqrt(sum of (x - mean)^2 / (n - 1)).
 * Valid range: ten readings or more, each a step of the scale, none above its capacity, not all at nothing.
 * Source: USP general chapter 41 (n at least 10).
 */
export function findRepeatability(
  readings: readonly ExactInput[],
  scale: { readonly readabilityGrams: ExactInput; readonly capacityGrams: ExactInput },
): Result<Repeatability> {
  const count = readings.length;
  if (count < LEAST_WEIGHINGS)
    return refused(problem('test-too-few', 'readings', { found: count, allowed: LEAST_WEIGHINGS }));
  const wrong = readings.flatMap((reading, place) => {
    const grams = exact(reading);
    const where = `readings[${place}]`;
    if (!grams.gt(0)) return [problem('value-not-above', where, { found: grams.toFixed(), allowed: 0 })];
    if (grams.gt(scale.capacityGrams))
      return [
        problem('reading-above-capacity', where, {
          found: grams.toFixed(),
          allowed: exact(scale.capacityGrams).toFixed(),
        }),
      ];
    return grams.mod(scale.readabilityGrams).isZero()
      ? []
      : [
          problem('reading-not-a-step', where, {
            found: grams.toFixed(),
            allowed: exact(scale.readabilityGrams).toFixed(),
          }),
        ];
  });
  if (wrong.length > 0) return refused(...wrong);
  const values = readings.map(exact);
  const total = sumOf(values);
  const scatter = sumOf(values.map((value) => value.pow(2)))
    .times(count)
    .minus(total.pow(2));
  return done({
    count,
    meanGrams: total.div(count),
    deviationGrams: scatter.div(count * (count - 1)).sqrt(),
    spanGrams: greatestOf(values).minus(leastOf(values)),
  });
}

const greatestOf = (values: readonly Exact[]): Exact =>
  values.reduce((most, value) => (value.gt(most) ? value : most));
const leastOf = (values: readonly Exact[]): Exact =>
  values.reduce((least, value) => (value.lt(least) ? value : least));
