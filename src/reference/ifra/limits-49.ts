/**
 * IFRA Standards, 49th Amendment: category limits of constituents and oils that matter in essential-oil formulas,
 * percent by weight in the finished product over all sources. The trade's standard, not law. A selection: a material
 * without a row here is not thereby free.
 *
 * An oil named without its process is taken as expressed until the supplier says distilled or furocoumarin-free.
 */
import type { IfraCategoryRow, IfraLimit, IfraRule } from '../ifra-limit.ts';
import type { ReferenceSource } from '../sourced-row.ts';

const ALL_UNKNOWN: IfraLimit['limits'] = {
  1: 'unknown', 2: 'unknown', 3: 'unknown', 4: 'unknown', '5A': 'unknown', '5B': 'unknown', '5C': 'unknown', '5D': 'unknown', 6: 'unknown',
  '7A': 'unknown', '7B': 'unknown', 8: 'unknown', 9: 'unknown', '10A': 'unknown', '10B': 'unknown', '11A': 'unknown', '11B': 'unknown', 12: 'unknown',
};

const NO_RESTRICTION: IfraLimit['limits'] = {
  1: 'no-restriction', 2: 'no-restriction', 3: 'no-restriction', 4: 'no-restriction', '5A': 'no-restriction', '5B': 'no-restriction', '5C': 'no-restriction', '5D': 'no-restriction', 6: 'no-restriction',
  '7A': 'no-restriction', '7B': 'no-restriction', 8: 'no-restriction', 9: 'no-restriction', '10A': 'no-restriction', '10B': 'no-restriction', '11A': 'no-restriction', '11B': 'no-restriction', 12: 'no-restriction',
};

