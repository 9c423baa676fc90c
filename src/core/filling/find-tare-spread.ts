import { done, type Problem, problem, type Result, refused } from '../problem.ts';
import { type Exact, type ExactInput, exact, roundToStep } from '../quantity/index.ts';
import { studentQuantile } from './student-quantile.ts';
import { spreadOf } from './weight-spread.ts';

export interface TareSpread {
  readonly count: number;
  readonly meanGrams: Exact;
  readonly standardDeviationGrams: Exact;
  /** How far a further tin may lie above the mean: counted against whoever fills. */
  readonly allowanceGrams: Exact;
}

/** One further tin in two hundred may be heavier than the mean and the allowance (house rule). */
const COVERAGE = 0.995;
const LEDGER_STEP_GRAMS = '0.000001';

/**
 * Mean of empty tins and how far the next one may lie above it, in grams: where the mean is taken off, a heavier tin
 * holds less than it seems to.
 *
 * Equation: allowance = t(0.995, n - 1) s sqrt(1 + 1/n), the one-sided prediction limit of one further tin; s with the
 * divisor n - 1. Taken up to a whole microgram.
 * Valid range: tins of one kind that weigh normally spread; at least two, ten as a rule.
 * Source of the equation: prediction interval of a normal sample, any handbook of statistics. That the variation of the
 * tare is allowed for: guidance to SI 2006/659, Annex C (from memory, check).
 */
export function findTareSpread(tares: readonly ExactInput[]): Result<TareSpread> {
  const problems = problemsOf(tares);
  if (problems.length > 0) return refused(...problems);
  const { count, mean, standardDeviation } = spreadOf(tares);
  const deviation = standardDeviation ?? exact(0);
  const factor = exact(studentQuantile(COVERAGE, count - 1)).times(exact(1).plus(exact(1).div(count)).sqrt());
  return done({
    count,
    meanGrams: mean,
    standardDeviationGrams: deviation,
    allowanceGrams: roundToStep(deviation.times(factor), LEDGER_STEP_GRAMS, 'up'),
  });
}

function problemsOf(tares: readonly ExactInput[]): Problem[] {
  if (tares.length < 2) return [problem('tares-too-few', 'tares', { found: tares.length, allowed: 2 })];
  return tares.flatMap((tare, index) =>
    exact(tare).gt(0)
      ? []
      : [
          problem('value-not-above', `tares[${index}]`, {
            found: exact(tare).toFixed(),
            allowed: 0,
          }),
        ],
  );
}

/** A quarter of the tolerable error. Source: OIML R 87, annex on average tare (from memory, check). */
const WIDE_FRACTION = '0.25';

/** Whether empty tins differ so much that each should be weighed by itself; null: this size has no tolerable error. */
export const isTareWide = (
  { standardDeviationGrams }: TareSpread,
  tolerableErrorGrams: ExactInput | null,
): boolean | null =>
  tolerableErrorGrams === null
    ? null
    : standardDeviationGrams.gt(exact(tolerableErrorGrams).times(WIDE_FRACTION));

/** So far from the middle one an empty tin is of another kind, or misread (common practice, no source). */
const ODD_FRACTION = '0.1';

function middleOf(tares: readonly ExactInput[]): Exact {
  const sorted = tares.map((tare) => exact(tare)).sort((one, other) => one.cmp(other));
  return sorted[Math.floor((sorted.length - 1) / 2)] ?? exact(0);
}

/** Which empty tins lie a tenth or more off the middle one: indexes from nought. */
export function findOddTares(tares: readonly ExactInput[]): number[] {
  const middle = middleOf(tares);
  // Of two nobody knows which is the odd one: the heavier is asked about.
  if (tares.length < 2 || middle.isZero()) return [];
  return tares.flatMap((tare, index) =>
    exact(tare).minus(middle).abs().gte(middle.times(ODD_FRACTION)) ? [index] : [],
  );
}

/** Asks about the first empty tin that is unlike the others: misread, or of another kind. null: they are alike. */
export function askAboutTares(tares: readonly ExactInput[]): Problem | null {
  const [odd] = findOddTares(tares);
  if (odd === undefined) return null;
  const found = exact(tares[odd] ?? 0);
  const middle = middleOf(tares);
  const isSlip = found.gte(middle.times(SLIP)) || found.times(SLIP).lte(middle);
  return problem('tare-odd', `tares[${odd}]`, {
    found: found.toFixed(),
    allowed: middle.toFixed(),
    parameters: { number: odd + 1, isSlip: isSlip ? 'yes' : 'no' },
  });
}

/** Asks about the empty weight of one tin that is unlike what tins of its kind weigh; 0: nobody knows that. */
export function askAboutTin(
  tareGrams: ExactInput,
  knownGrams: ExactInput,
  where = 'tareGrams',
): Problem | null {
  const [found, known] = [exact(tareGrams), exact(knownGrams)];
  if (!known.gt(0) || found.minus(known).abs().lt(known.times(ODD_FRACTION))) return null;
  const isSlip = found.gte(known.times(SLIP)) || found.times(SLIP).lte(known);
  return problem('tare-unlike', where, {
    found: found.toFixed(),
    allowed: known.toFixed(),
    parameters: { isSlip: isSlip ? 'yes' : 'no' },
  });
}

/** What so many empty tins weigh as a rule; null: too few. */
export const middleTare = (tares: readonly ExactInput[]): Exact | null =>
  tares.length < 3 ? null : middleOf(tares);

/** From five times on a point has slipped rather than another tin come to hand (common practice, no source). */
const SLIP = 5;
