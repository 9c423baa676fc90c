import { done, type Problem, problem, type Result, refused } from '../problem.ts';
import { type Exact, type ExactInput, exact, largest, sumOf, ZERO } from '../quantity/index.ts';

export interface LineToResize {
  readonly key: string;
  /** Lines of one thing that comes of several lots share their group: together they are one share of the batch. */
  readonly group: string;
  /** What is asked for as the batch stands. */
  readonly exactGrams: ExactInput;
  readonly inGrams: ExactInput;
  /** Nothing more is to come to it as the batch stands. */
  readonly isDone: boolean;
}

export interface ResizedLine {
  readonly key: string;
  /** Its part of the batch as it is to become. */
  readonly exactGrams: Exact;
  /** What it still needs; nought where enough is in. */
  readonly leftGrams: Exact;
  /** What is in above its new part; nought where nothing is. */
  readonly overGrams: Exact;
}

export interface ResizedBatch {
  readonly totalGrams: Exact;
  readonly lines: readonly ResizedLine[];
}

/**
 * Makes a batch as large, or as small, as what is in of one line says, so that the percentages hold:
 *
 *   f = (grams in of the line) / (grams asked of it);   every other line: f x (grams asked of it).
 *
 * The line itself keeps exactly what is in. Where the same thing is still to come of another lot, that lot gives the
 * difference first, and f is above 1 only where the sum is more than what is asked of both: nothing more is asked of that
 * lot then, and its part is nought. Masses in grams, exact;
 * a quotient without an end to 60 digits. Derived from percent by mass alone.
 */
export function resizeBatch(lines: readonly LineToResize[], key: string): Result<ResizedBatch> {
  const problems = problemsOf(lines, key);
  if (problems.length > 0) return refused(...problems);
  const own = lines.find((line) => line.key === key);
  const group = lines.filter((line) => line.group === own?.group);
  const open = group.filter(
    ({ isDone, ...line }) => line.key !== key && !isDone && exact(line.exactGrams).gt(0),
  );
  const asked = sumOf(group.map(({ exactGrams }) => exactGrams));
  const inGroup = sumOf(group.map(({ inGrams }) => inGrams));
  const share = open.length > 0 ? largest(inGroup, asked) : inGroup;
  const held = sumOf(group.filter((line) => !open.includes(line)).map(({ inGrams }) => inGrams));
  const openAsked = sumOf(open.map(({ exactGrams }) => exactGrams));
  const resized = lines.map((line): ResizedLine => {
    if (line.group !== own?.group) return resizedTo(line, exact(line.exactGrams).times(share).div(asked));
    if (!open.includes(line)) return resizedTo(line, exact(line.inGrams));
    return resizedTo(line, share.minus(held).times(line.exactGrams).div(openAsked));
  });
  return done({ totalGrams: sumOf(resized.map(({ exactGrams }) => exactGrams)), lines: resized });
}

function resizedTo({ key, inGrams }: LineToResize, exactGrams: Exact): ResizedLine {
  const missing = exactGrams.minus(inGrams);
  return {
    key,
    exactGrams,
    leftGrams: largest(missing, ZERO),
    overGrams: largest(missing.negated(), ZERO),
  };
}

function problemsOf(lines: readonly LineToResize[], key: string): Problem[] {
  const own = lines.find((line) => line.key === key);
  const bare = lines
    .filter(
      ({ exactGrams, group }) =>
        exact(exactGrams).lt(0) ||
        !sumOf(lines.filter((line) => line.group === group).map((line) => line.exactGrams)).gt(0),
    )
    .map((line) =>
      problem('value-not-above', line.key, { found: exact(line.exactGrams).toFixed(), allowed: 0 }),
    );
  if (bare.length > 0) return bare;
  if (own && exact(own.inGrams).gt(0)) return [];
  return [problem('resize-of-nothing', key, { found: String(own?.inGrams ?? 0) })];
}
