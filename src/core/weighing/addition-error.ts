import { done, type Result } from '../problem.ts';
import { type Exact, type ExactInput, exact, largest, ZERO } from '../quantity/index.ts';
import { type ClassedScale, findScaleErrors } from './scale-errors.ts';
import type { ScaleTables } from './scale-tables.ts';

export interface Weighing {
  readonly weightGrams: ExactInput;
  readonly readabilityGrams: ExactInput;
  /** 2: tare then gross, or before and after; 1: one reading on a scale at zero. */
  readonly readings: 1 | 2;
  readonly repeatabilityGrams?: ExactInput;
  /** Absent: class and interval are not known, and only rounding and repeatability count. */
  readonly classed?: ClassedScale;
  readonly inService: boolean;
}

export interface AdditionError {
  readonly standardUncertaintyGrams: Exact;
  readonly relativeStandardUncertainty: Exact;
  /** k = 2. */
  readonly relativeExpanded: Exact;
  readonly worstCaseGrams: Exact;
  readonly worstCaseRelative: Exact;
  /** null: the class is not known. */
  readonly belowMinimumLoad: boolean | null;
}

/**
 * How far off one addition may be, in grams and as a fraction of it.
 *
 * Equation: u = sqrt(n d^2 / 12 + s^2 + m^2 / 3), with n readings rounded to the step d, s the repeatability, m the
 * permissible error of the class (taken as a rectangle); expanded 2 u; worst case n d / 2 + the greater of m and 2 s.
 * Valid range: a scale that is level, at zero and adjusted; draught, heat and static are not in it.
 * Source: JCGM 100 (rectangular distribution; from memory); OIML R 76-1 table 6 for m; the sum is own computation.
 */
export function findAdditionError(weighing: Weighing, tables: ScaleTables): Result<AdditionError> {
  const weight = exact(weighing.weightGrams);
  const { classed } = weighing;
  if (!classed) return done(errorOf(weighing, ZERO, null));
  const errors = findScaleErrors(classed, weight, tables);
  if (!errors.ok) return errors;
  const { initialGrams, inServiceGrams, minimumLoadGrams } = errors.value;
  const permissible = weighing.inService ? inServiceGrams : initialGrams;
  return done(errorOf(weighing, permissible, weight.lt(minimumLoadGrams)));
}

function errorOf(
  { weightGrams, readabilityGrams, readings, repeatabilityGrams = 0 }: Weighing,
  permissible: Exact,
  belowMinimumLoad: boolean | null,
): AdditionError {
  const step = exact(readabilityGrams);
  const repeatability = exact(repeatabilityGrams);
  const variance = step
    .pow(2)
    .times(readings)
    .plus(repeatability.pow(2).times(12))
    .plus(permissible.pow(2).times(4))
    .div(12);
  const standardUncertaintyGrams = variance.sqrt();
  const relative = standardUncertaintyGrams.div(weightGrams);
  const worstCaseGrams = step
    .times(readings)
    .div(2)
    .plus(largest(permissible, repeatability.times(2)));
  return {
    standardUncertaintyGrams,
    relativeStandardUncertainty: relative,
    relativeExpanded: relative.times(2),
    worstCaseGrams,
    worstCaseRelative: worstCaseGrams.div(weightGrams),
    belowMinimumLoad,
  };
}
