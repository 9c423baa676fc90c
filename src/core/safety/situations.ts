import type { Use } from './safety-table-rows.ts';

/** Where and as what a product is used, as far as rules of law ask for it. */
export interface Situation {
  readonly productType?: string | undefined;
  readonly bodyPart?: string | undefined;
  /** It may be a spray or a loose powder, so that the user's lungs may be exposed. */
  readonly maySpray: boolean;
}

const at = (productType: string | undefined, bodyPart: string | undefined, maySpray = false): Situation => ({
  productType,
  bodyPart,
  maySpray,
});

/**
 * What a product of an IFRA category may be in the words of the law's tables, where nothing more is told. To count
 * butter and balm as body lotion is a reading of the tables, not of the law. A rule is taken for each of them, and
 * the tightest decides.
 */
const SITUATIONS_BY_CATEGORY: Readonly<Record<string, readonly Situation[]>> = {
  1: [at('lip-product', 'lip')],
  2: [at('deodorant', 'body', true)],
  3: [
    at('face-make-up', 'face'),
    at('eye-make-up', 'eye'),
    at('make-up-remover', 'eye'),
    at(undefined, 'face'),
  ],
  4: ['fine-fragrance', 'eau-de-toilette', 'hydroalcoholic-fragrance', 'fragrance-cream', 'fragrance'].map(
    (type) => at(type, 'body', type !== 'fragrance-cream'),
  ),
  '5A': [at('body-lotion', 'body')],
  '5B': [at('face-cream', 'face')],
  '5C': [at('hand-cream', 'hand')],
  '5D': [at('body-lotion', 'body'), at('face-cream', 'face'), at(undefined, 'nappy-area')],
  6: [at('toothpaste', 'oral'), at('mouthwash', 'oral'), at('mouth-spray', 'oral')],
  '7A': [at('hair-conditioner', 'hair'), at(undefined, 'hair'), at(undefined, 'scalp')],
  '7B': [at(undefined, 'hair', true), at(undefined, 'scalp', true)],
  8: [at(undefined, undefined), at(undefined, 'nappy-area')],
  9: [
    at('shower-gel', 'body'),
    at('bath-product', 'body'),
    at('soap', 'body'),
    at('soap', 'hand'),
    at('hand-wash', 'hand'),
    at('shampoo', 'hair'),
    at('hair-conditioner', 'hair'),
    at('face-wash', 'face'),
    at(undefined, 'body'),
  ],
  '10B': [at(undefined, undefined, true)],
};

/** A type that is a kind of another one: a rule for the wider type holds for it too, where none names it. */
const WIDER_TYPE: Readonly<Record<string, string>> = {
  lipstick: 'lip-product',
  'roll-on-deodorant': 'deodorant',
  'deodorant-spray': 'deodorant',
  'body-lotion-spray': 'body-lotion',
  mascara: 'eye-make-up',
  eyeliner: 'eye-make-up',
  'eye-shadow': 'eye-make-up',
  'loose-face-powder': 'powder',
  'fine-fragrance': 'fragrance',
  'eau-de-toilette': 'fragrance',
  'fragrance-cream': 'fragrance',
  'hydroalcoholic-fragrance': 'fragrance',
};

const SPRAYS = new Set([
  'body-lotion-spray',
  'hair-spray',
  'deodorant-spray',
  'mouth-spray',
  'deodorant',
  'powder',
  'loose-face-powder',
  'fine-fragrance',
  'eau-de-toilette',
  'hydroalcoholic-fragrance',
  'fragrance',
]);

/** The type itself, then the wider ones. */
export function typesOf(productType: string | undefined): readonly string[] {
  if (productType === undefined) return [];
  return [productType, ...typesOf(WIDER_TYPE[productType])];
}

export interface ProductKind {
  /** IFRA category: 5A for a body butter. */
  readonly category: string;
  readonly use: Use;
  readonly bodyPart?: string;
  readonly productType?: string;
}

/** Every situation that the product may be used in, as far as it is told. */
export function situationsOf({ category, bodyPart, productType }: ProductKind): readonly Situation[] {
  const possible = SITUATIONS_BY_CATEGORY[category] ?? [at(undefined, undefined)];
  const implied = possible.filter(
    (situation) =>
      (bodyPart === undefined || situation.bodyPart === bodyPart) &&
      (productType === undefined || typesOf(productType).includes(situation.productType ?? '')),
  );
  if (productType !== undefined) {
    const parts =
      bodyPart === undefined ? new Set(implied.map((situation) => situation.bodyPart)) : [bodyPart];
    const known = [...parts].length > 0 ? [...parts] : [undefined];
    return known.map((part) => at(productType, part, SPRAYS.has(productType)));
  }
  if (implied.length > 0) return implied;
  return [
    at(
      undefined,
      bodyPart,
      possible.some(({ maySpray }) => maySpray),
    ),
  ];
}
