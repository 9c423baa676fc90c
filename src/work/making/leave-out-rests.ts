import { type Exact, exact, gramsFromMicrograms, HUNDRED, sumOf } from '../../core/quantity/index.ts';
import type { LotAtHand } from '../../storage/index.ts';

/** Less than this part of what is needed is not worth opening a tub for (common practice, no source). */
const REST_PERCENT = 1;

export interface LeftOut {
  readonly kept: readonly LotAtHand[];
  /** What the book has of them is so little that they may well be empty. */
  readonly rests: readonly LotAtHand[];
}

const gramsOf = (lots: readonly LotAtHand[]): Exact =>
  sumOf(lots.map((lot) => gramsFromMicrograms(lot.on_hand)));

/** Of the lots of one thing those that are worth weighing from; where the others do not suffice, all are. */
export function leaveOutRests(lots: readonly LotAtHand[], neededGrams: Exact): LeftOut {
  const least = neededGrams.times(REST_PERCENT).div(HUNDRED);
  const isRest = (lot: LotAtHand): boolean => exact(gramsFromMicrograms(lot.on_hand)).lt(least);
  const kept = lots.filter((lot) => !isRest(lot));
  if (gramsOf(kept).lt(neededGrams)) return { kept: lots, rests: [] };
  return { kept, rests: lots.filter(isRest) };
}
