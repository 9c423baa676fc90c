import { type Exact, type ExactInput, exact, largest, roundToStep, smallest } from '../quantity/index.ts';
import { leastOnScale } from './least-on-scales.ts';
import type { Scale } from './scale.ts';
import type { ScaleTables } from './scale-tables.ts';
import { holdsInSteps } from './weigh-in-parts.ts';

export interface SharedAddition {
  readonly grams: ExactInput;
  readonly relativeTolerance: ExactInput;
}

export interface SmallestBatch {
  readonly batchGrams: Exact;
  /** There is none in which all is weighed at once: in this one what is larger than its scale holds takes parts. */
  readonly isInParts: boolean;
}

/** What a scale weighs at once within a tolerance. */
interface Range {
  readonly least: Exact;
  readonly most: Exact;
}

/**
 * The smallest batch, in whole grams, in which the scales weigh every addition within its tolerance at once; where there
 * is none, the smallest in which none is too small and the large ones are weighed in parts. undefined: there is none.
 *
 * Equation: batch = given batch x least / addition, for the least at or above what the batch asks of each; taken up until
 * all of them fit. Parts: a scale that holds twice its least weighs everything above that least.
 * Valid range: additions above nought. Source: least as in leastOnScale; common practice.
 */
export function findSmallestBatch(
  { batchGrams, additions }: { readonly batchGrams: Exact; readonly additions: readonly SharedAddition[] },
  scales: readonly Scale[],
  tables: ScaleTables,
): SmallestBatch | undefined {
  const shared = additions.map(({ grams, relativeTolerance }) => ({
    grams: exact(grams),
    ranges: scales
      .map((scale) => ({
        least: leastOnScale(scale, relativeTolerance, tables),
        most: holdsInSteps(scale),
      }))
      .filter(({ least, most }) => least.lte(most)),
  }));
  const atOnce = findAtOnce(shared, batchGrams);
  if (atOnce) return { batchGrams: atOnce, isInParts: false };
  const inParts = shared.map(({ grams, ranges }) => {
    const [first, ...rest] = ranges
      .filter(({ least, most }) => least.times(2).lte(most))
      .map(({ least }) => least);
    return first && batchFor(smallest(first, ...rest), grams, batchGrams);
  });
  const known = inParts.filter((each) => each !== undefined);
  return known.length < inParts.length
    ? undefined
    : { batchGrams: largest(exact(0), ...known), isInParts: true };
}

interface Shared {
  readonly grams: Exact;
  readonly ranges: readonly Range[];
}

/** Up to whole grams, since nobody plans a batch in fractions of one. */
export const batchFor = (least: Exact, grams: Exact, batchGrams: Exact): Exact =>
  roundToStep(batchGrams.times(least).div(grams), 1, 'up');

/** Each turn makes it larger by a gram at least, and beyond what the scales hold there is nothing: it ends. */
function findAtOnce(shared: readonly Shared[], batchGrams: Exact): Exact | undefined {
  let batch = exact(0);
  for (;;) {
    let next = batch;
    for (const { grams, ranges } of shared) {
      const asked = next.times(grams).div(batchGrams);
      if (ranges.some(({ least, most }) => asked.gte(least) && asked.lte(most))) continue;
      const [first, ...rest] = ranges.map(({ least }) => least).filter((least) => least.gt(asked));
      if (!first) return undefined;
      next = batchFor(smallest(first, ...rest), grams, batchGrams);
    }
    if (next.eq(batch)) return batch;
    batch = next;
  }
}
