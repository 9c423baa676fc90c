import { done, problem, type Result, refused } from '../problem.ts';
import { type Exact, type ExactInput, exact, ZERO } from '../quantity/index.ts';
import { countBelow, judgePacks, type PackRule } from './judge-packs.ts';
import { meanTestFactor } from './mean-test-factor.ts';
import type { PackTestTables } from './net-contents-tables.ts';
import { findSamplingPlan } from './sampling-plan.ts';
import { findTolerableError } from './tolerable-error.ts';
import type { WeightSpread } from './weight-spread.ts';

export interface BatchWeights {
  readonly nominalGrams: ExactInput;
  readonly batchSize: number;
  /** Net weights, all of them or the sample of the plan. */
  readonly weightsGrams: readonly ExactInput[];
  readonly basis: 'average' | 'minimum';
}

export interface BatchWeightTest {
  readonly spread: WeightSpread;
  readonly belowNominal: number;
  /** null: this size has no tolerable error, so no such limit. */
  readonly belowLimit1: number | null;
  readonly belowLimit2: number | null;
  readonly verdict: 'accept' | 'reject';
  readonly broken: readonly PackRule[];
  readonly decidedBy: PackRule | 'all-rules';
}

/**
 * Tests the net weights of a batch of packs of one declared content, in grams.
 *
 * `minimum`: none below nominal. `average`: none below limit 2; the share below limit 1 and the mean as follows.
 * Fewer than 100 packs: all weighed, at most 5 % below limit 1, mean not below nominal.
 * 100 and more: the sample of the single plan (50, 80, 125) with its accepted number, mean >= nominal - k s; or all
 * weighed, for which the reference test has no plan: then packers' rules themselves hold, at most 2.5 % below limit 1
 * and the mean not below nominal.
 * Exact: limits and mean are compared without a division or a root.
 * Source: SI 2006/659 Schedule 2; Directive 76/211/EEC Annexes I and II; packers' second rule as in UK guidance.
 */
export function testBatchWeights(batch: BatchWeights, tables: PackTestTables): Result<BatchWeightTest> {
  const { nominalGrams, weightsGrams, basis } = batch;
  const light = weightsGrams.findIndex((weight) => !exact(weight).gt(0));
  if (light >= 0) {
    const found = exact(weightsGrams[light] ?? 0).toFixed();
    return refused(problem('value-not-above', `weightsGrams[${light}]`, { found, allowed: 0 }));
  }
  const allowance = findAllowance(batch, tables);
  if (!allowance.ok) return allowance;
  const limits = findTolerableError(nominalGrams, 'up-0.1', tables, 'nominalGrams');
  if (basis === 'average' && !limits.ok) return limits;
  const { limit1, limit2 } = limits.ok ? limits.value : { limit1: undefined, limit2: undefined };
  const judged = judgePacks(weightsGrams, {
    nominal: exact(nominalGrams),
    average: basis === 'average' && limits.ok ? { ...limits.value, ...allowance.value } : null,
  });
  return done({
    ...judged,
    belowLimit1: limit1 ? countBelow(weightsGrams, limit1) : null,
    belowLimit2: limit2 ? countBelow(weightsGrams, limit2) : null,
    decidedBy: judged.broken[0] ?? (basis === 'minimum' ? 'below-nominal' : 'all-rules'),
  });
}

interface Allowance {
  readonly mayLieBelowLimit1: number;
  readonly meanFactor: Exact;
}

function findAllowance(
  { batchSize, weightsGrams }: BatchWeights,
  { countTests, mayLieBelowLimit1Fraction }: PackTestTables,
): Result<Allowance> {
  const plan = findSamplingPlan(batchSize, 'gb-single', countTests);
  if (!plan.ok) return plan;
  const { sampleSize, acceptAtMost } = plan.value.first;
  const weighed = weightsGrams.length;
  if (weighed === sampleSize) {
    const meanFactor = weighed === batchSize ? ZERO : meanTestFactor(weighed);
    return done({ mayLieBelowLimit1: acceptAtMost, meanFactor });
  }
  if (weighed === batchSize) {
    return done({
      mayLieBelowLimit1: exact(batchSize).times(mayLieBelowLimit1Fraction).floor().toNumber(),
      meanFactor: ZERO,
    });
  }
  return refused(
    problem('weights-not-the-sample', 'weightsGrams', {
      found: weighed,
      allowed: sampleSize === batchSize ? `${batchSize}` : `${sampleSize} or ${batchSize}`,
      parameters: { batchSize },
      source: 'SI 2006/659 Schedule 2',
    }),
  );
}
