import type { LabelWords } from './label-words.ts';

export const englishLabelWords: LabelWords = {
  ingredients: 'Ingredients',
  batch: 'Batch',
  bestBefore: 'Best used before the end of',
  madeIn: (country) => `Made in ${country === 'United Kingdom' ? 'the United Kingdom' : country}`,
  netWeight: 'Net Wt.',
  seeLeaflet: 'See enclosed leaflet.',
  source:
    'Regulation (EC) No 1223/2009, Article 19(1)(c) and (g), English version, read; net weight after 21 CFR 701.13, read in summaries; other words common practice, no source.',
};
