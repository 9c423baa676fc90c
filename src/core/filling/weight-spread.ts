import { type Exact, type ExactInput, exact, sumOf } from '../quantity/index.ts';

export interface WeightSpread {
  readonly count: number;
  readonly total: Exact;
  readonly mean: Exact;
  /** n x sum of squares less the squared sum, which is n (n - 1) s^2: exact, where s itself is not. */
  readonly scatter: Exact;
  /** Divisor n - 1; null for a single pack, which has none. */
  readonly standardDeviation: Exact | null;
}

/** Mean and standard deviation of weights (at least one), in their unit. */
export function spreadOf(weights: readonly ExactInput[]): WeightSpread {
  const count = weights.length;
  const total = sumOf(weights);
  const squares = sumOf(weights.map((weight) => exact(weight).pow(2)));
  const scatter = squares.times(count).minus(total.pow(2));
  return {
    count,
    total,
    mean: total.div(count),
    scatter,
    standardDeviation: count < 2 ? null : scatter.div(count * (count - 1)).sqrt(),
  };
}
