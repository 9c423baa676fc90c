import {
  type Exact,
  type ExactInput,
  exact,
  HUNDRED,
  largest,
  roundToStep,
  sumOf,
  ZERO,
} from '../quantity/index.ts';

/** One addition as its scale showed it, and by how much the scale may be wrong at the worst. */
export interface WeighedPart {
  readonly grams: ExactInput;
  readonly errorGrams: ExactInput;
}

/** A limit of the finished batch, with how much of what it limits is in each of the parts, in percent of the part. */
export interface WorstLimit {
  readonly limitPercent: ExactInput;
  /** The amount must lie below the limit; else the limit itself is allowed. */
  readonly isStrict?: boolean;
  readonly percentIn: readonly ExactInput[];
}

/**
 * How far the batch lies over the limit at the worst, in grams x percent:
 *
 *   W = sum of [ m (c - L) + e |c - L| ]
 *
 * with m the grams of each part, e the worst error of its weighing, c its content and L the limit, both in percent by
 * mass. The share (sum of m c) / (sum of m) is above L for some m within its errors exactly where W > 0: each part counts
 * with the error that hurts, more of what is richer than the limit and less of what is poorer. Exact, nothing divided.
 */
export const findExcess = (parts: readonly WeighedPart[], { limitPercent, percentIn }: WorstLimit): Exact =>
  sumOf(
    parts.map(({ grams, errorGrams }, index) => {
      const over = exact(percentIn[index] ?? 0).minus(limitPercent);
      return exact(grams).times(over).plus(exact(errorGrams).times(over.abs()));
    }),
  );

export function isWithinAtWorst(parts: readonly WeighedPart[], limit: WorstLimit): boolean {
  const excess = findExcess(parts, limit);
  return limit.isStrict === true ? excess.lt(0) : excess.lte(0);
}

/**
 * The largest share that the errors leave possible, in percent: of all ways in which the richest parts weigh more than
 * shown and the rest less, the highest. For showing; it is judged by isWithinAtWorst. A quotient, to 60 digits.
 */
export function findWorstPercent(parts: readonly WeighedPart[], { percentIn }: WorstLimit): Exact {
  const rows = parts
    .map((part, index) => ({ ...part, content: exact(percentIn[index] ?? 0) }))
    .sort((one, other) => other.content.cmp(one.content));
  const shareWith = (rich: number): Exact => {
    const masses = rows.map(({ grams, errorGrams }, index) =>
      index < rich ? exact(grams).plus(errorGrams) : largest(exact(grams).minus(errorGrams), ZERO),
    );
    const total = sumOf(masses);
    const held = sumOf(masses.map((mass, index) => mass.times(rows[index]?.content ?? 0)));
    return total.isZero() ? ZERO : held.div(total);
  };
  return [...rows.keys(), rows.length].map(shareWith).reduce((most, each) => largest(most, each), ZERO);
}

/** What is added: its content, and the worst error of weighing it. */
export interface Addition {
  readonly percent: ExactInput;
  readonly errorGrams: ExactInput;
}

/**
 * The least grams that, added, bring the batch within the limit at the worst: x >= W / (L - r) + e, with r the content
 * of what is added and e the error of weighing it, taken up to the step of its scale. Nought where it is within already;
 * undefined where what is added is not poorer than the limit, and no amount of it helps.
 */
export function findGramsToAdd(
  parts: readonly WeighedPart[],
  limit: WorstLimit,
  added: Addition,
  stepGrams: ExactInput,
): Exact | undefined {
  if (isWithinAtWorst(parts, limit)) return ZERO;
  const poorer = exact(limit.limitPercent).minus(added.percent);
  if (poorer.lte(0) || exact(added.percent).gte(HUNDRED)) return undefined;
  const least = findExcess(parts, limit).div(poorer).plus(added.errorGrams);
  const rounded = roundToStep(least, stepGrams, 'up');
  const within = (grams: Exact): boolean =>
    isWithinAtWorst([...parts, { grams, errorGrams: added.errorGrams }], {
      ...limit,
      percentIn: [...limit.percentIn, added.percent],
    });
  // A quotient without an end is cut at 60 digits, and below a strict limit the bound itself is not enough.
  return within(rounded) ? rounded : rounded.plus(stepGrams);
}
