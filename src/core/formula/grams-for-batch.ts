import { done, problem, type Result, refused } from '../problem.ts';
import {
  type Exact,
  type ExactInput,
  exact,
  MICROGRAMS_PER_GRAM,
  type Micrograms,
  microgramsFromGrams,
} from '../quantity/index.ts';
import type { FormulaLine } from './formula-line.ts';
import type { FormulaPercents } from './percent-from-grams.ts';
import { shareOut } from './share-out.ts';
import { divideBy } from './whole-ratio.ts';

export interface BatchLine extends Omit<FormulaLine, 'grams'> {
  /** What the formula asks for: batch x line / total, as near as a decimal comes. */
  readonly exactGrams: Exact;
  /** The same in whole micrograms; over all lines they add up to the batch exactly. */
  readonly micrograms: Micrograms;
  readonly shownPercent: string;
}

/** Scales a formula to a batch: each line's grams are batch x line / total. Linear; nothing is rounded to a scale here. */
export function gramsForBatch(formula: FormulaPercents, batchGrams: ExactInput): Result<BatchLine[]> {
  const batch = microgramsFromGrams(batchGrams, 'batchGrams');
  if (!batch.ok) return batch;
  if (batch.value <= 0) {
    const found = exact(batchGrams).toFixed();
    return refused(problem(batch.value === 0 ? 'mass-zero' : 'mass-negative', 'batchGrams', { found }));
  }
  const batchMicrograms = BigInt(batch.value);
  const shares = shareOut(formula.micrograms, batchMicrograms);
  const toGrams = divideBy(formula.total * BigInt(MICROGRAMS_PER_GRAM));
  return done(
    formula.lines.map(({ key, stage, item, shownPercent }, index) => ({
      key,
      stage,
      item,
      shownPercent,
      exactGrams: toGrams((formula.micrograms[index] ?? 0n) * batchMicrograms),
      micrograms: Number(shares[index] ?? 0n) as Micrograms,
    })),
  );
}
