import { exact } from '../../../core/quantity/index.ts';
import type { Scale } from '../workshop/workshop.ts';

/** The planned scale; where it did not pass its check, the finest other one that holds the mass and may weigh. null: none. */
export function scaleToUse(planned: Scale | null, scales: readonly Scale[], grams: string): Scale | null {
  if (!planned?.check?.isHeld) return planned;
  return (
    scales
      .filter((scale) => scale.check?.isHeld !== true && exact(grams).lte(scale.capacityGrams))
      .toSorted((one, other) => exact(one.readabilityGrams).comparedTo(other.readabilityGrams))[0] ?? null
  );
}
