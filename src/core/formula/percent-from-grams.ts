import { done, type Result } from '../problem.ts';
import { type Exact, exact, gramsFromMicrograms } from '../quantity/index.ts';
import type { FormulaLine } from './formula-line.ts';
import { readLines, type WeighedLines } from './read-lines.ts';
import { shareOut } from './share-out.ts';
import { divideBy } from './whole-ratio.ts';

export interface PercentLine extends FormulaLine {
  /** Exact where the quotient has an end, else so fine that it is on the right side of any limit. */
  readonly percent: Exact;
  /** Rounded so that the column as shown adds up to 100. */
  readonly shownPercent: string;
}

export interface FormulaPercents extends WeighedLines {
  readonly lines: readonly PercentLine[];
  readonly totalGrams: Exact;
}

const LEAST_PLACES = 3;
const MOST_PLACES = 9;

/** Fewest places, three at least, at which no line of the column shows as nought. */
function shownShares({ micrograms }: WeighedLines): { readonly shares: bigint[]; readonly places: number } {
  for (let places = LEAST_PLACES; ; places++) {
    const shares = shareOut(micrograms, 100n * 10n ** BigInt(places));
    if (places === MOST_PLACES || shares.every((share) => share > 0n)) return { shares, places };
  }
}

/**
 * Percent by mass of each line: 100 x grams / total grams. The shares stand exactly as `micrograms` over `total`;
 * the shown column is rounded by largest remainders, so that it adds up to 100 as well.
 * Refuses no lines, a mass of nought or less, more than a tonne, and fractions of a microgram.
 */
export function percentFromGrams(lines: readonly FormulaLine[]): Result<FormulaPercents> {
  const weighed = readLines(lines);
  if (!weighed.ok) return weighed;
  const { micrograms, total } = weighed.value;
  const { shares, places } = shownShares(weighed.value);
  const toPercent = divideBy(total);
  const percentLines = lines.map((line, index) => ({
    ...line,
    percent: toPercent((micrograms[index] ?? 0n) * 100n),
    shownPercent: exact(`${shares[index] ?? 0n}e-${places}`).toFixed(places),
  }));
  const totalGrams = gramsFromMicrograms(Number(total));
  return done({ lines: percentLines, totalGrams, micrograms, total });
}
