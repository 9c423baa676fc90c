import type { Problem } from '../problem.ts';
import type { Exact, ExactInput } from '../quantity/index.ts';
import type { WeighingBand } from './find-band.ts';
import type { Scale } from './scale.ts';

export interface WantedAddition {
  readonly key: string;
  readonly grams: ExactInput;
  /** How far off it may be, as a fraction of it: above 0, at most 1. */
  readonly relativeTolerance: ExactInput;
  /** A limit of law, trade, supplier or report holds for it: never rounded up, never above what the formula asks. */
  readonly isLimited: boolean;
  /** The most that its limit allows in this batch, where that is known and more than the formula asks. */
  readonly mostGrams?: ExactInput | null;
}

export interface PlannedWeighing extends WeighingBand {
  readonly key: string;
  readonly exactGrams: Exact;
  /** What the scale is to show; the exact mass where no scale can show it. */
  readonly targetGrams: Exact;
  /** null: no scale holds it. */
  readonly scale: Scale | null;
  readonly standardUncertaintyGrams: Exact | null;
  readonly relativeExpanded: Exact | null;
  readonly worstCaseRelative: Exact | null;
  readonly smallestWeightGrams: Exact | null;
  readonly belowMinimumLoad: boolean | null;
  /** What is wrong with this weighing, the gravest first; nothing of it stops the others. */
  readonly warnings: readonly Problem[];
}
