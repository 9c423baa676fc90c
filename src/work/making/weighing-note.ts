import type { Saying } from '../../contract/index.ts';

/** What the plan knew of a weighing; kept as JSON beside the batch's line, since scales and lots change later. */
export interface WeighingNote {
  readonly percent: string;
  /** By how much the target may be missed, in percent of it. */
  readonly tolerancePercent: string;
  readonly relativeError: number | null;
  readonly smallestWeightGrams: number | null;
  readonly warning: Saying | null;
  readonly lotNote: Saying | null;
}
