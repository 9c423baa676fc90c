import { done, problem, type Result, refused } from '../problem.ts';
import { type Exact, type ExactInput, exact } from '../quantity/index.ts';

export interface PremixWish {
  /** What the batch needs of the substance. */
  readonly doseGrams: ExactInput;
  /** The least that the scale weighs within the tolerance of the dose. */
  readonly smallestWeighableGrams: ExactInput;
  /** How much of the premix is to go into the batch; absent: the smallest weighable. */
  readonly portionGrams?: ExactInput;
}

export interface Premix {
  readonly factor: Exact;
  readonly premixTotalGrams: Exact;
  readonly carrierGrams: Exact;
  readonly portionGrams: Exact;
}

/**
 * A premix of a dose that is too small to weigh: the smallest weighable amount of it, thinned with a carrier so that a
 * portion that can be weighed holds the dose.
 *
 * Equations: factor = smallest / dose; premix = portion x factor; carrier = premix - smallest. All in grams.
 * Valid range: dose at most the smallest weighable, portion at least it. The portion brings portion - dose of the
 * carrier with it, which is left out of the carrier's own line.
 * Source: the aliquot method of pharmacy calculation (from memory).
 */
export function findPremix({ doseGrams, smallestWeighableGrams, portionGrams }: PremixWish): Result<Premix> {
  const dose = exact(doseGrams);
  const least = exact(smallestWeighableGrams);
  const portion = exact(portionGrams ?? least);
  if (!dose.gt(0))
    return refused(problem('value-not-above', 'doseGrams', { found: dose.toFixed(), allowed: 0 }));
  if (dose.gt(least))
    return refused(
      problem('premix-not-needed', 'doseGrams', { found: dose.toFixed(), allowed: least.toFixed() }),
    );
  if (portion.lt(least))
    return refused(
      problem('portion-below-smallest', 'portionGrams', {
        found: portion.toFixed(),
        allowed: least.toFixed(),
      }),
    );
  const premixTotalGrams = portion.times(least).div(dose);
  return done({
    factor: least.div(dose),
    premixTotalGrams,
    carrierGrams: premixTotalGrams.minus(least),
    portionGrams: portion,
  });
}