export const ifraLimits: readonly IfraLimit[] = [
  {
    id: 'anisyl-alcohol', name: 'Anisyl alcohol',
    aliases: ['Anise Alcohol', 'p-Anisyl alcohol', '4-Methoxybenzyl alcohol'], cas: ['105-13-5', '1331-81-3'],
    foundIn: ['vanilla', 'aniseed'], kind: 'restriction',
    limits: {
      1: 0.0028, 2: 0.039, 3: 0.025, 4: 0.21, '5A': 0.041, '5B': 0.0055, '5C': 0.033, '5D': 0.002, 6: 0.091,
      '7A': 0.033, '7B': 0.033, 8: 0.002, 9: 0.099, '10A': 0.099, '10B': 0.17, '11A': 0.002, '11B': 0.002,
      12: 14,
    },
    edition: '49', unchangedIn50: true, unchangedIn51: true, source: 'ifra49', confidence: 'read-secondary',
  },
  {
    id: 'benzaldehyde', name: 'Benzaldehyde', cas: ['100-52-7'], foundIn: ['cinnamon', 'benzoin'],
    kind: 'restriction',
    limits: {
      1: 0.045, 2: 0.014, 3: 0.27, 4: 0.25, '5A': 0.064, '5B': 0.064, '5C': 0.064, '5D': 0.021, 6: 0.15,
      '7A': 0.52, '7B': 0.52, 8: 0.021, 9: 0.49, '10A': 0.49, '10B': 1.8, '11A': 0.021, '11B': 0.021,
      12: 'no-restriction',
    },
    edition: '49', unchangedIn50: true, unchangedIn51: true, source: 'ifra49', confidence: 'read-secondary',
  },
  {
    id: 'benzyl-alcohol', name: 'Benzyl alcohol', aliases: ['Benzyl Alcohol'], cas: ['100-51-6'],
    foundIn: ['jasmine', 'ylang', 'benzoin'], kind: 'restriction',
    limits: {
      1: 0.45, 2: 0.14, 3: 0.34, 4: 2.5, '5A': 0.64, '5B': 0.17, '5C': 0.34, '5D': 0.057, 6: 1.5,
      '7A': 0.68, '7B': 0.68, 8: 0.057, 9: 2.2, '10A': 2.2, '10B': 8.5, '11A': 0.057, '11B': 0.057,
      12: 'no-restriction',
    },
    edition: '49', unchangedIn50: true, unchangedIn51: true, source: 'ifra49', confidence: 'read-secondary',
  },
  {
    id: 'benzyl-benzoate', name: 'Benzyl benzoate', aliases: ['Benzyl Benzoate'], cas: ['120-51-4'],
    foundIn: ['ylang', 'jasmine', 'benzoin', 'cinnamon'], kind: 'restriction',
    limits: {
      1: 1.7, 2: 1.4, 3: 0.41, 4: 4.8, '5A': 4.3, '5B': 0.21, '5C': 0.83, '5D': 0.07, 6: 0.41, '7A': 0.41,
      '7B': 0.41, 8: 0.07, 9: 1.9, '10A': 1.9, '10B': 12, '11A': 0.07, '11B': 0.07, 12: 'no-restriction',
    },
    edition: '49', unchangedIn50: true, unchangedIn51: true, source: 'ifra49', confidence: 'read-secondary',
  },
  {
    id: 'benzyl-cinnamate', name: 'Benzyl cinnamate', aliases: ['Benzyl Cinnamate'], cas: ['103-41-3'],
    foundIn: ['balsams'], kind: 'restriction',
    limits: {
      1: 0.36, 2: 0.11, 3: 1.2, 4: 2, '5A': 0.51, '5B': 0.51, '5C': 0.51, '5D': 0.17, 6: 1.2, '7A': 2.4,
      '7B': 2.4, 8: 0.17, 9: 3.9, '10A': 3.9, '10B': 14, '11A': 0.17, '11B': 0.17, 12: 'no-restriction',
    },
    edition: '49', unchangedIn50: true, unchangedIn51: true, source: 'ifra49', confidence: 'read-secondary',
  },
  {
    id: 'benzyl-salicylate', name: 'Benzyl salicylate', aliases: ['Benzyl Salicylate'], cas: ['118-58-1'],
    foundIn: ['ylang'], kind: 'restriction',
    limits: {
      1: 1.3, 2: 0.39, 3: 7.8, 4: 7.3, '5A': 1.9, '5B': 1.9, '5C': 1.9, '5D': 1.9, 6: 4.3, '7A': 15,
      '7B': 15, 8: 0.77, 9: 14, '10A': 51, '10B': 51, '11A': 28, '11B': 28, 12: 'no-restriction',
    },
    edition: '49', unchangedIn50: true, source: 'ifra49', confidence: 'read-secondary',
  },
  {
    id: 'carvone', name: 'Carvone', aliases: ['d-Carvone', 'l-Carvone'], cas: ['99-49-0', '2244-16-8', '6485-40-1'],
    foundIn: ['spearmint'], kind: 'restriction',
    limits: {
      1: 0.2, 2: 0.06, 3: 0.02, 4: 0.59, '5A': 0.2, '5B': 0.039, '5C': 0.059, '5D': 0.013, 6: 0.66,
      '7A': 0.039, '7B': 0.039, 8: 0.013, 9: 0.18, '10A': 0.18, '10B': 0.43, '11A': 0.013, '11B': 0.013, 12: 17,
    },
    edition: '49', source: 'ifra49', confidence: 'read-secondary',
  },
  {
    id: 'cedrene', name: 'Cedrene', aliases: ['alpha-Cedrene', 'beta-Cedrene'],
    cas: ['11028-42-5', '469-61-4', '546-28-1'], foundIn: ['cedarwood Virginian'], kind: 'restriction',
    limits: {
      1: 0.27, 2: 0.08, 3: 1.6, 4: 1.5, '5A': 0.38, '5B': 0.38, '5C': 0.38, '5D': 0.38, 6: 0.88, '7A': 3.1,
      '7B': 3.1, 8: 0.16, 9: 2.9, '10A': 11, '10B': 11, '11A': 5.8, '11B': 5.8, 12: 'no-restriction',
    },
    edition: '49', source: 'ifra49', confidence: 'read-secondary',
  },
  {
    id: 'cinnamic-alcohol', name: 'Cinnamic alcohol', aliases: ['Cinnamyl Alcohol'], cas: ['104-54-1'],
    foundIn: ['cinnamon', 'balsams'], kind: 'restriction',
    limits: {
      1: 0.22, 2: 0.067, 3: 0.25, 4: 1.2, '5A': 0.32, '5B': 0.25, '5C': 0.25, '5D': 0.085, 6: 0.13,
      '7A': 0.25, '7B': 0.25, 8: 0.085, 9: 0.76, '10A': 0.76, '10B': 2, '11A': 0.085, '11B': 0.085, 12: 51,
    },
    edition: '49', source: 'ifra49', confidence: 'read-secondary',
  },
  {
    id: 'cinnamic-aldehyde', name: 'Cinnamic aldehyde', aliases: ['Cinnamal', 'Cinnamaldehyde'], cas: ['104-55-2'],
    foundIn: ['cinnamon bark', 'cassia'], kind: 'restriction',
    limits: {
      1: 0.045, 2: 0.014, 3: 0.021, 4: 0.25, '5A': 0.064, '5B': 0.042, '5C': 0.064, '5D': 0.014, 6: 0.15,
      '7A': 0.17, '7B': 0.17, 8: 0.014, 9: 0.49, '10A': 0.49, '10B': 1.8, '11A': 0.014, '11B': 0.014,
      12: 'no-restriction',
    },
    edition: '49', source: 'ifra49', confidence: 'read-secondary',
  },
  {
    id: 'citral', name: 'Citral', aliases: ['Geranial', 'Neral'], cas: ['5392-40-5', '141-27-5', '106-26-3'],
    foundIn: ['lemongrass', 'may chang', 'lemon'], kind: 'restriction',
    limits: {
      1: 0.11, 2: 0.032, 3: 0.1, 4: 0.6, '5A': 0.15, '5B': 0.15, '5C': 0.15, '5D': 0.051, 6: 0.35,
      '7A': 0.2, '7B': 0.2, 8: 0.051, 9: 1.2, '10A': 1.2, '10B': 4.2, '11A': 0.051, '11B': 0.051,
      12: 'no-restriction',
    },
    edition: '49', source: 'ifra49', confidence: 'read-secondary', note: 'Every value agreed with a second text.',
  },
  {
    id: 'citronellal', name: 'Citronellal', cas: ['106-23-0', '5949-05-3'], foundIn: ['citronella'],
    kind: 'restriction',
    limits: {
      1: 0.41, 2: 0.16, 3: 0.026, 4: 0.49, '5A': 0.33, '5B': 0.051, '5C': 0.1, '5D': 0.017, 6: 0.82,
      '7A': 0.077, '7B': 0.077, 8: 0.017, 9: 1.4, '10A': 1.4, '10B': 2.3, '11A': 0.017, '11B': 0.017,
      12: 'no-restriction',
    },
    edition: '49', source: 'ifra49', confidence: 'read', note: 'Every value agreed with a second text (ifra49-cl).',
  },
  {
    id: 'citronellol', name: 'Citronellol',
    cas: ['106-22-9', '1117-61-9', '26489-01-0', '6812-78-8', '141-25-3', '7540-51-4'],
    foundIn: ['rose', 'geranium', 'citronella'], kind: 'restriction',
    limits: {
      1: 2.2, 2: 0.67, 3: 13, 4: 12, '5A': 3.2, '5B': 3.2, '5C': 3.2, '5D': 3.2, 6: 7.3, '7A': 25, '7B': 25,
      8: 1.3, 9: 24, '10A': 87, '10B': 87, '11A': 48, '11B': 48, 12: 'no-restriction',
    },
    edition: '49', source: 'ifra49', confidence: 'read-secondary',
  },
  {
    id: 'coumarin', name: 'Coumarin', cas: ['91-64-5'], foundIn: ['lavandin', 'cassia'], kind: 'restriction',
    limits: {
      1: 0.089, 2: 0.08, 3: 0.089, 4: 1.5, '5A': 0.38, '5B': 0.11, '5C': 0.16, '5D': 0.035, 6: 0.0024,
      '7A': 0.18, '7B': 0.18, 8: 0.035, 9: 0.52, '10A': 0.52, '10B': 1.6, '11A': 0.035, '11B': 0.035, 12: 33,
    },
    edition: '49', source: 'ifra49', confidence: 'read-secondary',
  },
  {
    id: 'cuminaldehyde', name: 'Cuminaldehyde', aliases: ['Cuminal', '4-Isopropylbenzaldehyde'], cas: ['122-03-2'],
    foundIn: ['cumin', 'myrrh'], kind: 'restriction',
    limits: {
      1: 0.085, 2: 0.025, 3: 0.51, 4: 0.47, '5A': 0.12, '5B': 0.12, '5C': 0.12, '5D': 0.12, 6: 0.28,
      '7A': 0.96, '7B': 0.96, 8: 0.05, 9: 0.92, '10A': 3.3, '10B': 3.3, '11A': 1.8, '11B': 1.8,
      12: 'no-restriction',
    },
    edition: '49', source: 'ifra49', confidence: 'read-secondary',
  },
  {
    id: 'dihydrocoumarin', name: 'Dihydrocoumarin', aliases: ['3,4-Dihydrocoumarin'], cas: ['119-84-6'],
    kind: 'restriction',
    limits: {
      1: 0.077, 2: 0.023, 3: 0.46, 4: 0.43, '5A': 0.11, '5B': 0.11, '5C': 0.11, '5D': 0.03, 6: 0.25,
      '7A': 0.88, '7B': 0.88, 8: 0.03, 9: 0.84, '10A': 0.84, '10B': 3, '11A': 0.03, '11B': 0.03,
      12: 'no-restriction',
    },
    edition: '49', source: 'ifra49', confidence: 'read-secondary',
    note: 'Prohibited in the EU although limited here: the law decides (restricted-substances).',
  },
  {
    id: 'estragole', name: 'Estragole', aliases: ['Methyl chavicol', '4-Allylanisole'],
    cas: ['140-67-0', '1407-27-8', '77525-18-9'], foundIn: ['basil', 'fennel', 'aniseed'], kind: 'restriction',
    limits: {
      1: 0.012, 2: 0.023, 3: 0.012, 4: 0.42, '5A': 0.075, '5B': 0.0062, '5C': 0.012, '5D': 0.0021, 6: 0.031,
      '7A': 0.012, '7B': 0.012, 8: 0.0021, 9: 0.05, '10A': 0.05, '10B': 0.05, '11A': 0.0021, '11B': 0.0021,
      12: 1.5,
    },
    edition: '49', source: 'ifra49', confidence: 'read-secondary',
  },
  {
    id: 'eugenol', name: 'Eugenol', cas: ['97-53-0'], foundIn: ['clove', 'cinnamon leaf', 'basil'],
    kind: 'restriction',
    limits: {
      1: 0.45, 2: 0.14, 3: 1.4, 4: 2.5, '5A': 0.64, '5B': 0.64, '5C': 0.64, '5D': 0.21, 6: 0.64, '7A': 1.4,
      '7B': 1.4, 8: 0.21, 9: 4.9, '10A': 4.9, '10B': 18, '11A': 0.21, '11B': 0.21, 12: 'no-restriction',
    },
    edition: '49', source: 'ifra49', confidence: 'read-secondary',
  },
  {
    id: 'farnesal', name: 'Farnesal', cas: ['19317-11-4'], kind: 'restriction',
    limits: {
      1: 0.11, 2: 0.032, 3: 0.11, 4: 0.6, '5A': 0.15, '5B': 0.15, '5C': 0.15, '5D': 0.051, 6: 0.11,
      '7A': 0.34, '7B': 0.34, 8: 0.051, 9: 0.57, '10A': 0.57, '10B': 4.2, '11A': 0.051, '11B': 0.051,
      12: 'no-restriction',
    },
    edition: '49', source: 'ifra49', confidence: 'read-secondary',
  },
  {
    id: 'furfural', name: 'Furfural', aliases: ['2-Furaldehyde'], cas: ['98-01-1'],
    foundIn: ['trace in distilled oils'], kind: 'restriction',
    limits: {
      1: 0.001, 2: 0.001, 3: 0.001, 4: 0.001, '5A': 0.001, '5B': 0.001, '5C': 0.001, '5D': 0.001, 6: 0.001,
      '7A': 0.001, '7B': 0.001, 8: 0.001, 9: 0.001, '10A': 0.001, '10B': 0.001, '11A': 0.001, '11B': 0.001,
      12: 0.05,
    },
    edition: '49', source: 'ifra49', confidence: 'read-secondary',
  },
  {
    id: 'geraniol', name: 'Geraniol', cas: ['106-24-1'], foundIn: ['rose', 'geranium', 'citronella', 'palmarosa'],
    kind: 'restriction',
    limits: {
      1: 0.85, 2: 0.25, 3: 5.1, 4: 4.7, '5A': 1.2, '5B': 1.2, '5C': 1.2, '5D': 1.2, 6: 2.8, '7A': 9.6,
      '7B': 9.6, 8: 0.5, 9: 9.2, '10A': 33, '10B': 33, '11A': 18, '11B': 18, 12: 'no-restriction',
    },
    edition: '49', source: 'ifra49', confidence: 'read-secondary',
  },
  {
    id: 'hexyl-salicylate', name: 'Hexyl salicylate', aliases: ['Hexyl Salicylate'], cas: ['6259-76-3'],
    kind: 'restriction',
    limits: {
      1: 0.092, 2: 0.8, 3: 0.25, 4: 6.5, '5A': 2.7, '5B': 0.3, '5C': 0.46, '5D': 0.1, 6: 0.0092, '7A': 0.38,
      '7B': 0.38, 8: 0.1, 9: 1.2, '10A': 1.2, '10B': 2.2, '11A': 0.1, '11B': 0.1, 12: 64,
    },
    edition: '49', source: 'ifra49', confidence: 'read-secondary',
  },
  {
    id: 'hydroxycitronellal', name: 'Hydroxycitronellal', cas: ['107-75-5'], kind: 'restriction',
    limits: {
      1: 0.38, 2: 0.11, 3: 2.3, 4: 2.1, '5A': 0.53, '5B': 0.53, '5C': 0.53, '5D': 0.53, 6: 1.2, '7A': 4.3,
      '7B': 4.3, 8: 0.22, 9: 4.1, '10A': 15, '10B': 15, '11A': 8.2, '11B': 8.2, 12: 'no-restriction',
    },
    edition: '49', source: 'ifra49', confidence: 'read-secondary',
  },
  {
    id: 'isoeugenol', name: 'Isoeugenol', cas: ['97-54-1', '5932-68-3'], foundIn: ['ylang', 'nutmeg', 'clove'],
    kind: 'restriction',
    limits: {
      1: 0.019, 2: 0.0057, 3: 0.12, 4: 0.11, '5A': 0.027, '5B': 0.027, '5C': 0.027, '5D': 0.009, 6: 0.063,
      '7A': 0.22, '7B': 0.22, 8: 0.009, 9: 0.21, '10A': 0.21, '10B': 0.75, '11A': 0.009, '11B': 0.009,
      12: 'no-restriction',
    },
    edition: '49', source: 'ifra49', confidence: 'read-secondary',
  },
  {
    id: 'longifolene', name: 'Longifolene', cas: ['475-20-7', '16846-09-6', '19067-29-9'], foundIn: ['pine'],
    kind: 'restriction',
    limits: {
      1: 0.27, 2: 0.08, 3: 1.6, 4: 1.5, '5A': 0.38, '5B': 0.38, '5C': 0.38, '5D': 0.38, 6: 0.88, '7A': 3.1,
      '7B': 3.1, 8: 0.16, 9: 2.9, '10A': 11, '10B': 11, '11A': 5.8, '11B': 5.8, 12: 'no-restriction',
    },
    edition: '49', source: 'ifra49', confidence: 'read-secondary',
  },
  {
    id: 'methyl-eugenol', name: 'Methyl eugenol', aliases: ['Methyl Eugenol', 'Methyleugenol'], cas: ['93-15-2'],
    foundIn: ['rose', 'nutmeg', 'clove', 'basil', 'tea tree'], kind: 'restriction',
    limits: {
      1: 0.00058, 2: 0.0023, 3: 0.00029, 4: 0.016, '5A': 0.002, '5B': 0.00058, '5C': 0.00058, '5D': 0.00019,
      6: 0.0014, '7A': 0.00058, '7B': 0.00058, 8: 0.00019, 9: 0.00087, '10A': 0.00087, '10B': 0.0032,
      '11A': 0.00019, '11B': 0.00019, 12: 0.097,
    },
    edition: '49', source: 'ifra49', confidence: 'read',
    note: 'Every value agreed with a second text (ifra49-me). The EU cap is stricter in most categories (restricted-substances).',
  },
  {
    id: 'perilla-aldehyde', name: 'Perilla aldehyde', aliases: ['Perillaldehyde'], cas: ['2111-75-3'],
    foundIn: ['citrus peel', 'perilla'], kind: 'restriction',
    limits: {
      1: 0.054, 2: 0.016, 3: 0.32, 4: 0.3, '5A': 0.076, '5B': 0.076, '5C': 0.076, '5D': 0.076, 6: 0.18,
      '7A': 0.61, '7B': 0.61, 8: 0.032, 9: 0.59, '10A': 2.1, '10B': 2.1, '11A': 1.2, '11B': 1.2,
      12: 'no-restriction',
    },
    edition: '49', source: 'ifra49', confidence: 'read-secondary',
  },
  {
    id: 'phenylacetaldehyde', name: 'Phenylacetaldehyde', cas: ['122-78-1'], foundIn: ['rose'], kind: 'restriction',
    limits: {
      1: 0.045, 2: 0.014, 3: 0.27, 4: 0.25, '5A': 0.064, '5B': 0.064, '5C': 0.064, '5D': 0.021, 6: 0.15,
      '7A': 0.52, '7B': 0.52, 8: 0.021, 9: 0.49, '10A': 0.49, '10B': 1.8, '11A': 0.021, '11B': 0.021,
      12: 'no-restriction',
    },
    edition: '49', source: 'ifra49', confidence: 'read-secondary',
  },
  {
    id: 'p-methoxybenzaldehyde', name: 'p-Methoxybenzaldehyde', aliases: ['Anisaldehyde', 'p-Anisaldehyde'],
    cas: ['123-11-5'], foundIn: ['aniseed', 'fennel', 'vanilla'], kind: 'restriction',
    limits: {
      1: 0.043, 2: 0.08, 3: 0.022, 4: 0.21, '5A': 0.11, '5B': 0.022, '5C': 0.032, '5D': 0.0072, 6: 0.011,
      '7A': 0.022, '7B': 0.022, 8: 0.0072, 9: 0.065, '10A': 0.065, '10B': 0.21, '11A': 0.0072, '11B': 0.0072,
      12: 4.9,
    },
    edition: '49', source: 'ifra49', confidence: 'read-secondary',
  },
  {
    id: 'p-isopropylbenzyl-alcohol', name: 'p-Isopropylbenzyl alcohol', aliases: ['Cuminyl alcohol'],
    cas: ['536-60-7'], foundIn: ['cumin'], kind: 'restriction',
    limits: {
      1: 0.45, 2: 0.14, 3: 0.4, 4: 2.5, '5A': 0.64, '5B': 0.64, '5C': 0.64, '5D': 0.21, 6: 1.5, '7A': 0.8,
      '7B': 0.8, 8: 0.21, 9: 2, '10A': 2, '10B': 4.8, '11A': 0.21, '11B': 0.21, 12: 'no-restriction',
    },
    edition: '49', source: 'ifra49', confidence: 'read-secondary',
  },
  {
    id: 'thujone', name: 'Thujone', aliases: ['alpha-Thujone', 'beta-Thujone'],
    cas: ['546-80-5', '471-15-8', '76231-76-0', '1125-12-8'], foundIn: ['sage', 'clary sage trace'],
    kind: 'restriction',
    limits: {
      1: 0.11, 2: 0.21, 3: 0.032, 4: 1.4, '5A': 0.095, '5B': 0.032, '5C': 0.016, '5D': 0.0053, 6: 0.095,
      '7A': 0.24, '7B': 0.24, 8: 0.0053, 9: 0.13, '10A': 0.13, '10B': 0.22, '11A': 0.0053, '11B': 0.0053,
      12: 9.5,
    },
    edition: '49', source: 'ifra49', confidence: 'read-secondary',
    note: 'Every value agreed with a second text (tgsc).',
  },
  {
    id: 'trans-2-hexenal', name: 'trans-2-Hexenal', cas: ['6728-26-3'], foundIn: ['green notes'], kind: 'restriction',
    limits: {
      1: 0.0018, 2: 0.00055, 3: 0.011, 4: 0.01, '5A': 0.0026, '5B': 0.0026, '5C': 0.0026, '5D': 0.00087,
      6: 0.006, '7A': 0.021, '7B': 0.021, 8: 0.00087, 9: 0.02, '10A': 0.02, '10B': 0.072, '11A': 0.00087,
      '11B': 0.00087, 12: 'no-restriction',
    },
    edition: '49', source: 'ifra49', confidence: 'read-secondary',
  },
  {
    id: '1-octen-3-yl-acetate', name: '1-Octen-3-yl acetate', cas: ['2442-10-6'], foundIn: ['lavender'],
    kind: 'restriction',
    limits: {
      1: 0.27, 2: 0.08, 3: 1.6, 4: 1.5, '5A': 0.38, '5B': 0.38, '5C': 0.38, '5D': 0.38, 6: 0.88, '7A': 3.1,
      '7B': 3.1, 8: 0.16, 9: 2.9, '10A': 11, '10B': 11, '11A': 5.8, '11B': 5.8, 12: 'no-restriction',
    },
    edition: '49', source: 'ifra49', confidence: 'read-secondary',
  },
  {
    id: 'alpha-amyl-cinnamic-aldehyde', name: 'alpha-Amyl cinnamic aldehyde',
    aliases: ['Amyl Cinnamal', 'alpha-Amylcinnamaldehyde'], cas: ['122-40-7'], kind: 'restriction',
    limits: {
      1: 0.58, 2: 0.53, 3: 0.26, 4: 7, '5A': 2.5, '5B': 0.32, '5C': 0.45, '5D': 0.11, 6: 0.064, '7A': 0.26,
      '7B': 0.26, 8: 0.11, 9: 1.5, '10A': 1.5, '10B': 3.5, '11A': 0.11, '11B': 0.11, 12: 'no-restriction',
    },
    edition: '49', unchangedIn50: true, unchangedIn51: true, source: 'ifra49', confidence: 'read-secondary',
  },
  {
    id: 'alpha-hexyl-cinnamic-aldehyde', name: 'alpha-Hexyl cinnamic aldehyde', aliases: ['Hexyl Cinnamal'],
    cas: ['101-86-0'], kind: 'restriction',
    limits: {
      1: 1.8, 2: 0.53, 3: 11, 4: 9.9, '5A': 2.5, '5B': 2.5, '5C': 2.5, '5D': 2.5, 6: 5.8, '7A': 20,
      '7B': 20, 8: 1, 9: 19, '10A': 69, '10B': 69, '11A': 38, '11B': 38, 12: 'no-restriction',
    },
    edition: '49', source: 'ifra49', confidence: 'read-secondary',
  },
  {
    id: 'alpha-methyl-cinnamic-aldehyde', name: 'alpha-Methyl cinnamic aldehyde',
    aliases: ['alpha-Methylcinnamaldehyde'], cas: ['101-39-3'], kind: 'restriction',
    limits: {
      1: 0.27, 2: 0.08, 3: 1.6, 4: 1.5, '5A': 0.38, '5B': 0.38, '5C': 0.38, '5D': 0.38, 6: 0.88, '7A': 3.1,
      '7B': 3.1, 8: 0.16, 9: 2.9, '10A': 11, '10B': 11, '11A': 5.8, '11B': 5.8, 12: 'no-restriction',
    },
    edition: '49', source: 'ifra49', confidence: 'read-secondary',
  },
  {
    id: 'o-methoxycinnamaldehyde', name: 'o-Methoxycinnamaldehyde', aliases: ['2-Methoxycinnamaldehyde'],
    cas: ['1504-74-1'], foundIn: ['cassia', 'cinnamon bark'], kind: 'restriction',
    limits: {
      1: 0.077, 2: 0.023, 3: 0.46, 4: 0.43, '5A': 0.11, '5B': 0.11, '5C': 0.11, '5D': 0.11, 6: 0.25,
      '7A': 0.88, '7B': 0.88, 8: 0.045, 9: 0.84, '10A': 3, '10B': 3, '11A': 1.7, '11B': 1.7,
      12: 'no-restriction',
    },
    edition: '49', source: 'ifra49', confidence: 'read-secondary',
  },
  {
    id: 'alpha-amyl-cinnamic-alcohol', name: 'alpha-Amyl cinnamic alcohol', aliases: ['Amylcinnamyl Alcohol'],
    cas: ['101-85-9'], kind: 'restriction',
    limits: {
      1: 0.27, 2: 0.08, 3: 0.64, 4: 1.5, '5A': 0.38, '5B': 0.32, '5C': 0.38, '5D': 0.11, 6: 0.32,
      '7A': 0.64, '7B': 0.64, 8: 0.11, 9: 1.6, '10A': 1.6, '10B': 3.5, '11A': 0.11, '11B': 0.11, 12: 79,
    },
    edition: '49', unchangedIn50: true, unchangedIn51: true, source: 'ifra49', confidence: 'read-secondary',
  },
  {
    id: 'methyl-heptine-carbonate', name: 'Methyl heptine carbonate', aliases: ['Methyl 2-Octynoate'],
    cas: ['111-12-6'], kind: 'restriction',
    limits: {
      1: 0.0085, 2: 0.0025, 3: 0.051, 4: 0.047, '5A': 0.012, '5B': 0.012, '5C': 0.012, '5D': 0.012,
      6: 0.028, '7A': 0.096, '7B': 0.096, 8: 0.005, 9: 0.092, '10A': 0.33, '10B': 0.33, '11A': 0.18,
      '11B': 0.18, 12: 'no-restriction',
    },
    edition: '49', source: 'ifra49', confidence: 'read-secondary',
  },
  {
    id: 'methyl-octine-carbonate', name: 'Methyl octine carbonate', aliases: ['Methyl 2-nonynoate'],
    cas: ['111-80-8'], kind: 'restriction',
    limits: {
      1: 0.0018, 2: 0.00055, 3: 0.011, 4: 0.01, '5A': 0.0026, '5B': 0.0026, '5C': 0.0026, '5D': 0.0026,
      6: 0.0061, '7A': 0.021, '7B': 0.021, 8: 0.0011, 9: 0.02, '10A': 0.072, '10B': 0.072, '11A': 0.04,
      '11B': 0.04, 12: 'no-restriction',
    },
    edition: '49', source: 'ifra49', confidence: 'read-secondary',
  },
  {
    id: '2-methoxy-4-methylphenol', name: '2-Methoxy-4-methylphenol', aliases: ['Creosol'], cas: ['93-51-6'],
    kind: 'restriction',
    limits: {
      1: 0.0085, 2: 0.0025, 3: 0.051, 4: 0.047, '5A': 0.012, '5B': 0.012, '5C': 0.012, '5D': 0.012,
      6: 0.028, '7A': 0.096, '7B': 0.096, 8: 0.005, 9: 0.092, '10A': 0.33, '10B': 0.33, '11A': 0.18,
      '11B': 0.18, 12: 'no-restriction',
    },
    edition: '49', source: 'ifra49', confidence: 'read-secondary',
  },
  {
    id: '2-6-6-trimethylcyclohex-1-3-dienyl-methanal', name: '2,6,6-Trimethylcyclohex-1,3-dienyl methanal',
    aliases: ['Safranal'], cas: ['116-26-7'], foundIn: ['saffron'], kind: 'restriction',
    limits: {
      1: 0.0022, 2: 0.00066, 3: 0.013, 4: 0.012, '5A': 0.0032, '5B': 0.0032, '5C': 0.0032, '5D': 0.0032,
      6: 0.0073, '7A': 0.025, '7B': 0.025, 8: 0.0013, 9: 0.024, '10A': 0.087, '10B': 0.087, '11A': 0.048,
      '11B': 0.048, 12: 'no-restriction',
    },
    edition: '49', source: 'ifra49', confidence: 'read-secondary',
  },
  {
    id: 'acetylated-vetiver-oil', name: 'Acetylated Vetiver oil', aliases: ['Vetiveryl Acetate', 'Vetiver acetate'],
    cas: ['84082-84-8', '68917-34-0', '73246-97-6', '62563-80-8'], foundIn: ['acetylated vetiver'],
    kind: 'restriction',
    limits: {
      1: 0.05, 2: 0.05, 3: 0.05, 4: 0.9, '5A': 0.1, '5B': 0.1, '5C': 0.1, '5D': 0.033, 6: 0.098, '7A': 0.1,
      '7B': 0.1, 8: 0.033, 9: 0.2, '10A': 0.2, '10B': 3.8, '11A': 0.033, '11B': 0.033, 12: 'no-restriction',
    },
    edition: '49', unchangedIn50: true, unchangedIn51: true, source: 'ifra49', confidence: 'read-secondary',
  },
  {
    id: 'jasmine-absolute-grandiflorum', name: 'Jasmine absolute (grandiflorum)',
    aliases: ['Jasmine Oil/Extract', 'Jasminum Grandiflorum Flower Extract', 'Jasminum Officinale Flower Extract'],
    cas: ['8022-96-6', '8024-43-9', '90045-94-6', '84776-64-7'], plantPart: ['flower'], process: ['absolute'],
    foundIn: ['jasmine'], kind: 'restriction',
    limits: {
      1: 0.11, 2: 0.032, 3: 0.65, 4: 0.6, '5A': 0.15, '5B': 0.15, '5C': 0.15, '5D': 0.15, 6: 0.35,
      '7A': 1.2, '7B': 1.2, 8: 0.063, 9: 1.2, '10A': 4.2, '10B': 4.2, '11A': 2.3, '11B': 2.3,
      12: 'no-restriction',
    },
    edition: '49', source: 'ifra49', confidence: 'read-secondary',
  },
  {
    id: 'jasmine-absolute-sambac', name: 'Jasmine absolute (sambac)',
    aliases: ['Jasmine Oil/Extract', 'Jasminum Sambac Flower Extract'], cas: ['91770-14-8', '1034798-23-6'],
    plantPart: ['flower'], process: ['absolute'], foundIn: ['jasmine'], kind: 'restriction',
    limits: {
      1: 0.68, 2: 0.2, 3: 4.1, 4: 3.8, '5A': 0.96, '5B': 0.96, '5C': 0.96, '5D': 0.96, 6: 2.2, '7A': 7.7,
      '7B': 7.7, 8: 0.4, 9: 7.4, '10A': 26, '10B': 26, '11A': 15, '11B': 15, 12: 'no-restriction',
    },
    edition: '49', source: 'ifra49', confidence: 'read-secondary',
  },
  {
    id: 'melissa-oil', name: 'Melissa oil (genuine Melissa officinalis L.)',
    aliases: ['Melissa Officinalis Leaf Oil', 'Melissa oil', 'Lemon balm oil'], cas: ['8014-71-9', '84082-61-1'],
    foundIn: ['melissa'], kind: 'restriction',
    limits: {
      1: 0.11, 2: 0.032, 3: 0.65, 4: 0.6, '5A': 0.15, '5B': 0.15, '5C': 0.15, '5D': 0.15, 6: 0.35,
      '7A': 1.2, '7B': 1.2, 8: 0.063, 9: 1.2, '10A': 4.2, '10B': 4.2, '11A': 2.3, '11B': 2.3,
      12: 'no-restriction',
    },
    edition: '49', source: 'ifra49', confidence: 'read-secondary',
  },
  {
    id: 'tea-leaf-absolute', name: 'Tea leaf absolute', aliases: ['Camellia Sinensis Leaf Extract'],
    cas: ['84650-60-2'], plantPart: ['leaf'], process: ['absolute'], foundIn: ['tea leaf'], kind: 'restriction',
    limits: {
      1: 0.037, 2: 0.011, 3: 0.22, 4: 0.21, '5A': 0.052, '5B': 0.052, '5C': 0.052, '5D': 0.052, 6: 0.12,
      '7A': 0.42, '7B': 0.42, 8: 0.022, 9: 0.4, '10A': 1.4, '10B': 1.4, '11A': 0.8, '11B': 0.8,
      12: 'no-restriction',
    },
    edition: '49', source: 'ifra49', confidence: 'read-secondary',
  },
  {
    id: 'ylang-ylang-extracts', name: 'Ylang ylang extracts',
    aliases: ['Cananga Odorata Oil/Extract', 'Cananga Odorata Flower Oil', 'Ylang ylang oil'],
    cas: ['8006-81-3', '68606-83-7', '83863-30-3'], plantPart: ['flower'], foundIn: ['ylang'], kind: 'restriction',
    limits: {
      1: 0.13, 2: 0.039, 3: 0.78, 4: 0.73, '5A': 0.18, '5B': 0.18, '5C': 0.18, '5D': 0.18, 6: 0.43,
      '7A': 1.5, '7B': 1.5, 8: 0.077, 9: 1.4, '10A': 5.1, '10B': 5.1, '11A': 2.8, '11B': 2.8,
      12: 'no-restriction',
    },
    edition: '49', source: 'ifra49', confidence: 'read-secondary',
  },
  {
    id: 'alpha-bisabolol', name: 'alpha-Bisabolol', aliases: ['Bisabolol', 'alpha-Bisabolol'],
    cas: ['515-69-5', '23089-26-1', '23178-88-3', '78148-59-1', '76738-75-5', '72691-24-8'],
    foundIn: ['German chamomile'], kind: 'restriction',
    limits: {
      1: 'unknown', 2: 0.13, 3: 2.5, 4: 2.4, '5A': 0.6, '5B': 0.6, '5C': 0.6, '5D': 0.2, 6: 1.4,
      '7A': 'unknown', '7B': 'unknown', 8: 'unknown', 9: 'unknown', '10A': 'unknown', '10B': 'unknown',
      '11A': 'unknown', '11B': 'unknown', 12: 'unknown',
    },
    edition: '49', unchangedIn50: true, source: 'ifra49', confidence: 'read-secondary',
    note: 'The table was only partly readable: the missing categories are unknown, not unrestricted.',
  },
  {
    id: '3-7-dimethyl-2-6-nonadien-1-al', name: '3,7-Dimethyl-2,6-nonadien-1-al', cas: ['41448-29-7'],
    kind: 'restriction',
    limits: {
      1: 0.11, 2: 0.032, 3: 0.65, 4: 0.6, '5A': 0.15, '5B': 0.15, '5C': 0.15, '5D': 0.051, 6: 0.16,
      '7A': 1.2, '7B': 1.2, 8: 0.051, 9: 0.16, '10A': 0.16, '10B': 4.2, '11A': 0.051, '11B': 0.051,
      12: 'no-restriction',
    },
    edition: '49', source: 'ifra49', confidence: 'read-secondary',
  },
  {
    id: 'bergamot-oil-expressed', name: 'Bergamot oil expressed',
    aliases: [
      'Citrus Aurantium Bergamia Peel Oil', 'Citrus Aurantium Bergamia Peel Oil Expressed',
      'Citrus Aurantium Bergamia Peel Oil, Expressed', 'Citrus Aurantium Bergamia Oil Expressed',
      'Citrus Aurantium Bergamia Fruit Oil', 'Citrus Bergamia Peel Oil', 'Citrus Bergamia Peel Oil Expressed',
      'Citrus Bergamia Peel Oil, Expressed', 'Citrus Bergamia Oil Expressed', 'Citrus Bergamia Fruit Oil',
      'Citrus Aurantium Bergamia (Bergamot) Peel Oil', 'Citrus Aurantium Bergamia (Bergamot) Peel Oil Expressed',
      'Citrus Aurantium Bergamia (Bergamot) Fruit Oil', 'Bergamot oil expressed', 'Bergamot oil, expressed',
      'Bergamot oil (expressed)', 'Expressed bergamot oil', 'Bergamot, expressed', 'Bergamot oil cold pressed',
      'Bergamot oil, cold pressed', 'Bergamot oil cold-pressed', 'Cold pressed bergamot oil',
      'Cold-pressed bergamot oil', 'Bergamot peel oil', 'Bergamot peel oil expressed', 'Bergamot oil',
    ],
    cas: ['8007-75-8', '89957-91-5'], plantPart: ['peel'], process: ['expressed'], kind: 'phototoxic',
    sumGroup: 'phototoxic', rinseOffFree: true,
    limits: {
      1: 0.4, 2: 0.4, 3: 0.4, 4: 0.4, '5A': 0.4, '5B': 0.4, '5C': 0.4, '5D': 0.4, 6: 0.4,
      '7A': 'no-restriction', '7B': 0.4, 8: 0.4, 9: 'no-restriction', '10A': 'no-restriction', '10B': 0.4,
      '11A': 'no-restriction', '11B': 0.4, 12: 'no-restriction',
    },
    edition: '49', unchangedIn50: true, source: 'ifra49', confidence: 'read-secondary',
    note: 'Applies when the furocoumarin content is unknown and to skin exposed to light; rinse-off is free. Concentrated (terpene-reduced) grades: lower in proportion. Distilled or furocoumarin-free grades are outside.',
  },
  {
    id: 'bitter-orange-peel-oil-expressed', name: 'Bitter orange peel oil expressed',
    aliases: [
      'Citrus Aurantium Amara Peel Oil', 'Citrus Aurantium Amara Peel Oil Expressed',
      'Citrus Aurantium Amara Peel Oil, Expressed', 'Citrus Aurantium Amara Oil Expressed',
      'Citrus Aurantium Amara Fruit Oil', 'Bitter orange oil expressed', 'Bitter orange oil, expressed',
      'Bitter orange oil (expressed)', 'Expressed bitter orange oil', 'Bitter orange, expressed',
      'Bitter orange oil cold pressed', 'Bitter orange oil, cold pressed', 'Bitter orange oil cold-pressed',
      'Cold pressed bitter orange oil', 'Cold-pressed bitter orange oil', 'Bitter orange peel oil',
      'Bitter orange peel oil expressed', 'Bitter orange oil', 'Citrus Aurantium Amara (Bitter Orange) Peel Oil',
      'Citrus Aurantium Amara (Bitter Orange) Peel Oil Expressed', 'Orange oil bitter', 'Orange bitter oil expressed',
    ],
    cas: ['68916-04-1', '72968-50-4'], plantPart: ['peel'], process: ['expressed'], kind: 'phototoxic',
    sumGroup: 'phototoxic', rinseOffFree: true,
    limits: {
      1: 1.25, 2: 1.25, 3: 1.25, 4: 1.25, '5A': 1.25, '5B': 1.25, '5C': 1.25, '5D': 1.25, 6: 1.25,
      '7A': 'no-restriction', '7B': 1.25, 8: 1.25, 9: 'no-restriction', '10A': 'no-restriction', '10B': 1.25,
      '11A': 'no-restriction', '11B': 'unknown', 12: 'no-restriction',
    },
    edition: '49', unchangedIn50: true, source: 'ifra49', confidence: 'read-secondary',
    note: 'Applies when the furocoumarin content is unknown and to skin exposed to light; rinse-off is free. Concentrated (terpene-reduced) grades: lower in proportion. Distilled or furocoumarin-free grades are outside.',
  },
  {
    id: 'cumin-oil', name: 'Cumin oil',
    aliases: ['Cuminum Cyminum Seed Oil', 'Cuminum Cyminum Fruit Oil', 'Cumin seed oil'],
    cas: ['8014-13-9', '84775-51-9'], kind: 'phototoxic', sumGroup: 'phototoxic', rinseOffFree: true,
    limits: {
      1: 0.4, 2: 0.4, 3: 0.4, 4: 0.4, '5A': 0.4, '5B': 0.4, '5C': 0.4, '5D': 0.4, 6: 0.4,
      '7A': 'no-restriction', '7B': 0.4, 8: 0.4, 9: 'no-restriction', '10A': 'no-restriction', '10B': 0.4,
      '11A': 'no-restriction', '11B': 'unknown', 12: 'no-restriction',
    },
    edition: '49', source: 'ifra49', confidence: 'read-secondary',
    note: 'Applies when the furocoumarin content is unknown and to skin exposed to light; rinse-off is free. Concentrated (terpene-reduced) grades: lower in proportion. Furocoumarin-free grades are outside. EU cap: restricted-substances, cumin-oil.',
  },
  {
    id: 'grapefruit-oil-expressed', name: 'Grapefruit oil expressed',
    aliases: [
      'Citrus Paradisi Peel Oil', 'Citrus Paradisi Peel Oil Expressed', 'Citrus Paradisi Peel Oil, Expressed',
      'Citrus Paradisi Oil Expressed', 'Citrus Paradisi Fruit Oil', 'Citrus Grandis Peel Oil',
      'Citrus Grandis Peel Oil Expressed', 'Citrus Grandis Peel Oil, Expressed', 'Citrus Grandis Oil Expressed',
      'Citrus Grandis Fruit Oil', 'Citrus Paradisi (Grapefruit) Peel Oil',
      'Citrus Paradisi (Grapefruit) Peel Oil Expressed', 'Citrus Paradisi (Grapefruit) Fruit Oil',
      'Grapefruit oil expressed', 'Grapefruit oil, expressed', 'Grapefruit oil (expressed)',
      'Expressed grapefruit oil', 'Grapefruit, expressed', 'Grapefruit oil cold pressed',
      'Grapefruit oil, cold pressed', 'Grapefruit oil cold-pressed', 'Cold pressed grapefruit oil',
      'Cold-pressed grapefruit oil', 'Grapefruit peel oil', 'Grapefruit peel oil expressed', 'Grapefruit oil',
      'Citrus Grandis (Grapefruit) Peel Oil',
    ],
    cas: ['8016-20-4', '90045-43-5'], plantPart: ['peel'], process: ['expressed'], kind: 'phototoxic',
    sumGroup: 'phototoxic', rinseOffFree: true,
    limits: {
      1: 4, 2: 4, 3: 4, 4: 4, '5A': 4, '5B': 4, '5C': 4, '5D': 4, 6: 4, '7A': 'no-restriction', '7B': 4,
      8: 4, 9: 'no-restriction', '10A': 'no-restriction', '10B': 4, '11A': 'no-restriction', '11B': 4,
      12: 'no-restriction',
    },
    edition: '49', source: 'ifra49', confidence: 'read-secondary',
    note: 'Applies when the furocoumarin content is unknown and to skin exposed to light; rinse-off is free. Concentrated (terpene-reduced) grades: lower in proportion. Distilled or furocoumarin-free grades are outside.',
  },
  {
    id: 'lemon-oil-cold-pressed', name: 'Lemon oil cold pressed',
    aliases: [
      'Citrus Limon Peel Oil', 'Citrus Limon Peel Oil Expressed', 'Citrus Limon Peel Oil, Expressed',
      'Citrus Limon Oil Expressed', 'Citrus Limon Fruit Oil', 'Citrus Limonum Peel Oil',
      'Citrus Limonum Peel Oil Expressed', 'Citrus Limonum Peel Oil, Expressed', 'Citrus Limonum Oil Expressed',
      'Citrus Limonum Fruit Oil', 'Citrus Limon (Lemon) Peel Oil', 'Citrus Limon (Lemon) Peel Oil Expressed',
      'Citrus Limon (Lemon) Fruit Oil', 'Lemon oil expressed', 'Lemon oil, expressed', 'Lemon oil (expressed)',
      'Expressed lemon oil', 'Lemon, expressed', 'Lemon oil cold pressed', 'Lemon oil, cold pressed',
      'Lemon oil cold-pressed', 'Cold pressed lemon oil', 'Cold-pressed lemon oil', 'Lemon peel oil',
      'Lemon peel oil expressed', 'Lemon oil', 'Citrus Medica Limonum Peel Oil',
      'Citrus Medica Limonum (Lemon) Peel Oil',
    ],
    cas: ['8008-56-8', '84929-31-7'], plantPart: ['peel'], process: ['expressed'], kind: 'phototoxic',
    sumGroup: 'phototoxic', rinseOffFree: true,
    limits: {
      1: 2, 2: 2, 3: 2, 4: 2, '5A': 2, '5B': 2, '5C': 2, '5D': 2, 6: 2, '7A': 'no-restriction', '7B': 2,
      8: 2, 9: 'no-restriction', '10A': 'no-restriction', '10B': 2, '11A': 'no-restriction', '11B': 2,
      12: 'no-restriction',
    },
    edition: '49', source: 'ifra49', confidence: 'read-secondary',
    note: 'Applies when the furocoumarin content is unknown and to skin exposed to light; rinse-off is free. Concentrated (terpene-reduced) grades: lower in proportion. Distilled or furocoumarin-free grades are outside.',
  },
  {
    id: 'lime-oil-expressed', name: 'Lime oil expressed',
    aliases: [
      'Citrus Aurantifolia Peel Oil', 'Citrus Aurantifolia Peel Oil Expressed',
      'Citrus Aurantifolia Peel Oil, Expressed', 'Citrus Aurantifolia Oil Expressed', 'Citrus Aurantifolia Fruit Oil',
      'Citrus Aurantifolia (Lime) Peel Oil', 'Citrus Aurantifolia (Lime) Peel Oil Expressed',
      'Citrus Aurantifolia (Lime) Fruit Oil', 'Lime oil expressed', 'Lime oil, expressed', 'Lime oil (expressed)',
      'Expressed lime oil', 'Lime, expressed', 'Lime oil cold pressed', 'Lime oil, cold pressed',
      'Lime oil cold-pressed', 'Cold pressed lime oil', 'Cold-pressed lime oil', 'Lime peel oil',
      'Lime peel oil expressed', 'Lime oil', 'Citrus Aurantifolia Oil', 'Citrus Aurantifolia (Lime) Oil',
    ],
    cas: ['8008-26-2', '90063-52-8'], plantPart: ['peel'], process: ['expressed'], kind: 'phototoxic',
    sumGroup: 'phototoxic', rinseOffFree: true,
    limits: {
      1: 0.7, 2: 0.7, 3: 0.7, 4: 0.7, '5A': 0.7, '5B': 0.7, '5C': 0.7, '5D': 0.7, 6: 0.7,
      '7A': 'no-restriction', '7B': 0.7, 8: 0.7, 9: 'no-restriction', '10A': 'no-restriction', '10B': 0.7,
      '11A': 'no-restriction', '11B': 0.7, 12: 'no-restriction',
    },
    edition: '49', source: 'ifra49', confidence: 'read-secondary',
    note: 'Applies when the furocoumarin content is unknown and to skin exposed to light; rinse-off is free. Concentrated (terpene-reduced) grades: lower in proportion. Distilled or furocoumarin-free grades are outside.',
  },
  {
    id: 'angelica-root-oil', name: 'Angelica root oil', aliases: ['Angelica Archangelica Root Oil'],
    cas: ['8015-64-3', '84775-41-7'], plantPart: ['root'], kind: 'phototoxic', sumGroup: 'phototoxic',
    rinseOffFree: true,
    limits: {
      1: 0.8, 2: 0.8, 3: 0.8, 4: 0.8, '5A': 0.8, '5B': 0.8, '5C': 0.8, '5D': 0.8, 6: 0.8,
      '7A': 'no-restriction', '7B': 0.8, 8: 0.8, 9: 'no-restriction', '10A': 'no-restriction', '10B': 0.8,
      '11A': 'no-restriction', '11B': 0.8, 12: 'no-restriction',
    },
    edition: '49', unchangedIn50: true, unchangedIn51: true, source: 'ifra49', confidence: 'read-secondary',
    note: 'Applies when the furocoumarin content is unknown and to skin exposed to light; rinse-off is free. Concentrated (terpene-reduced) grades: lower in proportion. Furocoumarin-free grades are outside.',
  },
  {
    id: 'rue-oil', name: 'Rue oil', aliases: ['Ruta Graveolens Oil'], cas: ['8014-29-7', '84929-47-5'],
    kind: 'phototoxic', sumGroup: 'phototoxic', rinseOffFree: true,
    limits: {
      1: 0.15, 2: 0.15, 3: 0.15, 4: 0.15, '5A': 0.15, '5B': 0.15, '5C': 0.15, '5D': 0.15, 6: 0.15,
      '7A': 'no-restriction', '7B': 0.15, 8: 0.15, 9: 'no-restriction', '10A': 'no-restriction', '10B': 0.15,
      '11A': 'no-restriction', '11B': 0.15, 12: 'no-restriction',
    },
    edition: '49', source: 'ifra49', confidence: 'read-secondary',
    note: 'Applies when the furocoumarin content is unknown and to skin exposed to light; rinse-off is free. Concentrated (terpene-reduced) grades: lower in proportion. Furocoumarin-free grades are outside.',
  },
  {
    id: 'bergapten-total', name: 'Bergapten (5-methoxypsoralen), total from all sources',
    aliases: ['Bergapten', '5-Methoxypsoralen', '5-MOP'], cas: ['484-20-8'],
    foundIn: ['bergamot', 'lemon', 'lime', 'bitter orange', 'grapefruit', 'angelica root', 'cumin', 'rue'],
    kind: 'phototoxic', rinseOffFree: true,
    limits: {
      1: 0.0015, 2: 0.0015, 3: 0.0015, 4: 0.0015, '5A': 0.0015, '5B': 0.0015, '5C': 0.0015, '5D': 0.0015,
      6: 0.0015, '7A': 'no-restriction', '7B': 0.0015, 8: 0.0015, 9: 'no-restriction', '10A': 'no-restriction',
      '10B': 0.0015, '11A': 'no-restriction', '11B': 0.0015, 12: 'no-restriction',
    },
    edition: '49', source: 'ifra49', confidence: 'read-secondary',
    evidence: { 'limits.12': { source: 'ifra49', confidence: 'computed' } },
    note: '15 ppm in the finished leave-on product when the content is measured (same figure in cirpeel). Typical small contents named in the Standard: petitgrain mandarin 50 ppm, cold pressed tangerine 50 ppm, parsley leaf 20 ppm. A check of its own beside the sum over the oils. Every value agreed with a second text.',
  },
  {
    id: 'farnesol', name: 'Farnesol', cas: ['4602-84-0'], kind: 'restriction', limits: ALL_UNKNOWN,
    specification: { basis: 'raw-material', quantity: 'min', asWhat: 'farnesol isomers', value: 96, unit: 'percent', strict: false },
    source: 'mem', confidence: 'memory',
    note: 'A restriction Standard exists (category limits and a purity rule: at least 96 % farnesol isomers); its category values are not confirmed.',
  },
  {
    id: 'rose-ketones', name: 'Rose ketones (damascones, damascenone)',
    aliases: ['Rose Ketones', 'Alpha-Damascone', 'Damascenone', 'delta-Damascone', 'trans-beta-Damascone', 'Damascone'],
    cas: ['23696-85-7', '43052-87-5', '23726-91-2', '57378-68-4'], kind: 'restriction', limits: ALL_UNKNOWN,
    source: 'mem', confidence: 'memory',
    note: 'A group Standard exists; its values are not confirmed. The EU cap of 0.02 % applies in any case (restricted-substances: rose-ketones).',
  },
  {
    id: 'oakmoss-extracts', name: 'Oakmoss extracts', aliases: ['Evernia Prunastri Extract', 'Oakmoss absolute'],
    cas: ['9000-50-4', '90028-68-5'], kind: 'restriction', sumGroup: 'moss', limits: ALL_UNKNOWN, source: 'mem',
    confidence: 'memory',
    note: 'About 0.1 % in skin products, oakmoss and treemoss counted together, with purity rules for dehydroabietic acid and atranol (memory); category values not confirmed.',
  },
  {
    id: 'treemoss-extracts', name: 'Treemoss extracts', aliases: ['Evernia Furfuracea Extract', 'Treemoss absolute'],
    cas: ['90028-67-4'], kind: 'restriction', sumGroup: 'moss', limits: ALL_UNKNOWN, source: 'mem',
    confidence: 'memory', note: 'As oakmoss (memory); category values not confirmed.',
  },
  {
    id: 'peru-balsam-extracts-and-distillates', name: 'Peru balsam extracts and distillates',
    aliases: ['Myroxylon Pereirae Oil/Extract', 'Myroxylon Pereirae Oil', 'Peru balsam oil'], cas: ['8007-00-9'],
    process: ['extract', 'distilled'], kind: 'restriction', limits: ALL_UNKNOWN, source: 'mem',
    confidence: 'memory',
    note: 'Category values not confirmed. EU: extracts 0.4 %, crude balsam prohibited as fragrance (restricted-substances).',
  },
  {
    id: 'opoponax', name: 'Opoponax', aliases: ['Opopanax oil', 'Opoponax resinoid'], cas: ['8021-36-1'],
    kind: 'restriction', limits: ALL_UNKNOWN, source: 'mem', confidence: 'memory',
    note: '0.6 % (memory); category values not confirmed. EU cap: restricted-substances, opoponax.',
  },
  {
    id: 'styrax', name: 'Styrax', aliases: ['Styrax oil', 'Storax'], cas: ['8024-01-9'], kind: 'restriction',
    limits: ALL_UNKNOWN, source: 'mem', confidence: 'memory',
    note: '0.6 % (memory); category values not confirmed. EU cap: restricted-substances, styrax.',
  },
  {
    id: 'verbena-absolute', name: 'Verbena absolute (Lippia citriodora)',
    aliases: ['Lippia Citriodora Absolute', 'Verbena absolute'], cas: ['8024-12-2'], process: ['absolute'],
    kind: 'restriction', limits: ALL_UNKNOWN, source: 'mem', confidence: 'memory',
    note: '0.2 % (memory); category values not confirmed. EU: restricted-substances, verbena-absolute and verbena-oil.',
  },
  {
    id: 'tagetes-oil-and-absolute', name: 'Tagetes oil and absolute',
    aliases: ['Tagetes Minuta Flower Oil', 'Tagetes oil', 'Tagetes absolute'], cas: ['8016-84-0', '91770-75-1'],
    kind: 'restriction', limits: ALL_UNKNOWN, source: 'mem', confidence: 'memory',
    note: '0.01 % leave-on, 0.1 % rinse-off, alpha-terthienyl at most 0.35 %, not in sun products (memory); category values not confirmed. EU: restricted-substances.',
  },
  {
    id: 'cade-oil-rectified', name: 'Cade oil, rectified', aliases: ['Juniperus Oxycedrus Wood Oil', 'Cade oil'],
    cas: ['8013-10-3'], process: ['rectified'], kind: 'specification', limits: ALL_UNKNOWN, source: 'mem',
    confidence: 'memory',
    note: 'Crude cade oil not allowed; rectified only with limits for polycyclic aromatics (memory); category values not confirmed.',
  },
  {
    id: 'safrole', name: 'Safrole', cas: ['94-59-7'], kind: 'prohibition', limits: ALL_UNKNOWN, source: 'mem',
    confidence: 'memory',
    note: 'As such prohibited; brought in by oils at most 0.01 % (100 ppm) in the finished product (memory). Category states not confirmed. EU: restricted-substances, safrole-added and safrole-natural.',
  },
  {
    id: 'methyl-n-methylanthranilate', name: 'Methyl N-methylanthranilate',
    aliases: ['Methyl-N-methylanthranilate', 'Dimethyl anthranilate'], cas: ['85-91-6'], limits: ALL_UNKNOWN,
    source: 'mem', confidence: 'memory',
    note: 'Whether a Standard exists, and its values, are not confirmed. In mandarin. EU: restricted-substances.',
  },
  {
    id: 'menthol', name: 'Menthol', cas: ['89-78-1', '2216-51-5'], limits: ALL_UNKNOWN, source: 'mem',
    confidence: 'memory',
    note: 'No Standard remembered. Guidance of a German cosmetics committee (bfr, not law): 1 % leave-on, 4 % rinse-off.',
  },
  {
    id: 'camphor', name: 'Camphor', cas: ['76-22-2'], limits: ALL_UNKNOWN, source: 'mem', confidence: 'memory',
    note: 'No Standard remembered. Guidance of a German cosmetics committee (bfr, not law): 1 % leave-on, 5 % rinse-off.',
  },
  {
    id: 'tea-tree-oil', name: 'Tea tree oil', aliases: ['Melaleuca Alternifolia Leaf Oil'], cas: ['68647-73-4'],
    plantPart: ['leaf'], limits: ALL_UNKNOWN, source: 'mem', confidence: 'memory',
    note: 'No Standard remembered. See restricted-substances, tea-tree.',
  },
  {
    id: 'linalool', name: 'Linalool', aliases: ['Linalool'], cas: ['78-70-6'], kind: 'specification',
    limits: NO_RESTRICTION,
    specification: {
      basis: 'raw-material', quantity: 'max', asWhat: 'peroxide value', value: 20, unit: 'mmol-per-litre',
      strict: true,
    },
    source: 'mem', confidence: 'memory',
    note: 'Raw material, and oils rich in linalool: peroxide value below 20 mmol/L; add an antioxidant (0.1 % BHT or tocopherol) at production. A specification sets no category limits.',
  },
];

