import { type Exact, type ExactInput, exact, largest } from '../quantity/index.ts';

/** Two readings that are each rounded to the step d differ by d / sqrt(6), 0.41 d: no scale repeats better. */
const FLOOR_IN_READABILITY = '0.41';
const COVERAGE_FACTOR = 2;

export interface Repeating {
  readonly readabilityGrams: ExactInput;
  /** Standard deviation of repeated weighings; 0 where nobody measured it. */
  readonly repeatabilityGrams: ExactInput;
}

export interface SmallestWeight {
  readonly smallestWeightGrams: Exact;
  readonly decidedBy: 'readability' | 'repeatability';
}

/** 2 max(s, 0.41 d): what the smallest weight times the tolerance must reach. */
export const neededGrams = ({ readabilityGrams, repeatabilityGrams }: Repeating): Exact =>
  largest(exact(repeatabilityGrams), exact(readabilityGrams).times(FLOOR_IN_READABILITY)).times(
    COVERAGE_FACTOR,
  );

/**
 * Smallest net weight, in grams, that a scale weighs within a relative tolerance.
 *
 * Equation: smallest = 2 max(s, 0.41 d) / r, with s the standard deviation of repeated weighings, d the readability
 * and r the tolerance as a fraction. On equality the readability is named.
 * Valid range: r above 0; it covers repeatability and rounding, not the scale's accuracy.
 * Source: USP general chapter 41 (r = 0.001 there); the 0.41 d rule is from memory, and computed as 1 / sqrt(6).
 */
export function findSmallestWeight(scale: Repeating, relativeTolerance: ExactInput): SmallestWeight {
  const floor = exact(scale.readabilityGrams).times(FLOOR_IN_READABILITY);
  return {
    smallestWeightGrams: neededGrams(scale).div(relativeTolerance),
    decidedBy: exact(scale.repeatabilityGrams).gt(floor) ? 'repeatability' : 'readability',
  };
}

/** Whether a weight lies below the smallest one: multiplied, so that a weight of just the smallest does not. */
export const isBelowSmallestWeight = (
  grams: ExactInput,
  scale: Repeating,
  relativeTolerance: ExactInput,
): boolean => exact(grams).times(relativeTolerance).lt(neededGrams(scale));
