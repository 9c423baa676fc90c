import { type Problem, problem } from '../../../core/problem.ts';
import { exact, readDecimal } from '../../../core/quantity/index.ts';

interface Band {
  readonly targetGrams: string;
  readonly lowGrams: string;
  readonly highGrams: string;
}

export type BandVerdict = 'inside' | 'low' | 'high' | 'nothing';

/** Why no scale shows this while something is weighed: said as it is typed, before anybody is asked what happened. */
export function whyNotWeighed(typed: string, where = 'actualGrams'): Problem | undefined {
  const read = readDecimal(typed, where);
  if (!read.ok) return read.problems[0];
  return read.value.gt(0) ? undefined : problem('value-not-above', where, { found: typed, allowed: 0 });
}

/** Where the typed weight lies; the edges themselves are inside, as at the workshop. */
export function bandVerdict(typed: string, band: Band): BandVerdict {
  const read = readDecimal(typed, 'grams');
  if (!read.ok || read.value.lte(0)) return 'nothing';
  if (read.value.lt(band.lowGrams)) return 'low';
  return read.value.gt(band.highGrams) ? 'high' : 'inside';
}

/** Where the hand is drawn, in percent of the line: the band takes the middle fifth, from 40 to 60. */
export function handPercent(typed: string, band: Band): number | undefined {
  const read = readDecimal(typed, 'grams');
  if (!read.ok) return undefined;
  const width = exact(band.highGrams).minus(band.lowGrams);
  const place = width.isZero()
    ? 50 + 40 * read.value.comparedTo(band.lowGrams)
    : read.value.minus(band.lowGrams).div(width).times(20).plus(40).toNumber();
  return Math.min(98, Math.max(2, place));
}
