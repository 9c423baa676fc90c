import { done, problem, type Result, refused } from '../problem.ts';
import { type Exact, type ExactInput, exact, largest, smallest, ZERO } from '../quantity/index.ts';

export interface Addition {
  readonly targetGrams: ExactInput;
  readonly actualGrams: ExactInput;
  /** Half the width of the band, in grams. */
  readonly toleranceGrams: ExactInput;
  /** Where a limit allows less than the band would. */
  readonly mostGrams?: ExactInput | null;
}

export interface WeighingBand {
  readonly lowGrams: Exact;
  readonly highGrams: Exact;
}

export interface AdditionVerdict extends WeighingBand {
  readonly verdict: 'inside' | 'low' | 'high';
  /** Actual less target. */
  readonly differenceGrams: Exact;
}

/** Band of a target, in grams: closed at both ends, never below nought, its upper end held down by `mostGrams`. */
export function findBandAround({
  targetGrams,
  toleranceGrams,
  mostGrams,
}: Omit<Addition, 'actualGrams'>): WeighingBand {
  const target = exact(targetGrams);
  const high = target.plus(toleranceGrams);
  return {
    lowGrams: largest(ZERO, target.minus(toleranceGrams)),
    highGrams: mostGrams == null ? high : smallest(high, exact(mostGrams)),
  };
}

/** Whether what was weighed lies in the band of its target, in grams; just on an end is inside. Exact. */
export function judgeAddition(addition: Addition): Result<AdditionVerdict> {
  const actual = exact(addition.actualGrams);
  const problems = Object.entries({
    targetGrams: addition.targetGrams,
    actualGrams: addition.actualGrams,
  })
    .filter(([, value]) => !exact(value).gt(0))
    .map(([where, value]) =>
      problem('value-not-above', where, { found: exact(value).toFixed(), allowed: 0 }),
    );
  if (exact(addition.toleranceGrams).lt(0)) {
    const found = exact(addition.toleranceGrams).toFixed();
    problems.push(problem('mass-negative', 'toleranceGrams', { found }));
  }
  if (problems.length > 0) return refused(...problems);
  const band = findBandAround(addition);
  const isLow = actual.lt(band.lowGrams);
  return done({
    ...band,
    verdict: isLow ? 'low' : actual.gt(band.highGrams) ? 'high' : 'inside',
    differenceGrams: actual.minus(addition.targetGrams),
  });
}
