import { type Exact, type ExactInput, exact, largest, roundToStep, smallest } from '../quantity/index.ts';
import { classOf, isWithinCapacity, type Scale } from './scale.ts';
import { findScaleErrors } from './scale-errors.ts';
import type { ScaleTables } from './scale-tables.ts';
import { findSmallestWeight } from './smallest-weight.ts';

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

/** The next mass, above one that no scale weighs, that one does within a tolerance; undefined: none does. */
export function findLeastAbove(
  grams: ExactInput,
  scales: readonly Scale[],
  relativeTolerance: ExactInput,
  tables: ScaleTables,
): Exact | undefined {
  const [first, ...rest] = scales
    .map((scale) => ({ scale, least: leastOnScale(scale, relativeTolerance, tables) }))
    .filter(({ scale, least }) => least.gt(grams) && isWithinCapacity(least, scale))
    .map(({ least }) => least);
  return first && smallest(first, ...rest);
}

/** Of the scales that would weigh a mass well enough and do not hold it, the one that holds most; undefined: there is none. */
export function findTooSmallScale(
  grams: ExactInput,
  scales: readonly Scale[],
  relativeTolerance: ExactInput,
  tables: ScaleTables,
): Scale | undefined {
  const [first, ...rest] = scales.filter((scale) => {
    const least = leastOnScale(scale, relativeTolerance, tables);
    return isWithinCapacity(least, scale) && !isWithinCapacity(grams, scale);
  });
  return (
    first &&
    rest.reduce((most, each) => (exact(each.capacityGrams).gt(most.capacityGrams) ? each : most), first)
  );
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
