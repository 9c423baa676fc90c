import { productFileWords } from '../../../words/index.ts';
import type { AnswerOf, BodyOf } from '../../api/shapes.ts';
import type { Described } from '../../show/find-differences.ts';

export type FileView = AnswerOf<'getProductFile'>;
export type FileDraft = FileView['details'];
export type FileBody = BodyOf<'saveProductFile'>['details'];

const { form: words } = productFileWords;

/** Every material has its line, be anything written there or not. */
export const draftOfFile = ({ details, materials }: FileView): FileDraft => ({
  ...details,
  functions: [
    ...materials.map(({ id }) => ({
      materialId: id,
      text: details.functions.find((row) => row.materialId === id)?.text ?? '',
    })),
    ...details.functions.filter((row) => !materials.some(({ id }) => id === row.materialId)),
  ],
});

/** Lines with nothing on them are not kept. */
export const readFileDraft = (draft: FileDraft): FileBody => ({
  ...draft,
  functions: draft.functions.filter(({ text }) => text.trim() !== ''),
});

const TEXTS = [
  ['description', words.description],
  ['physical', words.physical],
  ['stability', words.stability],
  ['microbiology', words.microbiology],
  ['impurities', words.impurities],
  ['packaging', words.packaging],
  ['normalUse', words.normalUse],
  ['otherInformation', words.information],
  ['makingNote', words.makingNote],
  ['gmpStatement', words.gmp],
  ['animalTesting', words.animal],
] as const;

/** Where two people wrote at the same time: their texts, side by side. */
export const describeFile = (draft: FileDraft): Described => [
  ...TEXTS.map(([field, label]): readonly [string, string] => [label, draft[field]]),
  [words.claims, draft.claims.map(({ claim, proof }) => `${claim}: ${proof}`).join('; ')],
  [words.notification, Object.values(draft.notification).join('; ')],
];
