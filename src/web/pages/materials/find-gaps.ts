import { materialWords, termWords } from '../../../words/index.ts';
import { findNamedOrigins } from './find-named-origins.ts';
import type { MaterialDetails } from './material.ts';

const { gaps: words } = materialWords;

/** What nobody has written down yet and what the label, the check or the cost will ask for. */
export function findGaps(details: MaterialDetails): string[] {
  const named = findNamedOrigins(details);
  const isPackaging = details.kind === 'packaging';
  const gaps: readonly (readonly [boolean, string])[] = isPackaging
    ? [
        [details.packagingKind === 'tin' && details.tareGrams === null, words.tare],
        [details.packPrice === null, words.price],
      ]
    : [
        [details.inciEu === '', words.inci],
        [details.origins === null, words.origins],
        [named.length > 0, words.originsByName(named.map(({ flag }) => termWords.origin[flag]).join(', '))],
        [details.constituentsAre === null, words.statement],
        [details.constituentsAre === 'partial', words.partial],
        [details.constituents.some(({ confidence }) => confidence === 'memory'), words.memory],
        [details.packPrice === null, words.price],
      ];
  return gaps.filter(([isMissing]) => isMissing).map(([, word]) => word);
}
