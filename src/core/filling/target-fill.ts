import { done, type Result } from '../problem.ts';
import { type Exact, type ExactInput, exact } from '../quantity/index.ts';
import type { NetContentsTables, TargetRule } from './net-contents-tables.ts';
import { normalQuantile } from './normal-quantile.ts';
import { findTolerableError } from './tolerable-error.ts';

export interface TargetFill {
  readonly targetGrams: Exact;
  readonly giveawayGrams: Exact;
  readonly decidedBy: TargetRule['decides'] | 'coverage';
}

/**
 * What to aim at, in grams, so that a batch filled with this spread meets packers' rules on the average.
 *
 * Equation: target = greatest of Qn; Qn - T + 2 s (at most 2.5 % below limit 1); Qn - 2 T + 3.72 s (about 1 in 10 000
 * below limit 2). On equality the earlier rule is named.
 * Valid range: normally spread fills, 5 g to 25 kg; wandering of the mean, tare and drying are not allowed for.
 * Source: guidance note to SI 2006/659, Annex C (from memory, check).
 */
export function findTargetOnAverage(
  nominalGrams: ExactInput,
  standardDeviationGrams: ExactInput,
  tables: NetContentsTables,
): Result<TargetFill> {
  const nominal = exact(nominalGrams);
  const error = findTolerableError(nominal, 'up-0.1', tables, 'nominalGrams');
  if (!error.ok) return error;
  const { tolerableError } = error.value;
  const wanted = (rule: TargetRule): Exact =>
    nominal
      .minus(tolerableError.times(rule.tolerableErrorMultiple))
      .plus(exact(standardDeviationGrams).times(rule.deviationMultiple));
  let best: TargetFill = {
    targetGrams: nominal,
    giveawayGrams: nominal.minus(nominal),
    decidedBy: 'nominal',
  };
  for (const rule of tables.targetRules) {
    const targetGrams = wanted(rule);
    if (targetGrams.lte(best.targetGrams)) continue;
    best = { targetGrams, giveawayGrams: targetGrams.minus(nominal), decidedBy: rule.decides };
  }
  return done(best);
}

/**
 * What to aim at, in grams, so that the share `coverage` of packs holds at least the nominal quantity.
 *
 * Equation: target = Qn + z(coverage) s, with z the quantile of the standard normal distribution.
 * Valid range: normally spread fills, 0.5 <= coverage < 1. Error of z below 1e-9.
 */
export function findTargetForCoverage(
  nominalGrams: ExactInput,
  standardDeviationGrams: ExactInput,
  coverage: number,
): TargetFill {
  const giveawayGrams = exact(normalQuantile(coverage)).times(standardDeviationGrams);
  const targetGrams = exact(nominalGrams).plus(giveawayGrams);
  return { targetGrams, giveawayGrams, decidedBy: giveawayGrams.isZero() ? 'nominal' : 'coverage' };
}
