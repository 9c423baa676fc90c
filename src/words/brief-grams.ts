import { exact, readDecimal, toText } from '../core/quantity/index.ts';

/** From a gram on, a hundredth is finer than anybody reads off a shelf; below it, the finest scales show four places. */
const PLACES_FROM_A_GRAM = 2;
const PLACES_BELOW = 4;

/**
 * Grams for reading: sums and shares carry more decimals than any scale shows. What a scale showed itself is said as it
 * was; nothing is judged by this. What would vanish stays as it is.
 */
export function briefGrams(grams: string): string {
  const read = readDecimal(grams, 'grams');
  if (!read.ok) return grams;
  const places = exact(read.value).abs().gte(1) ? PLACES_FROM_A_GRAM : PLACES_BELOW;
  const brief = read.value.toDecimalPlaces(places);
  return brief.isZero() ? grams : toText(brief);
}