export const ifraCategories: readonly IfraCategoryRow[] = [
  {
    id: '1', covers: 'Lip products of all types; toys', makerProducts: 'lip balm', source: 'catpage',
    confidence: 'read',
  },
  {
    id: '2', covers: 'Axillae: deodorants and antiperspirants; body sprays/mists', makerProducts: 'cream deodorant',
    source: 'catpage', confidence: 'read',
  },
  {
    id: '3', covers: 'Face/body with fingertips: eye products, facial make-up, make-up remover, facial masks, wipes',
    makerProducts: 'clay mask, cleansing balm used as make-up remover', source: 'catpage', confidence: 'read',
  },
  {
    id: '4', covers: 'Fine fragrance, solid perfume, aftershave, fragrancing cream', makerProducts: 'solid perfume',
    source: 'catpage', confidence: 'read',
  },
  {
    id: '5A', covers: 'Body lotion: body creams, oils, lotions of all types; foot care; powders except baby',
    makerProducts: 'body butter, body balm, body oil, massage oil, foot balm', source: 'catpage', confidence: 'read',
  },
  {
    id: '5B',
    covers: 'Face moisturiser: facial creams, toners; since the 51st guidance also beard and moustache care',
    makerProducts: 'face balm, face oil, beard balm', source: 'catpage', confidence: 'read',
  },
  {
    id: '5C', covers: 'Hand cream: hand cream, cuticle and nail care, hand sanitiser',
    makerProducts: 'hand balm, cuticle balm', source: 'catpage', confidence: 'read',
  },
  {
    id: '5D', covers: 'Baby creams, baby oils, baby talc', makerProducts: 'baby balm', source: 'catpage',
    confidence: 'read',
  },
  { id: '6', covers: 'Oral and lip exposure: toothpaste, mouthwash', source: 'tgsc', confidence: 'read' },
  {
    id: '7A', covers: 'Rinse-off hair products with some hand contact',
    makerProducts: 'hair mask, chemical treatments', source: 'tgsc', confidence: 'read',
  },
  {
    id: '7B', covers: 'Leave-on hair products with some hand contact', makerProducts: 'hair balm, pomade',
    source: 'tgsc', confidence: 'read',
  },
  {
    id: '8', covers: 'Significant anogenital exposure: intimate wipes, baby wipes', source: 'tgsc',
    confidence: 'read',
  },
  {
    id: '9',
    covers: 'Body and hand, mainly rinse-off: bar and liquid soap, shampoo, rinse-off conditioner, face wash, shower gel, body scrub, shaving product, bath oil and salts; bath bombs since the 51st guidance',
    makerProducts: 'soap, scrub, shampoo bar, bath salts, bath bomb', source: 'mem', confidence: 'memory',
  },
  {
    id: '10A', covers: 'Household care with hand contact, no aerosol; reed diffuser liquids', source: 'tgsc',
    confidence: 'read',
  },
  {
    id: '10B', covers: 'Household aerosols and sprays, air freshener sprays', makerProducts: 'room spray',
    source: 'tgsc', confidence: 'read',
  },
  { id: '11A', covers: 'Skin contact through inert substrate, no UV', source: 'tgsc', confidence: 'read' },
  {
    id: '11B', covers: 'The same with possible UV exposure; pillow spray since the 51st guidance',
    makerProducts: 'pillow spray', source: 'catpage', confidence: 'read',
  },
  {
    id: '12', covers: 'No direct skin contact: candles, wax melts, plug-ins, incense',
    makerProducts: 'candle, wax melt', source: 'tgsc', confidence: 'read',
  },
];

