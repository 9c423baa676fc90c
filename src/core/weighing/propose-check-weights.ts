import { type Exact, type ExactInput, exact } from '../quantity/index.ts';

/**
 * Nominal masses of check weights that suit a scale, in grams: the one nearest to half of its capacity, and the one
 * nearest to what is mostly weighed on it where that is another. Common practice, no source.
 */
export function proposeCheckWeights(
  capacityGrams: ExactInput,
  weighedGrams: readonly ExactInput[],
  nominalGrams: readonly number[],
): number[] {
  const fitting = nominalGrams.filter((grams) => exact(grams).lte(capacityGrams));
  const wanted = [exact(capacityGrams).div(2), ...middleOf(weighedGrams)];
  return [...new Set(wanted.flatMap((grams) => nearestOf(fitting, grams)))];
}

const nearestOf = (nominal: readonly number[], grams: Exact): number[] => {
  const [first, ...rest] = nominal;
  if (first === undefined) return [];
  const farOf = (each: number): Exact => grams.minus(each).abs();
  return [rest.reduce((best, each) => (farOf(each).lt(farOf(best)) ? each : best), first)];
};

/** The median: one large batch does not move it. */
function middleOf(values: readonly ExactInput[]): Exact[] {
  const sorted = values.map(exact).sort((one, other) => one.comparedTo(other));
  const middle = sorted[Math.floor(sorted.length / 2)];
  return middle === undefined ? [] : [middle];
}
