import { exact, MICROGRAMS_PER_GRAM, sumOf, toText } from '../../core/quantity/index.ts';
import type { NamedBatchLine, SignedAddition } from '../../storage/index.ts';
import type { WeighingNote } from './weighing-note.ts';

/** What lies in a bowl weighs as much as went in, the errors of the weighings aside. */
export interface AllowedYield {
  readonly inputUg: number;
  readonly mostUg: number;
}

/**
 * The most that can truthfully come out of the bowl, in micrograms: what went in, the worst errors of those weighings
 * summed, and as much again for the weighing of the yield (common practice, no source).
 */
export function findAllowedYield(
  lines: readonly NamedBatchLine[],
  additions: readonly SignedAddition[],
): AllowedYield {
  const standing = additions.filter((row) => !row.is_struck);
  const inputUg = standing.reduce((sum, row) => sum + row.actual_ug, 0);
  const errors = standing.map((row) => {
    const line = lines.find((candidate) => candidate.position === row.position);
    const note = line ? (JSON.parse(line.weighing) as WeighingNote) : undefined;
    // A part is off by as much as the whole would be: a scale's errors do not shrink with its load as fast.
    const isOneOfSeveral = standing.some((each) => each !== row && each.position === row.position);
    const load = isOneOfSeveral ? Math.max(row.actual_ug, line?.target_ug ?? 0) : row.actual_ug;
    return exact(note?.relativeError ?? 0).times(load);
  });
  const slackUg = sumOf(errors).times(2).toDecimalPlaces(0).toNumber();
  return { inputUg, mostUg: inputUg + slackUg };
}

/** Grams as text, for a sentence. */
export const roundedGrams = (micrograms: number): string =>
  toText(exact(micrograms).div(MICROGRAMS_PER_GRAM).toDecimalPlaces(3));
