import { type Exact, type ExactInput, ZERO } from '../quantity/index.ts';
import { spreadOf } from './weight-spread.ts';

export interface PooledSpread {
  /** Within the groups, in the unit of the weights. */
  readonly standardDeviation: Exact;
  readonly degreesOfFreedom: number;
  /** Groups of two and more, and what they hold. */
  readonly groups: number;
  readonly count: number;
}

/**
 * Spread of weights within their groups (runs, cups of one bowl), however the groups' means lie; null where no group
 * has two.
 *
 * Equation: s^2 = sum of the squared differences from each group's own mean / sum of (n - 1); no unit but the weights'.
 * Valid range: groups that vary alike. Source: pooled variance of the analysis of variance, NIST/SEMATECH e-Handbook 7.4.3.
 */
export function poolSpread(groups: readonly (readonly ExactInput[])[]): PooledSpread | null {
  const counted = groups.filter((group) => group.length >= 2);
  const degreesOfFreedom = counted.reduce((sum, group) => sum + group.length - 1, 0);
  if (degreesOfFreedom === 0) return null;
  // n (n - 1) s^2 is exact, and so the sum of squares n - 1 times s^2 is divided once.
  const squares = counted.reduce<Exact>(
    (sum, group) => sum.plus(spreadOf(group).scatter.div(group.length)),
    ZERO,
  );
  return {
    standardDeviation: squares.div(degreesOfFreedom).sqrt(),
    degreesOfFreedom,
    groups: counted.length,
    count: counted.reduce((sum, group) => sum + group.length, 0),
  };
}
