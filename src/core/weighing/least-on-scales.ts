import { type Exact, type ExactInput, exact, largest, roundToStep } from '../quantity/index.ts';
import { classOf, isWithinCapacity, type Scale } from './scale.ts';
import { findScaleErrors } from './scale-errors.ts';
import type { ScaleTables } from './scale-tables.ts';
import { findSmallestWeight } from './smallest-weight.ts';

export interface LeastWeight {
  readonly grams: Exact;
  readonly scale: Scale;
}

/** The least that one scale weighs within a tolerance, as a step of it, and not below the smallest load of its class. */
export function leastOnScale(scale: Scale, relativeTolerance: ExactInput, tables: ScaleTables): Exact {
  const repeating = {
    readabilityGrams: scale.readabilityGrams,
    repeatabilityGrams: scale.repeatabilityGrams ?? 0,
  };
  const { smallestWeightGrams } = findSmallestWeight(repeating, relativeTolerance);
  const classed = classOf(scale);
  const errors = classed ? findScaleErrors(classed, 0, tables) : undefined;
  const least = errors?.ok
    ? largest(smallestWeightGrams, errors.value.minimumLoadGrams)
    : smallestWeightGrams;
  return roundToStep(least, scale.readabilityGrams, 'up');
}

/** The scale that weighs least within a tolerance, of those that hold that; undefined: none does. */
export function leastOnScales(
  scales: readonly Scale[],
  relativeTolerance: ExactInput,
  tables: ScaleTables,
): LeastWeight | undefined {
  let best: LeastWeight | undefined;
  for (const scale of scales) {
    const grams = leastOnScale(scale, relativeTolerance, tables);
    if (isWithinCapacity(grams, scale) && (!best || grams.lt(best.grams))) best = { grams, scale };
  }
  return best;
}

/** The scale that weighs a mass within a tolerance, the first of them; undefined: none does. */
export const findScaleFor = (
  grams: ExactInput,
  scales: readonly Scale[],
  relativeTolerance: ExactInput,
  tables: ScaleTables,
): Scale | undefined =>
  scales.find(
    (scale) =>
      isWithinCapacity(grams, scale) && exact(grams).gte(leastOnScale(scale, relativeTolerance, tables)),
  );
