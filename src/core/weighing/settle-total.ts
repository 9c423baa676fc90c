import { type Exact, exact, roundToStep, sumOf } from '../quantity/index.ts';

export interface RoundedLine {
  readonly exactGrams: Exact;
  readonly targetGrams: Exact;
  readonly toleranceGrams: Exact;
  readonly isLimited: boolean;
  /** null: not weighed in steps of a scale, so it cannot take up the difference. */
  readonly stepGrams: Exact | null;
  readonly capacityGrams: Exact | null;
}

export const differenceOf = (lines: readonly RoundedLine[]): Exact =>
  sumOf(lines.map(({ targetGrams }) => targetGrams)).minus(sumOf(lines.map(({ exactGrams }) => exactGrams)));

/** The line that a correction hurts least: not limited, with the widest band in grams. */
function leastCritical(lines: readonly RoundedLine[]): number {
  let best = -1;
  for (const [index, line] of lines.entries()) {
    if (line.isLimited || line.stepGrams === null) continue;
    const widest = lines[best]?.toleranceGrams;
    if (widest === undefined || line.toleranceGrams.gt(widest)) best = index;
  }
  return best;
}

/**
 * Puts the difference that rounding made to a total, in grams, on the line that it hurts least, in whole steps of
 * that line's scale and within that line's band. With a limited line in the list the total is never left below the
 * exact one: else a limited substance that was not rounded at all would still be a greater share of the batch.
 * Where no line can take it the targets stay; the caller tells the difference. Common practice, no source.
 */
export function settleTotal(lines: readonly RoundedLine[]): Exact[] {
  const targets = lines.map(({ targetGrams }) => targetGrams);
  const place = leastCritical(lines);
  const line = lines[place];
  if (!line?.stepGrams) return targets;
  const isLimited = lines.some((each) => each.isLimited);
  const missing = differenceOf(lines).negated();
  // Half a step more would only turn the difference round.
  if (!isLimited && missing.abs().times(2).lte(line.stepGrams)) return targets;
  const correction = roundToStep(missing, line.stepGrams, isLimited ? 'up' : 'nearest');
  const target = line.targetGrams.plus(correction);
  const isInBand = target.minus(line.exactGrams).abs().lte(line.toleranceGrams);
  const isOnScale = target.gt(0) && target.lte(line.capacityGrams ?? exact(0));
  if (isInBand && isOnScale) targets[place] = target;
  return targets;
}
