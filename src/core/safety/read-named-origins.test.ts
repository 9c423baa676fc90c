import { describe, expect, it } from 'vitest';
import { originsInNames } from '../../reference/index.ts';
import { readNamedOrigins } from './read-named-origins.ts';

const flagsOf = (...names: string[]) => readNamedOrigins(names, originsInNames).map(({ flag }) => flag);

describe('what a name tells of', () => {
  // Label names as the glossary of Decision (EU) 2025/1175 spells them; genus and family after APG IV, recalled.
  it.each([
    ['Helianthus Annuus Seed Oil', ['daisy-family']],
    ['Helianthus Annuus Hybrid Oil', ['daisy-family']],
    ['Calendula Officinalis Flower Extract', ['daisy-family']],
    ['Chamomilla Recutita Flower Oil', ['daisy-family']],
    ['Prunus Amygdalus Dulcis Oil', ['tree-nut']],
    ['Butyrospermum Parkii Butter', ['tree-nut']],
    ['Corylus Avellana Seed Oil', ['tree-nut']],
    ['Arachis Hypogaea Oil', ['peanut']],
    ['Glycine Soja Oil', ['soya']],
    ['Sesamum Indicum Seed Oil', ['sesame']],
    ['Triticum Vulgare Germ Oil', ['wheat']],
    ['Elaeis Guineensis Oil', ['palm']],
    ['Sodium Palmate', ['palm']],
    ['Cera Alba', ['bee', 'animal']],
    ['Caprae Lac', ['milk', 'animal']],
    ['Lanolin', ['animal']],
  ])('%s', (name, flags) => {
    expect(flagsOf(name).toSorted()).toEqual([...flags].toSorted());
  });

  it('is read in brackets, in any case, and of any of the names', () => {
    expect(flagsOf('PRUNUS AMYGDALUS DULCIS (SWEET ALMOND) OIL')).toEqual(['tree-nut']);
    expect(flagsOf('', 'Oil', 'Helianthus annuus L.')).toEqual(['daisy-family']);
  });

  it.each([
    'Theobroma Cacao Seed Butter',
    'Garcinia Indica Seed Butter',
    'Cocos Nucifera Oil',
    'Oryza Sativa Starch',
    'Prunus Armeniaca Kernel Oil',
    'Ascorbyl Palmitate',
    'Melaleuca Alternifolia Leaf Oil',
    'Lactic Acid',
    'Pistacia Lentiscus Gum',
    'Tocopherol',
    'Glycine',
    '',
  ])('is nothing of these in %j, which only sounds like one', (name) => {
    expect(flagsOf(name)).toEqual([]);
  });
});
