import { done, type Result } from '../problem.ts';
import { type Exact, type ExactInput, exact } from '../quantity/index.ts';
import type { AdditionError } from './addition-error.ts';
import { leastOnScale } from './least-on-scales.ts';
import { findErrorOnScale, isWithinCapacity, type Scale } from './scale.ts';
import type { ScaleTables } from './scale-tables.ts';

export interface ChosenScale {
  readonly scale: Scale;
  readonly error: AdditionError;
}

const orderOf = ({ scale, error }: ChosenScale): readonly Exact[] => [
  error.worstCaseRelative,
  error.relativeExpanded,
  exact(scale.readabilityGrams),
  exact(scale.capacityGrams),
];

function isBetter(one: ChosenScale, other: ChosenScale): boolean {
  const others = orderOf(other);
  for (const [place, value] of orderOf(one).entries()) {
    const order = value.comparedTo(others[place] ?? value);
    if (order !== 0) return order < 0;
  }
  return false;
}

/** A small beaker or jug, in grams: it stands on the scale as well (common practice, no source). */
const VESSEL_GRAMS = 50;

/** Holds the mass in a vessel, and weighs it within its tolerance: a finer scale without that room is no gain. */
const isRoomyAndFine = (
  grams: ExactInput,
  scale: Scale,
  wanted: WantedOfScale,
  tables: ScaleTables,
): boolean =>
  isWithinCapacity(exact(grams).plus(VESSEL_GRAMS), scale) &&
  exact(grams).gte(leastOnScale(scale, wanted.relativeTolerance, tables));

interface WantedOfScale {
  readonly grams: ExactInput;
  readonly relativeTolerance: ExactInput;
}

/**
 * The scale that holds a mass with the least relative error: worst case first, then expanded uncertainty, then the
 * finer step, the smaller capacity, the order given. Scales that weigh it within its tolerance and have room for a
 * vessel come before all others. null: none holds it.
 */
export function chooseScale(
  wanted: WantedOfScale,
  scales: readonly Scale[],
  tables: ScaleTables,
): Result<ChosenScale | null> {
  const { grams } = wanted;
  const holding = scales.filter((scale) => isWithinCapacity(grams, scale));
  const roomy = holding.filter((scale) => isRoomyAndFine(grams, scale, wanted, tables));
  let best: ChosenScale | null = null;
  for (const scale of roomy.length > 0 ? roomy : holding) {
    const error = findErrorOnScale(scale, grams, tables);
    if (!error.ok) return error;
    const candidate = { scale, error: error.value };
    if (best === null || isBetter(candidate, best)) best = candidate;
  }
  return done(best);
}
