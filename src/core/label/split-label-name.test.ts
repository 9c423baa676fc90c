import { describe, expect, it } from 'vitest';
import { essentialOils, fragranceAllergens, inciNames } from '../../reference/index.ts';
import { splitLabelName } from './split-label-name.ts';

describe('the ingredients that a label name holds', () => {
  it.each([
    ['Helianthus Annuus Seed Oil, Tocopherol', ['Helianthus Annuus Seed Oil', 'Tocopherol']],
    ['Cetearyl Alcohol (and) Ceteareth-20', ['Cetearyl Alcohol', 'Ceteareth-20']],
    ['Cetearyl Alcohol(and)Ceteareth-20', ['Cetearyl Alcohol', 'Ceteareth-20']],
    ['Glyceryl Stearate and PEG-100 Stearate', ['Glyceryl Stearate', 'PEG-100 Stearate']],
    ['Mica;CI 77891; CI 77491', ['Mica', 'CI 77891', 'CI 77491']],
    ['CI 77491 / CI 77492', ['CI 77491', 'CI 77492']],
    ['Cera Alba & Tocopherol', ['Cera Alba', 'Tocopherol']],
    [
      'Citrus Limon (Lemon) Peel Oil, Tocopherol (Mixed)',
      ['Citrus Limon (Lemon) Peel Oil', 'Tocopherol (Mixed)'],
    ],
    ['Helianthus Annuus Seed Oil,Tocopherol', ['Helianthus Annuus Seed Oil', 'Tocopherol']],
    ['Parfum, Linalool', ['Parfum', 'Linalool']],
  ])('%s are several', (name, parts) => {
    expect(splitLabelName(name)).toEqual(parts);
  });

  it.each([
    'Cera Alba',
    'CI 77891',
    'CI 77891 (Titanium Dioxide)',
    'Iron Oxides (CI 77491, CI 77492, CI 77499)',
    'Parfum/Fragrance',
    'Parfum / Fragrance',
    'Aqua / Water / Eau',
    'Theobroma Cacao (Cocoa) Seed Butter',
    'Citrus Aurantium Dulcis (Orange) Peel Oil',
    'C12-15 Alkyl Benzoate',
    '1,2-Hexanediol',
    'N,N-Dimethyl Glycine',
    'Lavandula Angustifolia Herb Oil/Extract',
    'Caprylic/Capric Triglyceride',
    'PEG-8/SMDI Copolymer',
    'FD&C Blue No. 1',
    'Citrus Limon Peel Oil, Expressed',
    'Candelilla Cera',
    'Sandalwood Oil',
    '',
  ])('%s is one', (name) => {
    expect(splitLabelName(name)).toEqual([name]);
  });

  it('are one in every label name of the tables', () => {
    const names = [
      ...inciNames.flatMap(({ inciEu, inciUs = inciEu }) => [inciEu, inciUs]),
      ...essentialOils.map(({ inciEu }) => inciEu),
      ...fragranceAllergens.map(({ labelName }) => labelName),
    ];
    expect(names.length).toBeGreaterThan(300);
    expect(names.filter((name) => splitLabelName(name).length > 1)).toEqual([]);
  });
});
