import { done, problem, type Result, refused } from '../problem.ts';
import { type Exact, type ExactInput, exact, largest, roundToStep, ZERO } from '../quantity/index.ts';
import type { FillBasis } from './judge-fill.ts';
import type { NetContentsTables, TargetRule } from './net-contents-tables.ts';
import { normalShareBelow } from './normal-share.ts';
import { findTargetForCoverage, findTargetOnAverage } from './target-fill.ts';
import { findTolerableError } from './tolerable-error.ts';

export interface AimWish {
  readonly declaredGrams: ExactInput;
  readonly basis: FillBasis;
  /** Of the net weights as this hand fills them; null: nothing is learnt yet. */
  readonly spreadGrams: ExactInput | null;
  /** Of empty tins, where their mean is taken off: it does not show in the weights. */
  readonly tareSpreadGrams: ExactInput | null;
  /** Worst error of a net weight: of the scale, and of a tin beside the mean of the empty ones. */
  readonly errorGrams: ExactInput;
  readonly readabilityGrams: ExactInput;
}

export interface AimAdvice {
  readonly aimGrams: Exact;
  /** `scale`: nothing is learnt of the spread, the label and the errors alone decide. */
  readonly decidedBy: TargetRule['decides'] | 'coverage' | 'scale';
  readonly giveawayGrams: Exact;
  /** Share of tins that are too light at once when this is aimed at; null: not known. */
  readonly shortShare: number | null;
  readonly lower: {
    readonly byGrams: Exact;
    readonly aimGrams: Exact;
    readonly shortShare: number;
  } | null;
}

/**
 * So many tins should be right at once; the others are filled up on the scale. One in forty is what packers' second
 * rule lets lie below limit 1 as a working figure, taken over for this (house rule).
 */
const COVERAGE = 0.975;

/**
 * What to aim at when filling, in grams, from this workshop's own spread and scale; taken up to a step of the scale.
 *
 * `minimum`: every tin is judged less the worst error against the label, so
 * aim = declared + error + z(0.975) s. `average`: the target of packers' rules for the spread of fill and tare together,
 * sqrt(s^2 + tare^2), and the worst error on top.
 * Valid range: normally spread fills around a steady mean. Sources: those of target-fill; the errors are counted
 * against the maker (house rule).
 */
export function adviseAim(wish: AimWish, tables: NetContentsTables): Result<AimAdvice> {
  const declared = exact(wish.declaredGrams);
  if (!declared.gt(0)) {
    return refused(problem('value-not-above', 'declaredGrams', { found: declared.toFixed(), allowed: 0 }));
  }
  const limits = findTolerableError(declared, 'up-0.1', tables, 'declaredGrams');
  const basis = wish.basis === 'average' && limits.ok ? 'average' : 'minimum';
  const floor = (basis === 'average' && limits.ok ? limits.value.limit1 : declared).plus(wish.errorGrams);
  const target = findTarget(wish, basis, tables);
  if (!target.ok) return target;
  const aimGrams = roundToStep(target.value.grams, wish.readabilityGrams, 'up');
  return done({
    aimGrams,
    decidedBy: target.value.decidedBy,
    giveawayGrams: aimGrams.minus(declared),
    shortShare: shareShort(aimGrams, floor, wish.spreadGrams),
    lower: aimLower(aimGrams, floor, wish),
  });
}

function findTarget(
  { declaredGrams, spreadGrams, tareSpreadGrams, errorGrams }: AimWish,
  basis: FillBasis,
  tables: NetContentsTables,
): Result<{ readonly grams: Exact; readonly decidedBy: AimAdvice['decidedBy'] }> {
  const error = exact(errorGrams);
  if (spreadGrams === null) {
    return done({ grams: exact(declaredGrams).plus(error), decidedBy: 'scale' });
  }
  if (basis === 'minimum') {
    const { targetGrams, decidedBy } = findTargetForCoverage(declaredGrams, spreadGrams, COVERAGE);
    return done({ grams: targetGrams.plus(error), decidedBy });
  }
  const spread = exact(spreadGrams)
    .pow(2)
    .plus(exact(tareSpreadGrams ?? 0).pow(2))
    .sqrt();
  const target = findTargetOnAverage(declaredGrams, spread, tables);
  return target.ok
    ? done({ grams: target.value.targetGrams.plus(error), decidedBy: target.value.decidedBy })
    : target;
}

/** Estimate for reading: nothing is judged by it. */
function shareShort(aim: Exact, floor: Exact, spreadGrams: ExactInput | null): number | null {
  if (spreadGrams === null) return null;
  const spread = exact(spreadGrams);
  if (spread.isZero()) return aim.lt(floor) ? 1 : 0;
  return normalShareBelow(floor.minus(aim).div(spread).toNumber());
}

/** About one standard deviation lower, in whole steps of the scale: what that would save and cost. */
function aimLower(aim: Exact, floor: Exact, { spreadGrams, readabilityGrams }: AimWish): AimAdvice['lower'] {
  if (spreadGrams === null) return null;
  const step = exact(readabilityGrams);
  const byGrams = largest(roundToStep(exact(spreadGrams), step, 'nearest'), step);
  const lower = aim.minus(byGrams);
  const shortShare = shareShort(lower, floor, spreadGrams);
  return shortShare === null || lower.lte(ZERO) ? null : { byGrams, aimGrams: lower, shortShare };
}
