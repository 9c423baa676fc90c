import type { LabelWords } from './label-words.ts';

export const germanLabelWords: LabelWords = {
  ingredients: 'Ingredients',
  batch: 'Charge',
  bestBefore: 'Mindestens haltbar bis',
  madeIn: (country) => `Ursprungsland: ${country}`,
  netWeight: 'Nettogewicht',
  seeLeaflet: 'Siehe Packungsbeilage.',
  source:
    'Best-before words as in German guides to Regulation (EC) No 1223/2009, Article 19(1)(c), read; heading "Ingredients" as an Austrian guide to Article 19(1)(g) has it, read; other words from memory, check.',
};
