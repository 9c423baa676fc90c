import { type Exact, type ExactInput, exact, roundToStep } from '../quantity/index.ts';
import { leastOnScale } from './least-on-scales.ts';
import { findErrorOnScale, type Scale } from './scale.ts';
import type { ScaleTables } from './scale-tables.ts';

/** One addition weighed as several on one scale. */
export interface InParts {
  readonly scale: Scale;
  readonly count: number;
  /** Of each part but the last, as the scale shows it. */
  readonly partGrams: Exact;
  readonly lastGrams: Exact;
  /** Worst case of one part, and of all together. */
  readonly partErrorGrams: Exact;
  readonly errorGrams: Exact;
}

/**
 * An addition in as few parts as may be, each of which a scale holds and weighs within the tolerance; of two scales that
 * take as many, the one with the least error. undefined: it takes no parts, or no scale weighs them well enough.
 *
 * Equations: parts = addition / what the scale holds, up to whole ones; each = addition / parts, as a step of the scale,
 * the last is what is left; error = parts x worst case of one, since all may be wrong the same way.
 * Valid range: additions above nought. Source: worst case as in findAdditionError; the sum of it is own computation.
 */
export function weighInParts(
  grams: ExactInput,
  scales: readonly Scale[],
  relativeTolerance: ExactInput,
  tables: ScaleTables,
): InParts | undefined {
  return scales
    .flatMap((scale) => partsOn(scale, exact(grams), relativeTolerance, tables) ?? [])
    .reduce<InParts | undefined>((best, each) => (best && !isBetter(each, best) ? best : each), undefined);
}

const isBetter = (one: InParts, other: InParts): boolean =>
  one.count === other.count ? one.errorGrams.lt(other.errorGrams) : one.count < other.count;

function partsOn(
  scale: Scale,
  grams: Exact,
  relativeTolerance: ExactInput,
  tables: ScaleTables,
): InParts | undefined {
  const most = holdsInSteps(scale);
  if (!most.gt(0) || grams.lte(most)) return undefined;
  const count = grams.div(most).ceil();
  const partGrams = roundToStep(grams.div(count), scale.readabilityGrams, 'up');
  const lastGrams = grams.minus(partGrams.times(count.minus(1)));
  // The last is the smallest of them.
  if (lastGrams.lt(leastOnScale(scale, relativeTolerance, tables))) return undefined;
  const error = findErrorOnScale(scale, partGrams, tables);
  if (!error.ok) return undefined;
  const partErrorGrams = error.value.worstCaseGrams;
  return {
    scale,
    count: count.toNumber(),
    partGrams,
    lastGrams,
    partErrorGrams,
    errorGrams: partErrorGrams.times(count),
  };
}

/** The most that a scale can show of what it holds. */
export const holdsInSteps = ({ capacityGrams, readabilityGrams }: Scale): Exact =>
  roundToStep(exact(capacityGrams), readabilityGrams, 'down');
