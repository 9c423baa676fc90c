import { done, type Result } from '../problem.ts';
import { type Exact, gramsFromMicrograms, roundPercent, toText } from '../quantity/index.ts';
import type { FormulaLine } from './formula-line.ts';
import { readLines, type WeighedLines } from './read-lines.ts';
import { divideBy } from './whole-ratio.ts';

export interface PercentLine extends FormulaLine {
  /** Exact where the quotient has an end, else so fine that it is on the right side of any limit. */
  readonly percent: Exact;
  /** Rounded from the exact share as everywhere else; the column as shown need not add up to 100 to the last digit. */
  readonly shownPercent: string;
}

export interface FormulaPercents extends WeighedLines {
  readonly lines: readonly PercentLine[];
  readonly totalGrams: Exact;
}

/**
 * Percent by mass of each line: 100 x grams / total grams. The shares stand exactly as `micrograms` over `total`;
 * each shown percent is rounded by itself, so that one share is one number at every place where it is shown.
 * Refuses no lines, a mass of nought or less, more than a tonne, and fractions of a microgram.
 */
export function percentFromGrams(lines: readonly FormulaLine[]): Result<FormulaPercents> {
  const weighed = readLines(lines);
  if (!weighed.ok) return weighed;
  const { micrograms, total } = weighed.value;
  const toPercent = divideBy(total);
  const percentLines = lines.map((line, index) => {
    const percent = toPercent((micrograms[index] ?? 0n) * 100n);
    return { ...line, percent, shownPercent: toText(roundPercent(percent)) };
  });
  const totalGrams = gramsFromMicrograms(Number(total));
  return done({ lines: percentLines, totalGrams, micrograms, total });
}
