import { done, type Problem, problem, type Result, refused } from '../problem.ts';
import { type Exact, type ExactInput, exact, largest, roundToStep, ZERO } from '../quantity/index.ts';

export type FillBasis = 'average' | 'minimum';

export interface Fill {
  readonly declaredGrams: ExactInput;
  readonly basis: FillBasis;
  readonly netGrams: ExactInput;
  /** The scale's worst error of a net weight. */
  readonly scaleErrorGrams: ExactInput;
  /** For the average way; null or absent: this size has none, and a tin may not lie below the label. */
  readonly tolerableErrorGrams?: ExactInput | null;
  /** Where the maker aims higher than the label and the scale's error ask for. */
  readonly aimGrams?: ExactInput | null;
}

export interface FillVerdict {
  readonly verdict: 'inside' | 'too-light' | 'heavy';
  /** Net less the scale's worst error: as much is in the tin for sure. */
  readonly surelyGrams: Exact;
  readonly gramsToAdd: Exact;
  /** What may be taken out again down to the aim; 0 unless heavy. */
  readonly gramsToSpare: Exact;
}

/** Above the aim by more than this share of the label, a tin is called heavy (common practice, no source). */
const HEAVY_FRACTION = 0.05;

/**
 * The aim of one tin, in grams: the declared content and the scale's worst error on top, taken up to the next step
 * that the scale shows.
 */
export const findAim = (
  declaredGrams: ExactInput,
  scaleErrorGrams: ExactInput,
  readabilityGrams: ExactInput,
): Exact => roundToStep(exact(declaredGrams).plus(scaleErrorGrams), readabilityGrams, 'up');

/**
 * Verdict of one tin on the scale, in grams.
 *
 * `minimum`: net less the scale's worst error must not lie below the label. `average`: it must not lie below limit 1;
 * what is to be added brings it up to the label all the same, so that the mean does not suffer.
 * Source: minimum and average system of SI 2006/659 and Directive 76/211/EEC; the scale's error is counted against the
 * maker (house rule).
 */
export function judgeFill(fill: Fill): Result<FillVerdict> {
  const problems = problemsOf(fill);
  if (problems.length > 0) return refused(...problems);
  const net = exact(fill.netGrams);
  const declared = exact(fill.declaredGrams);
  const surelyGrams = net.minus(fill.scaleErrorGrams);
  const floor = declared.minus((fill.basis === 'average' && fill.tolerableErrorGrams) || 0);
  const least = declared.plus(fill.scaleErrorGrams);
  if (surelyGrams.lt(floor)) {
    return done({ verdict: 'too-light', surelyGrams, gramsToAdd: least.minus(net), gramsToSpare: ZERO });
  }
  const aim = largest(least, exact(fill.aimGrams ?? 0));
  const isHeavy = net.gt(aim.plus(declared.times(HEAVY_FRACTION)));
  return done({
    verdict: isHeavy ? 'heavy' : 'inside',
    surelyGrams,
    gramsToAdd: ZERO,
    gramsToSpare: isHeavy ? net.minus(aim) : ZERO,
  });
}

function problemsOf({ declaredGrams, netGrams, scaleErrorGrams }: Fill): Problem[] {
  const problems: Problem[] = [];
  for (const [where, value] of Object.entries({ declaredGrams, netGrams })) {
    if (!exact(value).gt(0)) {
      problems.push(problem('value-not-above', where, { found: exact(value).toFixed(), allowed: 0 }));
    }
  }
  if (exact(scaleErrorGrams).lt(0)) {
    problems.push(problem('mass-negative', 'scaleErrorGrams', { found: exact(scaleErrorGrams).toFixed() }));
  }
  return problems;
}
