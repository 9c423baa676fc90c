import { done, type Result } from '../problem.ts';
import { type Exact, type ExactInput, exact } from '../quantity/index.ts';
import type { AdditionError } from './addition-error.ts';
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

/**
 * The scale that holds a mass with the least relative error: worst case first, then expanded uncertainty, then the
 * finer step, the smaller capacity, the order given. null: none holds it.
 */
export function chooseScale(
  grams: ExactInput,
  scales: readonly Scale[],
  tables: ScaleTables,
): Result<ChosenScale | null> {
  let best: ChosenScale | null = null;
  for (const scale of scales) {
    if (!isWithinCapacity(grams, scale)) continue;
    const error = findErrorOnScale(scale, grams, tables);
    if (!error.ok) return error;
    const candidate = { scale, error: error.value };
    if (best === null || isBetter(candidate, best)) best = candidate;
  }
  return done(best);
}
