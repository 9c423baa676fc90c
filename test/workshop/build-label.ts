import type { Label, LabelBack, LabelFront } from '../../src/print/layout/index.ts';

/** An invented label as tests need it: a round tin of 66 mm unless said. */
export function buildLabel(front: Partial<LabelFront> = {}, back: Partial<LabelBack> = {}): Label {
  return {
    front: {
      size: { shape: 'round', diameterMm: 66 },
      brandName: 'Larkfold',
      productName: 'Cedar and orange body butter',
      functionText: 'Rich moisturiser for dry skin',
      declaredContentText: '80 g',
      figureHeightMm: 3,
      ...front,
    },
    back: {
      size: { shape: 'round', diameterMm: 66 },
      ingredientsText:
        'Butyrospermum Parkii Butter, Theobroma Cacao Seed Butter, Limnanthes Alba Seed Oil, Oryza Sativa Starch, ' +
        'Caprylic/Capric Triglyceride, Tocopherol, Citrus Aurantium Dulcis Peel Oil, Limonene, Linalool, Citral',
      precautionsText: 'For external use only. Keep away from the eyes.',
      otherLines: ['Keep below 25 °C.'],
      durabilityText: 'Best used before the end of 05/2027',
      openedMonths: 12,
      batchNumber: 'CO-0418',
      responsiblePersonText: 'Larkfold Butters, 3 Mill Yard,\nHollinsby HX0 0ZZ, United Kingdom',
      ...back,
    },
  };
}
