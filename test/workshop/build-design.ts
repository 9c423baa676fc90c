import type { LabelDesign, LabelWording } from '../../src/print/layout/index.ts';

/** An invented label of a body butter as tests need it: words for a tin of 80 g. */
export const buildWording = (change: Partial<LabelWording> = {}): LabelWording => ({
  brand: 'Larkfold',
  name: 'Cedar and orange body butter',
  function: { en: 'Rich moisturiser for dry skin', fr: 'Soin riche pour peau sèche' },
  content: { grams: '80', figureHeightMm: 3, hasEMark: false },
  ingredients:
    'Butyrospermum Parkii Butter, Theobroma Cacao Seed Butter, Limnanthes Alba Seed Oil, Oryza Sativa Starch, ' +
    'Caprylic/Capric Triglyceride, Tocopherol, Citrus Aurantium Dulcis Peel Oil, Limonene, Linalool, Citral',
  precautions: {
    en: 'For external use only. Keep away from the eyes.',
    fr: 'Usage externe uniquement. Éviter le contact avec les yeux.',
  },
  durability: { date: '2027-05-31' },
  batch: 'CO-0418',
  responsible: 'Larkfold Butters, 3 Mill Yard,\nHollinsby HX0 0ZZ, United Kingdom',
  ...change,
});

/** A lid and a base of 66 mm unless said. */
export const buildDesign = (change: Partial<LabelDesign> = {}): LabelDesign => ({
  market: 'GB',
  languages: ['en'],
  pieces: [
    { id: 'lid', role: 'front', surface: { shape: 'round', diameterMm: 66 } },
    { id: 'base', role: 'back', surface: { shape: 'round', diameterMm: 66 } },
  ],
  ...change,
});
