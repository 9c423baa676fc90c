import type { formulas } from '../contract/index.ts';

type Use = formulas.ProductUse;

/** Every use of a product, the first one first. A revision that was written before there were several has one. */
export const usesOf = (details: Use & { readonly alsoUsedAs?: readonly Use[] }): readonly Use[] => [
  {
    use: details.use,
    category: details.category,
    bodyPart: details.bodyPart,
    productType: details.productType,
  },
  ...(details.alsoUsedAs ?? []),
];
