import type { LabelWords } from './label-words.ts';

export const frenchLabelWords: LabelWords = {
  ingredients: 'Ingrédients',
  batch: 'Lot',
  bestBefore: 'À utiliser de préférence avant fin',
  madeIn: (country) => `Pays d’origine\u00a0: ${country}`,
  netWeight: 'Poids net',
  seeLeaflet: 'Voir la notice jointe.',
  source:
    'Best-before words as in the Swiss cosmetics ordinance, Article 9(1)(c), French version, and in French guides to Article 19(1)(c), read; other words from memory, check.',
};
