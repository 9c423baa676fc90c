import type { Exact, ExactInput } from '../quantity/index.ts';
import type { Premix } from './find-premix.ts';
import type { Scale } from './scale.ts';

/** One weighing of a batch, with what may be done about it where it is too small. */
export interface WayAddition {
  readonly key: string;
  readonly grams: ExactInput;
  readonly relativeTolerance: ExactInput;
  /** A scent: it may be mixed with the others ahead. */
  readonly isScent: boolean;
  /** It may thin a premix: no limit binds it, and it takes part by itself. */
  readonly isCarrier: boolean;
}

/** A finer scale: one of the workshop's, or the coarsest step that would do. */
export interface FinerScale {
  /** null: none of the workshop's weighs it within its tolerance. */
  readonly scale: Scale | null;
  readonly readabilityGrams: Exact;
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
  /** The least that the workshop's scales weigh of it within its tolerance; null: none of them weighs anything. */
  readonly leastGrams: Exact | null;
  readonly finer: FinerScale;
  readonly blend: BlendAhead | null;
  /** Batch in which it could be weighed; null: in none. */
  readonly largerBatchGrams: Exact | null;
  readonly premix: PremixInCarrier | null;
}

export interface WaysToWeigh {
  /** The smallest batch in which every addition is weighed within its tolerance; null: there is none. */
  readonly smallestBatchGrams: Exact | null;
  /** Of each addition that is too small, in the order of the batch. */
  readonly small: readonly WaysForOne[];
}
