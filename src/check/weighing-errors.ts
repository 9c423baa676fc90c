import { scaleTables } from '../catalogue/index.ts';
import { done, type Result } from '../core/problem.ts';
import { type ExactInput, exact, sumOf, toText } from '../core/quantity/index.ts';
import type { WeighingErrors } from '../core/safety/index.ts';
import { findErrorOnScale, findSmallestWeight, type Scale } from '../core/weighing/index.ts';

/** What is weighed for one batch: each oil on one scale, everything else on another. */
export interface ScentBatch {
  readonly batchGrams: ExactInput;
  readonly oilScale: Scale;
  readonly restScale: Scale;
  /** By oil, percent of the product: its error is taken at this load, or at more. */
  readonly percents: readonly ExactInput[];
}

/** The worst errors of the weighings, over the batch: see findScentInProduct. */
export function findWeighingErrors(batch: ScentBatch): Result<WeighingErrors> {
  const whole = exact(batch.batchGrams);
  const worst: ReturnType<typeof exact>[] = [];
  for (const percent of batch.percents) {
    const error = findErrorOnScale(batch.oilScale, whole.times(percent).div(100), scaleTables);
    if (!error.ok) return error;
    worst.push(error.value.worstCaseGrams);
  }
  const rest = findErrorOnScale(batch.restScale, whole, scaleTables);
  if (!rest.ok) return rest;
  const lost = sumOf([...worst, rest.value.worstCaseGrams]);
  return done({
    morePercent: worst.map((grams) => upTo(grams.times(100).div(whole))),
    lessFraction: upTo(lost.div(whole)),
  });
}

/** Rounded up, so that no room is lost in a division. */
const upTo = (value: ReturnType<typeof exact>): string => toText(value.toDecimalPlaces(12, 0));

/** Two percent for an oil, as the weighing plan asks for what is near a limit (common practice, no source). */
const TOLERANCE = '0.02';

/** The least that this scale weighs well enough for an oil, in grams. */
export const findLeastGrams = (scale: Scale): string =>
  toText(
    findSmallestWeight(
      { readabilityGrams: scale.readabilityGrams, repeatabilityGrams: scale.repeatabilityGrams ?? 0 },
      TOLERANCE,
    ).smallestWeightGrams,
  );
