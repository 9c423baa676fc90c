import { done, problem, type Result, refused } from '../problem.ts';
import { type Exact, type ExactInput, exact, largest, roundToStep } from '../quantity/index.ts';
import { checkScale, classOf, isWithinCapacity, type Scale } from './scale.ts';
import { findScaleErrors } from './scale-errors.ts';
import type { ScaleTables } from './scale-tables.ts';
import { neededGrams } from './smallest-weight.ts';

export interface CheckWeight {
  readonly weightGrams: ExactInput;
  /** How far off the weight itself may be. */
  readonly toleranceGrams: ExactInput;
}

export interface ActionLimit {
  readonly limitGrams: Exact;
  /** class: error in service and rounding; else the scale's own repeatability or its step. */
  readonly decidedBy: 'class' | 'repeatability' | 'readability';
  /** The weight may be off by more than a third of the limit: a better one tells more. */
  readonly isWeightRough: boolean;
}

/** OIML R 76-1:2006, 3.7.1: weights that test a scale are off by at most a third of its error there (from memory). */
const LARGEST_SHARE_OF_WEIGHT = 3;

/**
 * How far the reading of a check weight may lie from what the weight says, in grams, either way.
 *
 * Equation, class known: error in service at that load + d / 2 of rounding + tolerance of the weight.
 * Class not known: 2 max(s, 0.41 d), up to the next step since the scale shows no less, + tolerance of the weight.
 * Valid range: weights that the scale holds. A class whose error is smaller than twice the repeatability gives that.
 * Source: OIML R 76-1 table 6 and SI 1995/1907 Schedule 2 (class); USP general chapter 41 (2 s, floor of 0.41 d);
 * putting them together: own computation.
 */
export function findActionLimit(
  scale: Scale,
  { weightGrams, toleranceGrams }: CheckWeight,
  tables: ScaleTables,
): Result<ActionLimit> {
  const weight = exact(weightGrams);
  const tolerance = exact(toleranceGrams);
  if (!isWithinCapacity(weight, scale))
    return refused(
      problem('check-weight-too-heavy', 'weightGrams', {
        found: weight.toFixed(),
        allowed: exact(scale.capacityGrams).toFixed(),
        parameters: { scale: scale.name },
      }),
    );
  const own = ownLimit(scale, weight, tables);
  if (!own.ok) return own;
  return done({
    limitGrams: own.value.grams.plus(tolerance),
    decidedBy: own.value.decidedBy,
    isWeightRough: tolerance.times(LARGEST_SHARE_OF_WEIGHT).gt(own.value.grams),
  });
}

interface OwnLimit {
  readonly grams: Exact;
  readonly decidedBy: ActionLimit['decidedBy'];
}

function ownLimit(scale: Scale, weight: Exact, tables: ScaleTables): Result<OwnLimit> {
  const step = exact(scale.readabilityGrams);
  const repeating = neededGrams({
    readabilityGrams: step,
    repeatabilityGrams: scale.repeatabilityGrams ?? 0,
  });
  const byItself: OwnLimit['decidedBy'] = repeating.eq(
    neededGrams({ readabilityGrams: step, repeatabilityGrams: 0 }),
  )
    ? 'readability'
    : 'repeatability';
  const classed = classOf(scale);
  if (!classed) return done({ grams: roundToStep(repeating, step, 'up'), decidedBy: byItself });
  const checked = checkScale(scale, tables);
  if (!checked.ok) return checked;
  const errors = findScaleErrors(classed, weight, tables);
  if (!errors.ok) return errors;
  const { inServiceGrams } = errors.value;
  return done({
    grams: largest(inServiceGrams, repeating).plus(step.div(2)),
    decidedBy: repeating.gt(inServiceGrams) ? byItself : 'class',
  });
}

export interface JudgedCheck {
  /** Reading less the weight. */
  readonly deviationGrams: Exact;
  readonly isGood: boolean;
}

/** A reading just at the limit is good. */
export function judgeScaleCheck(
  readingGrams: ExactInput,
  weightGrams: ExactInput,
  limitGrams: ExactInput,
): JudgedCheck {
  const deviationGrams = exact(readingGrams).minus(weightGrams);
  return { deviationGrams, isGood: deviationGrams.abs().lte(limitGrams) };
}
