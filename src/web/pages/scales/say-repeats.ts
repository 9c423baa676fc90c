import { sayGrams, sayInstant, scaleWords } from '../../../words/index.ts';
import type { Scale } from './scale.ts';

/** Figures that a standard deviation of ten readings has: more would pretend (common practice, no source). */
const DIGITS = 2;

/** A standard deviation in grams, as it is read. */
export const roundDeviation = (grams: string): string =>
  Number(grams) === 0 ? '0' : String(Number(Number(grams).toPrecision(DIGITS)));

/** What the plan counts with, and since when. */
export function sayRepeats({ repeatability }: Scale, timeZone: string | undefined): string {
  const { repeats } = scaleWords;
  if (!repeatability) return repeats.unknown;
  const grams = sayGrams(roundDeviation(repeatability.grams));
  return repeatability.from === 'measured'
    ? repeats.measured(grams, repeatability.since === null ? '' : sayInstant(repeatability.since, timeZone))
    : repeats.typed(grams);
}
