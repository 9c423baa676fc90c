import { type Exact, type ExactInput, exact, ONE } from '../quantity/index.ts';

export interface DriftWish {
  readonly values: readonly ExactInput[];
  readonly target: ExactInput;
  /** Standard deviation of the single values. */
  readonly standardDeviation: ExactInput;
  /** Weight of the newest value, above 0 and at most 1. */
  readonly lambda: ExactInput;
  /** Width of the limits in standard deviations of the average. */
  readonly width: ExactInput;
}

export interface Drift {
  readonly averages: readonly Exact[];
  readonly upper: Exact;
  readonly lower: Exact;
  readonly outside: readonly number[];
}

/**
 * Exponentially weighted moving average: a slow drift shows in it before a single value passes its limit.
 *
 * Equations: z(i) = lambda x(i) + (1 - lambda) z(i - 1), z(0) = target; limits target +- L s sqrt(lambda / (2 - lambda)).
 * Units: those of the values. Valid range: 0 < lambda <= 1; the limits are those of a long run.
 * Source: NIST/SEMATECH e-Handbook 6.3.2.4 (from memory).
 */
export function followDrift({ values, target, standardDeviation, lambda, width }: DriftWish): Drift {
  const weight = exact(lambda);
  const centre = exact(target);
  const averages: Exact[] = [];
  for (const value of values) {
    const before = averages.at(-1) ?? centre;
    averages.push(weight.times(value).plus(ONE.minus(weight).times(before)));
  }
  const half = exact(width)
    .times(standardDeviation)
    .times(weight.div(exact(2).minus(weight)).sqrt());
  return {
    averages,
    upper: centre.plus(half),
    lower: centre.minus(half),
    outside: averages.flatMap((average, place) => (average.minus(centre).abs().gt(half) ? [place] : [])),
  };
}
