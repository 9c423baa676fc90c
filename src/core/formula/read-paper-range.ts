import { done, problem, type Result, refused } from '../problem.ts';
import { exact, toText } from '../quantity/index.ts';

/** What a paper prints of one constituent, in percent by mass of the material; null: it does not say. */
export interface PaperRange {
  readonly leastPercent: string | null;
  readonly typicalPercent: string | null;
  readonly mostPercent: string | null;
}

export interface FullRange {
  readonly leastPercent: string;
  readonly typicalPercent: string;
  readonly mostPercent: string;
}

/**
 * Least, typical and most of a constituent, as a paper gives them: a single measured figure is all three; a most alone
 * starts at nought; between two ends the middle is shown as typical, on which nothing is judged (common practice, no
 * source). Refused: no most, and ends that cross. In percent, 0 to 100 as the fields were read.
 */
export function readPaperRange(range: PaperRange, where: string): Result<FullRange> {
  const { leastPercent: least, typicalPercent: typical, mostPercent: most } = range;
  if (most === null && typical === null)
    return refused(problem('constituent-without-most', where, { found: least }));
  const end = most ?? typical ?? '';
  const start = least ?? (most === null || typical === end ? end : '0');
  const middle = typical ?? toText(exact(start).plus(end).div(2));
  const isOrdered = exact(start).lte(middle) && exact(middle).lte(end);
  return isOrdered
    ? done({ leastPercent: start, typicalPercent: middle, mostPercent: end })
    : refused(problem('constituent-range-crossed', `${where}.leastPercent`, { found: asTyped(range) }));
}

/** Only what the paper prints: nobody typed the middle. */
const asTyped = ({ leastPercent, typicalPercent, mostPercent }: PaperRange): string =>
  [leastPercent, typicalPercent, mostPercent].filter((figure) => figure !== null).join(', ');
