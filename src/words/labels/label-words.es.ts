import type { LabelWords } from './label-words.ts';

export const spanishLabelWords: LabelWords = {
  ingredients: 'Ingredientes',
  batch: 'Lote',
  bestBefore: 'Utilícese preferentemente antes del final de',
  madeIn: (country) => `País de origen: ${country}`,
  netWeight: 'Peso neto',
  seeLeaflet: 'Véase el prospecto adjunto.',
  source:
    'Best-before words as in a Spanish guide to Regulation (EC) No 1223/2009, Article 19(1)(c), read; all words from memory, check.',
};
