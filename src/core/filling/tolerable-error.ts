import { done, problem, type Result, refused } from '../problem.ts';
import { type Exact, type ExactInput, exact, roundToStep } from '../quantity/index.ts';
import { findBand } from './find-band.ts';
import type { Rounding, TolerableErrorTables } from './net-contents-tables.ts';

/** In the unit of the nominal quantity, g or ml. */
export interface TolerableError {
  readonly tolerableError: Exact;
  /** Nominal less one tolerable error: a pack below it is non-standard. */
  readonly limit1: Exact;
  /** Nominal less two tolerable errors: a pack below it is inadequate and never sold. */
  readonly limit2: Exact;
  readonly largestMeasuringError: Exact;
}

/**
 * Tolerable negative error of a prepackage and what follows from it, in g or ml.
 *
 * Equation: T = p Qn / 100 or a fixed value, by the band of the nominal quantity Qn; limit 1 = Qn - T;
 * limit 2 = Qn - 2 T; largest measuring error = T / 5.
 * Rounding: `up-0.1` takes values worked out as a percentage up to the next 0.1 (GB, EU); `r87` takes every value up
 * to the next 0.1 up to and with 1000, to the next whole one above.
 * Valid range: 5 to 25 000 g or ml. Outside of it there is no tolerable error: a pack holds at least what it declares.
 * Exact in decimals: a pack of exactly limit 1 is not below it.
 * Source: Directive 76/211/EEC Annex I; OIML R 87 as in the National Trade Measurement Regulations 2009 (Australia).
 */
export function findTolerableError(
  nominal: ExactInput,
  rounding: Rounding,
  tables: TolerableErrorTables,
  where = 'nominal',
): Result<TolerableError> {
  const quantity = exact(nominal);
  const { from, upTo } = tables.averageSystem;
  const row = findBand(tables.tolerableErrors, ({ nominalGramsOrMl }) => nominalGramsOrMl, quantity);
  if (quantity.lt(from) || quantity.gt(upTo) || row === undefined) {
    return refused(
      problem('no-tolerable-error', where, {
        found: quantity.toFixed(),
        allowed: `${from} to ${upTo}`,
        source: 'Directive 76/211/EEC; SI 2006/659',
      }),
    );
  }
  const isPercent = row.tolerableErrorPercent !== undefined;
  const unrounded = isPercent
    ? quantity.times(row.tolerableErrorPercent).div(100)
    : exact(row.tolerableErrorGramsOrMl ?? 0);
  const error = roundUp(unrounded, quantity, isPercent, tables.roundings[rounding]);
  return done({
    tolerableError: error,
    limit1: quantity.minus(error),
    limit2: quantity.minus(error.times(2)),
    largestMeasuringError: error.times(tables.measuringErrorFraction),
  });
}

function roundUp(
  value: Exact,
  nominal: Exact,
  isPercent: boolean,
  rule: TolerableErrorTables['roundings'][Rounding],
): Exact {
  if (rule.appliesTo === 'percent-bands' && !isPercent) return value;
  const step = findBand(rule.steps, ({ nominalGramsOrMl }) => nominalGramsOrMl, nominal);
  return step === undefined ? value : roundToStep(value, step.stepGramsOrMl, 'up');
}
