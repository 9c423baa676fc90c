import { exact, largest, toText, ZERO } from '../../../core/quantity/index.ts';
import type { Addition } from './batch.ts';

export interface Band {
  readonly targetGrams: string;
  readonly lowGrams: string;
  readonly highGrams: string;
}

/** What the scale is to show now: of a line that is in already in part, target and band of what is left. */
export function bandLeft({ inGrams, leftGrams, targetGrams, lowGrams, highGrams }: Addition): Band {
  if (exact(inGrams).isZero()) return { targetGrams, lowGrams, highGrams };
  const left = (grams: string) => toText(largest(exact(grams).minus(inGrams), ZERO));
  return { targetGrams: leftGrams, lowGrams: left(lowGrams), highGrams: left(highGrams) };
}
