import type { Exact, ExactInput } from '../quantity/index.ts';
import type { Premix } from './find-premix.ts';
import type { SmallestBatch } from './find-smallest-batch.ts';
import type { Scale } from './scale.ts';
import type { InParts } from './weigh-in-parts.ts';

/** One weighing of a batch, with what may be done about it where no scale weighs it at once within its tolerance. */
export interface WayAddition {
  readonly key: string;
  readonly grams: ExactInput;
  readonly relativeTolerance: ExactInput;
  /** A scent: it may be mixed with the others ahead. */
  readonly isScent: boolean;
  /** It may thin a premix: no limit binds it, and it takes part by itself. */
  readonly isCarrier: boolean;
}

/** A bottle of scents mixed ahead, from which each batch takes its share in one weighing. */
export interface BlendAhead {
  readonly keys: readonly string[];
  readonly totalGrams: Exact;
  /** Whole batches that the bottle suffices for. */
  readonly batches: number;
  readonly perBatchGrams: Exact;
  /** What goes into the bottle of each, in the order of the keys. */
  readonly grams: readonly Exact[];
}

export interface PremixInCarrier extends Premix {
  /** Of the substance, put into the premix: what the scale just weighs. */
  readonly substanceGrams: Exact;
  readonly carrierKey: string;
  /** What the portion brings of the carrier with it: left out of the carrier's own line. */
  readonly broughtGrams: Exact;
}

export interface WaysForOne {
  readonly key: string;
  /** The next above it that a scale of the workshop weighs at once within its tolerance; null: none does. */
  readonly leastGrams: Exact | null;
  /** The scale that weighs it well enough, and does not hold it; null: it is too small for all of them. */
  readonly tooSmallScale: Scale | null;
  /** The coarsest step of a scale that would do. */
  readonly stepGrams: Exact;
  readonly parts: InParts | null;
  readonly blend: BlendAhead | null;
  /** Batch in which it could be weighed; null: in none. */
  readonly largerBatchGrams: Exact | null;
  readonly premix: PremixInCarrier | null;
}

export interface WaysToWeigh {
  /** The smallest batch in which every addition is weighed within its tolerance; null: there is none. */
  readonly smallest: SmallestBatch | null;
  /** Of each addition that no scale weighs at once within its tolerance, in the order of the batch. */
  readonly hard: readonly WaysForOne[];
}
