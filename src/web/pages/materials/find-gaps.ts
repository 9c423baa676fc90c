import { materialWords } from '../../../words/index.ts';
import type { MaterialDetails } from './material.ts';

const { gaps: words } = materialWords;

/** What nobody has written down yet and what the label, the check or the cost will ask for. */
export function findGaps(details: MaterialDetails): string[] {
  const isPackaging = details.kind === 'packaging';
  const gaps: readonly (readonly [boolean, string])[] = isPackaging
    ? [
        [details.packagingKind === 'tin' && details.tareGrams === null, words.tare],
        [details.packPrice === null, words.price],
      ]
    : [
        [details.inciEu === '', words.inci],
        [details.origins === null, words.origins],
        [details.constituentsAre === null, words.statement],
        [details.constituentsAre === 'partial', words.partial],
        [details.constituents.some(({ confidence }) => confidence === 'memory'), words.memory],
        [details.packPrice === null, words.price],
      ];
  return gaps.filter(([isMissing]) => isMissing).map(([, word]) => word);
}
