import type { Saying } from '../../contract/index.ts';

/** What the plan knew of a weighing; kept as JSON beside the batch's line, since scales and lots change later. */
export interface WeighingNote {
  readonly percent: string;
  /** By how much the target may be missed, in percent of it. */
  readonly tolerancePercent: string;
  readonly relativeError: number | null;
  readonly smallestWeightGrams: number | null;
  /** How many times what the formula asks its tightest limit allows; null or absent: nothing binds it. */
  readonly timesAllowed?: string | null;
  readonly warning: Saying | null;
  readonly lotNote: Saying | null;
}
