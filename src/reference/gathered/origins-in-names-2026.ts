import type { ReferenceSource, SourcedRow } from '../sourced-row.ts';

/**
 * Words of label names (INCI) and botanical names that tell what a material comes from: plant genera with their family,
 * and the Latin and trade names of what comes from animals. They bear out a question, never an answer: a name says that
 * something comes from it, no name says that it does not. Nothing here is law, nor a list of allergens by law.
 */
export interface OriginInName extends SourcedRow {
  readonly flag:
    | 'tree-nut'
    | 'peanut'
    | 'wheat'
    | 'soya'
    | 'sesame'
    | 'bee'
    | 'milk'
    | 'animal'
    | 'palm'
    | 'daisy-family';
  /** Whole words as they stand in the name, in lower case, with a space between two. */
  readonly words: readonly string[];
}

export const originInNameSources: readonly ReferenceSource[] = [
  {
    id: 'apg-iv',
    title: 'The Angiosperm Phylogeny Group, Botanical Journal of the Linnean Society 181 (2016), 1-20: families of flowering plants',
    where: 'doi:10.1111/boj.12385',
    read: false,
    note: 'Which genus stands in which family is common botany, recalled.',
  },
  {
    id: 'eu-1169-2011-annex-ii',
    title: 'Regulation (EU) No 1169/2011, Annex II: nuts by genus, peanuts, soybeans, sesame, wheat, milk in food',
    where: 'https://eur-lex.europa.eu/eli/reg/2011/1169/oj',
    read: false,
    note: 'Of food; taken here for which plants are called nuts. Shea is no nut of that list and is asked after by custom.',
  },
  {
    id: 'common-practice',
    title: 'Common practice, no source: label names of what bees, cows and other animals give',
    where: 'none',
    read: false,
  },
];

const row = (
  flag: OriginInName['flag'],
  id: string,
  source: string,
  words: readonly string[],
): OriginInName => ({ id, flag, words, source, confidence: 'memory' });

const DAISY_GENERA = [
  'helianthus', 'calendula', 'chamomilla', 'matricaria', 'anthemis', 'chamaemelum', 'achillea', 'arnica', 'echinacea',
  'carthamus', 'tanacetum', 'chrysanthemum', 'artemisia', 'tagetes', 'bellis', 'helichrysum', 'inula', 'centaurea',
  'solidago', 'taraxacum', 'cynara', 'silybum', 'guizotia', 'eclipta', 'stevia', 'cichorium', 'arctium', 'tussilago',
  'spilanthes', 'acmella', 'leontopodium', 'santolina', 'eupatorium', 'lactuca', 'ambrosia', 'gnaphalium', 'madia',
  'erigeron', 'parthenium',
];

export const originsInNames: readonly OriginInName[] = [
  row('daisy-family', 'asteraceae', 'apg-iv', DAISY_GENERA),
  row('tree-nut', 'nuts-of-trees', 'eu-1169-2011-annex-ii', [
    'prunus amygdalus', 'prunus dulcis', 'amygdalus', 'corylus', 'juglans', 'macadamia', 'anacardium', 'carya',
    'bertholletia', 'pistacia vera',
  ]),
  row('tree-nut', 'shea', 'common-practice', ['butyrospermum', 'vitellaria']),
  row('peanut', 'arachis', 'eu-1169-2011-annex-ii', ['arachis', 'peanut', 'peanutate']),
  row('soya', 'glycine-max', 'eu-1169-2011-annex-ii', ['glycine soja', 'glycine max', 'soja', 'soy', 'soybean', 'soyate']),
  row('sesame', 'sesamum', 'eu-1169-2011-annex-ii', ['sesamum', 'sesame']),
  row('wheat', 'triticum', 'eu-1169-2011-annex-ii', ['triticum', 'wheat']),
  row('palm', 'elaeis', 'apg-iv', ['elaeis', 'palm', 'palmate', 'palm kernelate']),
  row('bee', 'of-bees', 'common-practice', ['cera alba', 'cera flava', 'beeswax', 'mel', 'honey', 'propolis', 'royal jelly']),
  row('milk', 'of-milk', 'common-practice', ['lac', 'milk', 'casein', 'caseinate', 'whey', 'lactis']),
  row('animal', 'of-animals', 'common-practice', [
    'cera alba', 'cera flava', 'beeswax', 'mel', 'honey', 'propolis', 'royal jelly', 'lac', 'milk', 'casein', 'caseinate',
    'whey', 'lactis', 'lanolin', 'adeps', 'lard', 'lardate', 'tallow', 'tallowate', 'collagen', 'keratin', 'gelatin',
    'carmine', 'shellac', 'serica', 'silk', 'emu', 'mink',
  ]),
];
