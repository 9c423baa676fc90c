import { done, type Result } from '../problem.ts';
import { type Exact, type ExactInput, exact } from '../quantity/index.ts';
import { type AdditionError, findAdditionError } from './addition-error.ts';
import { type ClassedScale, findScaleErrors } from './scale-errors.ts';
import type { AccuracyClass, ScaleTables } from './scale-tables.ts';

/** A scale as the workshop knows it; null or absent: nobody has said. */
export interface Scale {
  readonly id: string;
  readonly name: string;
  readonly capacityGrams: ExactInput;
  readonly readabilityGrams: ExactInput;
  readonly repeatabilityGrams?: ExactInput | null;
  readonly accuracyClass?: AccuracyClass | null;
  readonly verificationIntervalGrams?: ExactInput | null;
}

/** Class without interval, or interval without class, says nothing about errors. */
export function classOf({ accuracyClass, verificationIntervalGrams }: Scale): ClassedScale | undefined {
  if (!accuracyClass || verificationIntervalGrams == null) return undefined;
  return { accuracyClass, verificationIntervalGrams };
}

/** Whether the scale's class holds for its whole capacity: else its errors could not be told there. */
export function checkScale(scale: Scale, tables: ScaleTables): Result<Scale> {
  const classed = classOf(scale);
  if (!classed) return done(scale);
  const errors = findScaleErrors(classed, scale.capacityGrams, tables);
  return errors.ok ? done(scale) : errors;
}

/** Error of a net weight on a scale in use: two readings (tare and gross), errors in service. */
export function findErrorOnScale(
  scale: Scale,
  weightGrams: ExactInput,
  tables: ScaleTables,
): Result<AdditionError> {
  const classed = classOf(scale);
  return findAdditionError(
    {
      weightGrams,
      readabilityGrams: scale.readabilityGrams,
      repeatabilityGrams: scale.repeatabilityGrams ?? 0,
      readings: 2,
      inService: true,
      ...(classed && { classed }),
    },
    tables,
  );
}

/** The scale's worst error of a net weight, in grams: what a tin must hold above its label to be surely right. */
export function findWorstErrorGrams(
  scale: Scale,
  weightGrams: ExactInput,
  tables: ScaleTables,
): Result<Exact> {
  const error = findErrorOnScale(scale, weightGrams, tables);
  return error.ok ? done(error.value.worstCaseGrams) : error;
}

export const isWithinCapacity = (grams: ExactInput, { capacityGrams }: Scale): boolean =>
  exact(grams).lte(capacityGrams);
