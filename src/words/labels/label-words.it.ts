import type { LabelWords } from './label-words.ts';

export const italianLabelWords: LabelWords = {
  ingredients: 'Ingredienti',
  batch: 'Lotto',
  bestBefore: 'Usare preferibilmente entro',
  madeIn: (country) => `Paese d’origine: ${country}`,
  netWeight: 'Peso netto',
  seeLeaflet: 'Vedere il foglio illustrativo allegato.',
  source:
    'Best-before words as in Italian university guides to Regulation (EC) No 1223/2009, Article 19(1)(c), read; other words from memory, check.',
};