export const ifraRules: readonly IfraRule[] = [
  {
    id: 'phototoxic-sum', name: 'phototoxic sum',
    text: 'Add up concentration / limit over all furocoumarin-containing oils in the product; the sum must not exceed 100 %.',
    source: 'ifra49', confidence: 'read',
  },
  {
    id: 'contributions-from-all-sources', name: 'contributions from all sources',
    text: 'A constituent limit counts every source in the formula: pure material plus the amount brought in by each natural oil (constituent share x oil share). An oil without its own Standard is limited only through its constituents.',
    source: 'ifra49-me', confidence: 'read',
  },
  {
    id: 'categories-1-and-6', name: 'categories 1 and 6',
    text: 'The material must in addition be acceptable as a flavouring.', source: 'ifra49-me', confidence: 'read',
  },
  {
    id: '51st-amendment-dates', name: '51st Amendment dates',
    text: 'Notified 30 June 2023; restrictions: new creations 30 March 2024, existing creations 30 October 2025; prohibition: 30 August 2023 / 30 July 2024.',
    source: 'ifra51news', confidence: 'read',
  },
  {
    id: '51st-amendment-coverage-gap', name: '51st Amendment coverage gap',
    text: "The 47 Standards first published in the 51st Amendment and the 11 revised ones are not in this table. Treat every row without unchangedIn51 as 'to be confirmed against the current Standard'.",
    source: 'ifra51news', confidence: 'read',
  },
  {
    id: 'qra2-scaling', name: 'QRA2 scaling',
    text: 'For a limit set by skin sensitisation alone the IFRA values are proportional to the NESIL. From geraniol (NESIL 11000 ug/cm2, no systemic cap): factor in % per ug/cm2 = limit/11000, e.g. Category 1 7.7e-5, 2 2.3e-5, 3 4.6e-4, 4 4.3e-4, 5A-5D 1.1e-4, 6 2.5e-4, 7 8.7e-4, 8 4.5e-5, 9 8.4e-4, 10 3.0e-3. Useful as a plausibility check only: systemic limits often bite first in 3, 5B-5D, 7, 8, 9, 10, 11.',
    source: 'geraniol22', confidence: 'computed',
  },
];

