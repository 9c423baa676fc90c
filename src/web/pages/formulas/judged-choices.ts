import { formulaWords } from '../../../words/index.ts';

const choicesOf = (ids: readonly string[]) => ids.map((id) => ({ id, name: id.replaceAll('-', ' ') }));
const named = (words: Readonly<Record<string, string>>) =>
  Object.entries(words).map(([id, name]) => ({ id, name }));

export const USES = named(formulaWords.uses);
export const STANDINGS = named(formulaWords.standings);
/** IFRA product categories, 49th Amendment. */
export const CATEGORIES = choicesOf([
  '1',
  '2',
  '3',
  '4',
  '5A',
  '5B',
  '5C',
  '5D',
  '6',
  '7A',
  '7B',
  '8',
  '9',
  '10A',
  '10B',
  '11A',
  '11B',
  '12',
]);
/** As the restricted-substances table spells them (Regulation (EC) No 1223/2009, Annex III, column f). */
export const BODY_PARTS = choicesOf([
  'body',
  'face',
  'lip',
  'hand',
  'hair',
  'scalp',
  'nail',
  'foot',
  'nappy-area',
]);
export const PRODUCT_TYPES = choicesOf([
  'body-lotion',
  'face-cream',
  'hand-cream',
  'lip-product',
  'deodorant',
  'soap',
  'shampoo',
  'hair-conditioner',
  'shower-gel',
  'bath-product',
  'powder',
  'fragrance-cream',
]);
