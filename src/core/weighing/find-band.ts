import { type Exact, type ExactInput, exact, largest, smallest, ZERO } from '../quantity/index.ts';

export interface BandWanted {
  readonly targetGrams: ExactInput;
  /** Half the width of the band, in grams. */
  readonly toleranceGrams: ExactInput;
  /** Where a limit allows less than the band would. */
  readonly mostGrams?: ExactInput | null;
}

export interface WeighingBand {
  readonly lowGrams: Exact;
  readonly highGrams: Exact;
}

/** Band of a target, in grams: closed at both ends, never below nought, its upper end held down by `mostGrams`. */
export function findBandAround({ targetGrams, toleranceGrams, mostGrams }: BandWanted): WeighingBand {
  const target = exact(targetGrams);
  const high = target.plus(toleranceGrams);
  return {
    lowGrams: largest(ZERO, target.minus(toleranceGrams)),
    highGrams: mostGrams == null ? high : smallest(high, exact(mostGrams)),
  };
}