export const ifraSources: readonly ReferenceSource[] = [
  {
    id: 'ifra49',
    title: 'IFRA Standards, 49th Amendment (January 2020): machine extract of the individual public Standard PDFs, dated 17 October 2021',
    where: 'public code host, extract commit 3a6563a; primary text at ifrafragrance.org/standards-library',
    read: true,
    note: 'The extract was checked against four Standards seen elsewhere (citral, citronellal, methyl eugenol, thujone): every value agreed.',
  },
  {
    id: 'ifra49-me', title: 'IFRA Standard Methyl eugenol, Amendment 49', where: 'document-sharing copy 6075915',
    read: true,
  },
  {
    id: 'tgsc', title: 'Public compound pages listing the 49th Amendment limits (thujone; phototoxic oils)',
    where: 'public compound data pages rw1137041 and es1666931', read: true,
  },
  {
    id: 'ifra51news',
    title: 'IFRA: 51st Amendment notified 30 June 2023: 47 new restriction Standards, 1 prohibition, 11 revised, 263 Standards in all',
    where: 'ifrafragrance.org, safe use; dates from a public notice', read: true,
  },
  {
    id: 'catpage',
    title: 'IFRA category descriptions (Categories 1 to 5D) on a public page; additions of the 51st Amendment guidance',
    where: 'two public pages on the categories, one of 1 August 2022', read: true,
  },
  { id: 'mem', title: 'IFRA Standards and Guidance, from memory', where: 'ifrafragrance.org', read: false },
  {
    id: 'geraniol22',
    title: 'RIFM safety assessment of geraniol (Food Chem Toxicol 167:113341, 2022), abstract: NESIL 11000 ug/cm2',
    where: 'pubmed 35940332', read: true,
  },
];
