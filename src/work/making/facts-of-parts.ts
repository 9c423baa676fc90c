import { roundToStep, toText } from '../../core/quantity/index.ts';
import type { InParts } from '../../core/weighing/index.ts';
import { briefGrams } from '../../words/index.ts';

/** One addition in parts, for a sentence: how many, of how much, on which scale, and what that may be out by. */
export const factsOfParts = ({
  scale,
  count,
  partGrams,
  lastGrams,
  partErrorGrams,
  errorGrams,
}: InParts) => ({
  scale: scale.name,
  count,
  part: toText(partGrams),
  isLastOther: lastGrams.eq(partGrams) ? 'no' : 'yes',
  last: briefGrams(toText(lastGrams)),
  // An error is never told smaller than it is.
  partError: toText(roundToStep(partErrorGrams, scale.readabilityGrams, 'up')),
  error: toText(roundToStep(errorGrams, scale.readabilityGrams, 'up')),
});
