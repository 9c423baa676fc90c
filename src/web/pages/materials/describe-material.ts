import { materialWords, termWords } from '../../../words/index.ts';
import type { Described } from '../../show/find-differences.ts';
import type { MaterialDraft } from './material-draft.ts';

const { form: words } = materialWords;

/** The draft in words, to be held against what somebody else wrote. */
export const describeMaterial = (draft: MaterialDraft): Described => [
  [words.name, draft.name],
  [words.supplier, draft.supplier],
  [words.inciEu, draft.inciEu],
  [words.inciUs, draft.inciUs],
  [words.botanical, draft.botanical],
  [words.cas, draft.cas],
  [words.plantPart, draft.plantPart],
  [words.process, draft.process],
  [words.role, draft.role === null ? words.noRole : termWords.role[draft.role]],
  [words.isNano, draft.isNano ? words.isNanoYes : words.isNanoNo],
  [
    words.originTitle,
    draft.origins === null
      ? words.originUnknown
      : draft.origins.map((flag) => termWords.origin[flag]).join(', '),
  ],
  ...draft.constituents.map(
    ({ name, leastPercent, typicalPercent, mostPercent }) =>
      [name, `${leastPercent} / ${typicalPercent} / ${mostPercent} %`] as const,
  ),
  [
    words.constituentsAreTitle,
    draft.constituentsAre === null
      ? words.constituentsUnsaid
      : termWords.constituentsAre[draft.constituentsAre],
  ],
  [words.constituentsPaper, draft.constituentsPaper],
  [words.supplierMost, draft.supplierMostPercent],
  [words.supplierPaper, draft.supplierPaper],
  [words.density, draft.densityGramsPerMl],
  [words.caution, draft.caution],
  [words.brim, draft.brimMl],
  [words.tare, draft.tareGrams],
  [words.reorderBelow, draft.reorderBelow],
  [words.packSize, draft.packSize],
  [words.packPrice, draft.packPrice],
  [words.leadDays, draft.leadDays],
];
