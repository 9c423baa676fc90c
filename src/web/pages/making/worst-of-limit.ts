import { type Exact, type ExactInput, exact } from '../../../core/quantity/index.ts';

export interface NearLimit {
  /** What the formula asks for of the line, in grams of this batch. */
  readonly exactGrams: string;
  /** How many times that the tightest limit allows. */
  readonly timesAllowed: string;
  /** The scale's worst error of what is weighed here. */
  readonly errorGrams: string;
}

/**
 * At which part of the tightest limit a weighing lies at the worst: (m + e) / (x t), with m grams, e the scale's worst
 * error, x what the formula asks and t how many times that the limit allows. The rest counts as planned; more of this
 * makes the batch larger too, so it errs to the safe side above its target. Dimensionless; null where nothing is asked.
 */
export function worstOfLimit(
  grams: ExactInput,
  { exactGrams, timesAllowed, errorGrams }: NearLimit,
): Exact | null {
  const allowed = exact(exactGrams).times(timesAllowed);
  return allowed.gt(0) ? exact(grams).plus(errorGrams).div(allowed) : null;
}
