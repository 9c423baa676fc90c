import { sayMarkets } from './say-markets.ts';

const listed = (items: readonly string[]): string =>
  items.length < 2 ? (items[0] ?? '') : `${items.slice(0, -1).join(', ')} and ${items.at(-1)}`;

/** What is written to a supplier, in plain words. */
export const letterWords = {
  title: 'Papers that we ask for',
  noSupplier: 'Supplier not written down',
  to: 'To',
  from: 'From',
  on: 'Date',
  opens: (materials: readonly string[]) =>
    `We make skin care by hand and use your ${listed(materials)}. The law asks us for a safety report on every product, and our assessor judges it by what your papers say. Some of what we need is missing, or we only have it from general tables.`,
  asks: 'Please send us, for the lot that you deliver or for the material as you sell it:',
  composition: (substances: readonly string[]) =>
    `its composition: every constituent that has a limit or must be named, with CAS number, least and most in percent by mass${substances.length === 0 ? '' : `, among them ${listed(substances)}`};`,
  ifra: (categories: readonly string[]) =>
    `the IFRA certificate of conformity for ${categories.length === 1 ? 'category' : 'categories'} ${listed(categories)}, with the amendment that it follows;`,
  peroxide: 'the peroxide value of the lot in mmol of peroxide in a litre, with the day it was measured;',
  figure: (what: string) => `${what}, as your specification or certificate gives it;`,
  allergens: (markets: string) =>
    `the declaration of fragrance allergens as the law has them today (${sayMarkets(markets)}), with amounts;`,
  identity: 'which plant it is of, which part of it, and how it was won;',
  origins:
    'a statement of origin: whether it is of nuts, peanut, wheat, soya, sesame, bees, milk, animals, palm or the daisy family, or may hold traces of them.',
  closes:
    'A measured figure of the lot is worth more to us than a range of the specification. Where you do not know something, please say so: that helps us too.',
  thanks: 'Thank you, and kind regards',
  footer: (name: string) => name,
} as const;
