import { type Exact, type ExactInput, exact } from '../quantity/index.ts';
import { spreadOf, type WeightSpread } from './weight-spread.ts';

export type PackRule = 'below-limit-2' | 'below-limit-1' | 'mean' | 'below-nominal';

export interface PackRules {
  readonly nominal: Exact;
  /** null: none may lie below the nominal quantity (the minimum way, or no tolerable error at this size). */
  readonly average: {
    readonly limit1: Exact;
    readonly limit2: Exact;
    readonly mayLieBelowLimit1: number;
    /** k of mean >= nominal - k s; 0 where all packs were weighed. */
    readonly meanFactor: Exact;
  } | null;
}

export interface PackVerdict {
  readonly spread: WeightSpread;
  readonly belowNominal: number;
  readonly verdict: 'accept' | 'reject';
  /** Rules that were broken, the gravest first. */
  readonly broken: readonly PackRule[];
}

export const countBelow = (weights: readonly ExactInput[], limit: Exact): number =>
  weights.filter((weight) => exact(weight).lt(limit)).length;

/**
 * mean >= nominal - k s, without a root or a division: with d = n nominal - sum, either d <= 0, or
 * d^2 (n - 1) <= k^2 n (n sum of squares - squared sum).
 */
function isMeanHighEnough({ count, total, scatter }: WeightSpread, nominal: Exact, factor: Exact): boolean {
  const missing = nominal.times(count).minus(total);
  if (missing.lte(0)) return true;
  return (
    count > 1 &&
    missing
      .pow(2)
      .times(count - 1)
      .lte(factor.pow(2).times(count).times(scatter))
  );
}

/** Judges weights against the packers' rules. At least one weight. */
export function judgePacks(weights: readonly ExactInput[], { nominal, average }: PackRules): PackVerdict {
  const spread = spreadOf(weights);
  const belowNominal = countBelow(weights, nominal);
  const broken: PackRule[] = [];
  if (average === null) {
    if (belowNominal > 0) broken.push('below-nominal');
  } else {
    if (countBelow(weights, average.limit2) > 0) broken.push('below-limit-2');
    if (countBelow(weights, average.limit1) > average.mayLieBelowLimit1) broken.push('below-limit-1');
    if (!isMeanHighEnough(spread, nominal, average.meanFactor)) broken.push('mean');
  }
  return { spread, belowNominal, verdict: broken.length === 0 ? 'accept' : 'reject', broken };
}
