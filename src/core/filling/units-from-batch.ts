import { done, problem, type Result, refused } from '../problem.ts';
import { type Exact, type ExactInput, exact, ONE, ZERO } from '../quantity/index.ts';

export interface FillingPlan {
  /** Share of the batch that stays in bowl and spoon, 0 to below 1. */
  readonly lossFraction: ExactInput;
  readonly targetFillGrams: ExactInput;
  /** Filled packs kept as samples, not for sale. */
  readonly retained: number;
}

export interface UnitsFromBatch {
  /** For sale, retained ones left out. */
  readonly units: number;
  readonly filled: number;
  readonly leftoverGrams: Exact;
  readonly batchGrams: Exact;
}

/**
 * How many packs a batch fills, and what is left over in grams.
 * Equation: filled = whole part of batch x (1 - loss) / fill; units = filled - retained; a fill is never started that
 * cannot be finished. Common practice, no source.
 */
export function findUnitsFromBatch(
  batchGrams: ExactInput,
  { lossFraction, targetFillGrams, retained }: FillingPlan,
): Result<UnitsFromBatch> {
  const net = exact(batchGrams).times(ONE.minus(lossFraction));
  const filled = net.divToInt(targetFillGrams);
  if (filled.lt(retained)) {
    return refused(
      problem('retained-above-filled', 'retained', { found: retained, allowed: filled.toNumber() }),
    );
  }
  return done({
    units: filled.toNumber() - retained,
    filled: filled.toNumber(),
    leftoverGrams: net.minus(filled.times(targetFillGrams)),
    batchGrams: exact(batchGrams),
  });
}

/**
 * The batch, in grams, that fills so many packs for sale and the retained ones.
 * Equation: batch = (units + retained) x fill / (1 - loss): divided by what remains, not multiplied by 1 + loss.
 */
export function findBatchForUnits(
  units: number,
  { lossFraction, targetFillGrams, retained }: FillingPlan,
): UnitsFromBatch {
  const filled = units + retained;
  return {
    units,
    filled,
    leftoverGrams: ZERO,
    batchGrams: exact(filled).times(targetFillGrams).div(ONE.minus(lossFraction)),
  };
}
