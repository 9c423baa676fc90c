import type { Use } from './safety-table-rows.ts';

/**
 * IFRA product categories that are one way of use alone: 7A and 9 are rinsed off, the others stay on the skin (IFRA
 * Standards, 49th Amendment, guidance on product categories, from memory). 3 (eye and face, make-up remover among it), 6
 * (mouth), 8 and 10 to 12 may be either, or are not told apart here.
 */
const USE_OF_CATEGORY: Readonly<Record<string, Use>> = {
  1: 'leave-on',
  2: 'leave-on',
  4: 'leave-on',
  '5A': 'leave-on',
  '5B': 'leave-on',
  '5C': 'leave-on',
  '5D': 'leave-on',
  '7A': 'rinse-off',
  '7B': 'leave-on',
  9: 'rinse-off',
};

/** Product types of the restricted-substances table that are washed off, or that stay on, by what they are. */
const USE_OF_TYPE: Readonly<Record<string, Use>> = {
  'body-lotion': 'leave-on',
  'face-cream': 'leave-on',
  'hand-cream': 'leave-on',
  'lip-product': 'leave-on',
  lipstick: 'leave-on',
  deodorant: 'leave-on',
  'shower-gel': 'rinse-off',
  'bath-product': 'rinse-off',
  'hand-wash': 'rinse-off',
  'face-wash': 'rinse-off',
  soap: 'rinse-off',
  shampoo: 'rinse-off',
};

export interface UseContradicted {
  /** What says otherwise: an IFRA category, or a product type. */
  readonly by: 'category' | 'productType';
  readonly word: string;
  readonly allowed: Use;
}

/** What of a use says that it is used the other way: thresholds and limits hang on it. */
export function findUseContradicted({
  use,
  category,
  productType,
}: {
  readonly use: string;
  readonly category: string;
  readonly productType: string;
}): UseContradicted[] {
  const ofCategory = USE_OF_CATEGORY[category];
  const ofType = USE_OF_TYPE[productType];
  return [
    ...(ofCategory !== undefined && ofCategory !== use
      ? [{ by: 'category', word: category, allowed: ofCategory } as const]
      : []),
    ...(ofType !== undefined && ofType !== use
      ? [{ by: 'productType', word: productType, allowed: ofType } as const]
      : []),
  ];
}
