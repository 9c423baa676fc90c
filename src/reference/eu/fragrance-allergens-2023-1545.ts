/**
 * Fragrance allergens to be named on cosmetic labels: Annex III of Regulation (EC) No 1223/2009 after Regulation (EU)
 * 2023/1545 and its corrigendum of 2025, read from the Commission's ingredient database, with the list of 24 that
 * Great Britain kept. Thresholds in percent of the finished product.
 */
import type { CasTrap, FragranceAllergen, NamingRule } from '../fragrance-allergen.ts';
import type { ReferenceSource } from '../sourced-row.ts';

const THRESHOLDS = { thresholdLeaveOnPercent: 0.001, thresholdRinseOffPercent: 0.01 } as const;

/** The list of Directive 2003/15/EC. */
const FIRST_LIST = {
  ...THRESHOLDS, requiredForPlacingFrom: '2005-03-11', requiredForMakingAvailableFrom: '2005-03-11',
} as const;

/** Added by Regulation (EU) 2023/1545; no instrument of Great Britain adds them. */
const ADDED_IN_2023 = {
  ...THRESHOLDS, requiredForPlacingFrom: '2026-08-01', requiredForMakingAvailableFrom: '2028-08-01',
  gb: { listed: false, source: 'gb-notices', confidence: 'read' },
} as const;

export const fragranceAllergens: readonly FragranceAllergen[] = [
  {
    id: 'benzyl-alcohol', kind: 'single-substance', entry: 45, labelName: 'Benzyl Alcohol', sumMembers: false,
    match: { names: ['Benzyl Alcohol'], cas: ['100-51-6'] }, members: [{ name: 'Benzyl Alcohol', cas: ['100-51-6'] }],
    ...FIRST_LIST, gb: { listed: true, cas: ['100-51-6'], source: 'd-2008-42', confidence: 'read' },
    note: 'Labelling entry for solvent and fragrance use. As a preservative see Annex V entry 34 (1.0 %).',
    source: 'cosing3', confidence: 'read',
  },
  {
    id: '6-methyl-coumarin', kind: 'single-substance', entry: 46, labelName: '6-Methyl Coumarin', sumMembers: false,
    match: { names: ['6-Methyl Coumarin'], cas: ['92-48-8'] },
    members: [{ name: '6-Methyl Coumarin', cas: ['92-48-8'] }], ...ADDED_IN_2023,
    note: 'Entry is written for oral products only. Not a fragrance for body products.', source: 'cosing3',
    confidence: 'read',
  },
  {
    id: 'amyl-cinnamal', kind: 'single-substance', entry: 67, labelName: 'Amyl Cinnamal', sumMembers: false,
    match: { names: ['Amyl Cinnamal'], cas: ['122-40-7'] }, members: [{ name: 'Amyl Cinnamal', cas: ['122-40-7'] }],
    ...FIRST_LIST, gb: { listed: true, cas: ['122-40-7'], source: 'memory', confidence: 'memory' },
    source: 'cosing3', confidence: 'read',
  },
  {
    id: 'cinnamyl-alcohol', kind: 'single-substance', entry: 69, labelName: 'Cinnamyl Alcohol', sumMembers: false,
    match: { names: ['Cinnamyl Alcohol'], cas: ['104-54-1'] },
    members: [{ name: 'Cinnamyl Alcohol', cas: ['104-54-1'] }], ...FIRST_LIST,
    gb: { listed: true, cas: ['104-54-1'], source: 'memory', confidence: 'memory' }, source: 'cosing3',
    confidence: 'read',
  },
  {
    id: 'citral', kind: 'isomer-group', entry: 70, labelName: 'Citral', collectiveName: 'Citral', sumMembers: true,
    match: { names: ['Citral', 'Geranial', 'Neral'], cas: ['5392-40-5', '141-27-5', '106-26-3'] },
    members: [
      { name: 'Citral', cas: ['5392-40-5'] },
      { name: 'Geranial', cas: ['141-27-5'] },
      { name: 'Neral', cas: ['106-26-3'] },
    ],
    ...FIRST_LIST,
    newMembers: {
      cas: ['141-27-5', '106-26-3'], requiredForPlacingFrom: '2026-08-01',
      requiredForMakingAvailableFrom: '2028-08-01', source: 'eu-2023-1545', confidence: 'derived',
    },
    gb: { listed: true, cas: ['5392-40-5'], source: 'memory', confidence: 'memory' }, source: 'cosing3',
    confidence: 'read',
  },
  {
    id: 'eugenol', kind: 'single-substance', entry: 71, labelName: 'Eugenol', sumMembers: false,
    match: { names: ['Eugenol'], cas: ['97-53-0'] }, members: [{ name: 'Eugenol', cas: ['97-53-0'] }],
    ...FIRST_LIST, gb: { listed: true, cas: ['97-53-0'], source: 'memory', confidence: 'memory' },
    source: 'cosing3', confidence: 'read',
  },
  {
    id: 'hydroxycitronellal', kind: 'single-substance', entry: 72, labelName: 'Hydroxycitronellal', sumMembers: false,
    match: { names: ['Hydroxycitronellal'], cas: ['107-75-5'] },
    members: [{ name: 'Hydroxycitronellal', cas: ['107-75-5'] }], ...FIRST_LIST,
    gb: { listed: true, cas: ['107-75-5'], source: 'd-2008-42', confidence: 'read' }, source: 'cosing3',
    confidence: 'read',
  },
  {
    id: 'isoeugenol', kind: 'isomer-group', entry: 73, labelName: 'Isoeugenol', sumMembers: true,
    match: { names: ['Isoeugenol', 'trans-Isoeugenol', 'cis-Isoeugenol'], cas: ['97-54-1', '5932-68-3', '5912-86-7'] },
    members: [
      { name: 'Isoeugenol', cas: ['97-54-1'] },
      { name: 'trans-Isoeugenol', cas: ['5932-68-3'] },
      { name: 'cis-Isoeugenol', cas: ['5912-86-7'] },
    ],
    ...FIRST_LIST,
    newMembers: {
      cas: ['5932-68-3', '5912-86-7'], requiredForPlacingFrom: '2026-08-01',
      requiredForMakingAvailableFrom: '2028-08-01', source: 'eu-2023-1545', confidence: 'derived',
    },
    gb: { listed: true, cas: ['97-54-1'], source: 'd-2008-42', confidence: 'read' }, source: 'cosing3',
    confidence: 'read',
  },
  {
    id: 'amylcinnamyl-alcohol', kind: 'single-substance', entry: 74, labelName: 'Amylcinnamyl Alcohol',
    sumMembers: false, match: { names: ['Amylcinnamyl Alcohol'], cas: ['101-85-9'] },
    members: [{ name: 'Amylcinnamyl Alcohol', cas: ['101-85-9'] }], ...FIRST_LIST,
    gb: { listed: true, cas: ['101-85-9'], source: 'memory', confidence: 'memory' }, source: 'cosing3',
    confidence: 'read',
  },
  {
    id: 'benzyl-salicylate', kind: 'single-substance', entry: 75, labelName: 'Benzyl Salicylate', sumMembers: false,
    match: { names: ['Benzyl Salicylate'], cas: ['118-58-1'] },
    members: [{ name: 'Benzyl Salicylate', cas: ['118-58-1'] }], ...FIRST_LIST,
    gb: { listed: true, cas: ['118-58-1'], source: 'memory', confidence: 'memory' }, source: 'cosing3',
    confidence: 'read',
  },
  {
    id: 'cinnamal', kind: 'single-substance', entry: 76, labelName: 'Cinnamal', sumMembers: false,
    match: { names: ['Cinnamal'], cas: ['104-55-2'] }, members: [{ name: 'Cinnamal', cas: ['104-55-2'] }],
    ...FIRST_LIST, gb: { listed: true, cas: ['104-55-2'], source: 'memory', confidence: 'memory' },
    source: 'cosing3', confidence: 'read',
  },
  {
    id: 'coumarin', kind: 'single-substance', entry: 77, labelName: 'Coumarin', sumMembers: false,
    match: { names: ['Coumarin'], cas: ['91-64-5'] }, members: [{ name: 'Coumarin', cas: ['91-64-5'] }],
    ...FIRST_LIST, gb: { listed: true, cas: ['91-64-5'], source: 'memory', confidence: 'memory' },
    source: 'cosing3', confidence: 'read',
  },
  {
    id: 'geraniol', kind: 'single-substance', entry: 78, labelName: 'Geraniol', sumMembers: false,
    match: { names: ['Geraniol'], cas: ['106-24-1'] }, members: [{ name: 'Geraniol', cas: ['106-24-1'] }],
    ...FIRST_LIST, gb: { listed: true, cas: ['106-24-1'], source: 'memory', confidence: 'memory' },
    source: 'cosing3', confidence: 'read',
  },
  {
    id: 'anise-alcohol', kind: 'single-substance', entry: 80, labelName: 'Anise Alcohol', sumMembers: false,
    match: { names: ['Anise Alcohol'], cas: ['105-13-5'] }, members: [{ name: 'Anise Alcohol', cas: ['105-13-5'] }],
    ...FIRST_LIST, gb: { listed: true, cas: ['105-13-5'], source: 'memory', confidence: 'memory' },
    source: 'cosing3', confidence: 'read',
  },
  {
    id: 'benzyl-cinnamate', kind: 'single-substance', entry: 81, labelName: 'Benzyl Cinnamate', sumMembers: false,
    match: { names: ['Benzyl Cinnamate'], cas: ['103-41-3'] },
    members: [{ name: 'Benzyl Cinnamate', cas: ['103-41-3'] }], ...FIRST_LIST,
    gb: { listed: true, cas: ['103-41-3'], source: 'memory', confidence: 'memory' }, source: 'cosing3',
    confidence: 'read',
  },
  {
    id: 'farnesol', kind: 'single-substance', entry: 82, labelName: 'Farnesol', sumMembers: false,
    match: { names: ['Farnesol'], cas: ['4602-84-0'] }, members: [{ name: 'Farnesol', cas: ['4602-84-0'] }],
    ...FIRST_LIST, gb: { listed: true, cas: ['4602-84-0'], source: 'memory', confidence: 'memory' },
    source: 'cosing3', confidence: 'read',
  },
  {
    id: 'linalool', kind: 'single-substance', entry: 84, labelName: 'Linalool', sumMembers: false,
    match: { names: ['Linalool'], cas: ['78-70-6'] }, members: [{ name: 'Linalool', cas: ['78-70-6'] }],
    ...FIRST_LIST, gb: { listed: true, cas: ['78-70-6'], source: 'memory', confidence: 'memory' },
    source: 'cosing3', confidence: 'read',
  },
  {
    id: 'benzyl-benzoate', kind: 'single-substance', entry: 85, labelName: 'Benzyl Benzoate', sumMembers: false,
    match: { names: ['Benzyl Benzoate'], cas: ['120-51-4'] },
    members: [{ name: 'Benzyl Benzoate', cas: ['120-51-4'] }], ...FIRST_LIST,
    gb: { listed: true, cas: ['120-51-4'], source: 'memory', confidence: 'memory' }, source: 'cosing3',
    confidence: 'read',
  },
  {
    id: 'citronellol', kind: 'isomer-group', entry: 86, labelName: 'Citronellol', sumMembers: true,
    match: {
      names: ['Citronellol', '(R)-Citronellol', '(S)-Citronellol'],
      cas: ['106-22-9', '26489-01-0', '1117-61-9', '7540-51-4'],
    },
    members: [
      { name: 'Citronellol (racemic)', cas: ['106-22-9', '26489-01-0'] },
      { name: '(R)-Citronellol', cas: ['1117-61-9'] },
      { name: '(S)-Citronellol', cas: ['7540-51-4'] },
    ],
    ...FIRST_LIST,
    newMembers: {
      cas: ['26489-01-0', '1117-61-9', '7540-51-4'], requiredForPlacingFrom: '2026-08-01',
      requiredForMakingAvailableFrom: '2028-08-01', source: 'eu-2023-1545', confidence: 'derived',
    },
    gb: { listed: true, cas: ['106-22-9'], source: 'memory', confidence: 'memory' }, source: 'cosing3',
    confidence: 'read',
  },
  {
    id: 'hexyl-cinnamal', kind: 'single-substance', entry: 87, labelName: 'Hexyl Cinnamal', sumMembers: false,
    match: { names: ['Hexyl Cinnamal'], cas: ['101-86-0'] }, members: [{ name: 'Hexyl Cinnamal', cas: ['101-86-0'] }],
    ...FIRST_LIST, gb: { listed: true, cas: ['101-86-0'], source: 'memory', confidence: 'memory' },
    source: 'cosing3', confidence: 'read',
  },
  {
    id: 'limonene', kind: 'isomer-group', entry: 88, labelName: 'Limonene', sumMembers: true,
    match: {
      names: ['Limonene', 'dl-Limonene', 'Dipentene', 'd-Limonene', 'l-Limonene'],
      cas: ['138-86-3', '7705-14-8', '5989-27-5', '5989-54-8'],
    },
    members: [
      { name: 'dl-Limonene (Dipentene)', cas: ['138-86-3', '7705-14-8'] },
      { name: 'd-Limonene', cas: ['5989-27-5'] },
      { name: 'l-Limonene', cas: ['5989-54-8'] },
    ],
    ...FIRST_LIST,
    newMembers: {
      cas: ['138-86-3', '7705-14-8', '5989-54-8'], requiredForPlacingFrom: '2026-08-01',
      requiredForMakingAvailableFrom: '2028-08-01', source: 'eu-2023-1545', confidence: 'derived',
    },
    gb: { listed: true, cas: ['5989-27-5'], source: 'd-2008-42', confidence: 'read' }, source: 'cosing3',
    confidence: 'read',
  },
  {
    id: 'methyl-2-octynoate', kind: 'single-substance', entry: 89, labelName: 'Methyl 2-Octynoate', sumMembers: false,
    match: { names: ['Methyl 2-Octynoate'], cas: ['111-12-6'] },
    members: [{ name: 'Methyl 2-Octynoate', cas: ['111-12-6'] }], ...FIRST_LIST,
    gb: { listed: true, cas: ['111-12-6'], source: 'd-2008-42', confidence: 'read' },
    note: 'With methyl octine carbonate (111-80-8) the two together at most 0.01 %, of which methyl octine carbonate at most 0.002 %.',
    source: 'cosing3', confidence: 'read',
  },
  {
    id: 'alpha-isomethyl-ionone', kind: 'single-substance', entry: 90, labelName: 'Alpha-Isomethyl Ionone',
    sumMembers: false, match: { names: ['Alpha-Isomethyl Ionone'], cas: ['127-51-5'] },
    members: [{ name: 'Alpha-Isomethyl Ionone', cas: ['127-51-5'] }], ...FIRST_LIST,
    gb: { listed: true, cas: ['127-51-5'], source: 'memory', confidence: 'memory' }, source: 'cosing3',
    confidence: 'read',
  },
  {
    id: 'evernia-prunastri-extract', kind: 'natural-extract', entry: 91, labelName: 'Evernia Prunastri Extract',
    sumMembers: false, match: { names: ['Evernia Prunastri Extract'], cas: ['90028-68-5'] },
    members: [{ name: 'Evernia Prunastri Extract (oak moss)', cas: ['90028-68-5'] }], ...FIRST_LIST,
    gb: { listed: true, cas: ['90028-68-5'], source: 'memory', confidence: 'memory' },
    note: 'Atranol and chloroatranol in it are prohibited (Annex II 1381, 1382).', source: 'cosing3',
    confidence: 'read',
  },
  {
    id: 'evernia-furfuracea-extract', kind: 'natural-extract', entry: 92, labelName: 'Evernia Furfuracea Extract',
    sumMembers: false, match: { names: ['Evernia Furfuracea Extract'], cas: ['90028-67-4'] },
    members: [{ name: 'Evernia Furfuracea Extract (tree moss)', cas: ['90028-67-4'] }], ...FIRST_LIST,
    gb: { listed: true, cas: ['90028-67-4'], source: 'memory', confidence: 'memory' },
    note: 'Atranol and chloroatranol in it are prohibited (Annex II 1381, 1382).', source: 'cosing3',
    confidence: 'read',
  },
  {
    id: 'pinus-mugo', kind: 'natural-extract', entry: 109, labelName: 'Pinus Mugo', collectiveName: 'Pinus Mugo',
    sumMembers: true,
    match: {
      names: ['Pinus Mugo', 'Pinus Mugo Leaf Oil', 'Pinus Mugo Twig Leaf Extract', 'Pinus Mugo Twig Oil'],
      plantPart: ['leaf', 'wood'], cas: ['90082-72-7'],
    },
    members: [
      { name: 'Pinus Mugo Leaf Oil', cas: ['90082-72-7'] },
      { name: 'Pinus Mugo Twig Leaf Extract', cas: ['90082-72-7'] },
      { name: 'Pinus Mugo Twig Oil', cas: ['90082-72-7'] },
    ],
    ...ADDED_IN_2023, source: 'cosing3', confidence: 'read',
  },
  {
    id: 'pinus-pumila', kind: 'natural-extract', entry: 114, labelName: 'Pinus Pumila',
    collectiveName: 'Pinus Pumila', sumMembers: true,
    match: {
      names: ['Pinus Pumila', 'Pinus Pumila Needle Extract', 'Pinus Pumila Twig Leaf Extract', 'Pinus Pumila Twig Leaf Oil'],
      plantPart: ['leaf', 'wood'], cas: ['97676-05-6'],
    },
    members: [
      { name: 'Pinus Pumila Needle Extract', cas: ['97676-05-6'] },
      { name: 'Pinus Pumila Twig Leaf Extract', cas: ['97676-05-6'] },
      { name: 'Pinus Pumila Twig Leaf Oil', cas: ['97676-05-6'] },
    ],
    ...ADDED_IN_2023, source: 'cosing3', confidence: 'read',
  },
  {
    id: 'cedrus-atlantica-oil-extract', kind: 'natural-extract', entry: 122,
    labelName: 'Cedrus Atlantica Oil/Extract', collectiveName: 'Cedrus Atlantica Oil/Extract', sumMembers: true,
    match: {
      names: [
        'Cedrus Atlantica Oil/Extract', 'Cedrus Atlantica Bark Extract', 'Cedrus Atlantica Bark Oil',
        'Cedrus Atlantica Bark Water', 'Cedrus Atlantica Leaf Extract', 'Cedrus Atlantica Wood Extract',
        'Cedrus Atlantica Wood Oil',
      ],
      plantPart: ['bark', 'leaf', 'wood'], cas: ['92201-55-3', '8023-85-6'],
    },
    members: [
      { name: 'Cedrus Atlantica Bark Extract', cas: ['92201-55-3', '8023-85-6'] },
      { name: 'Cedrus Atlantica Bark Oil', cas: ['92201-55-3', '8023-85-6'] },
      { name: 'Cedrus Atlantica Bark Water', cas: ['92201-55-3', '8023-85-6'] },
      { name: 'Cedrus Atlantica Leaf Extract', cas: ['92201-55-3', '8023-85-6'] },
      { name: 'Cedrus Atlantica Wood Extract', cas: ['92201-55-3', '8023-85-6'] },
      { name: 'Cedrus Atlantica Wood Oil', cas: ['92201-55-3', '8023-85-6'] },
    ],
    ...ADDED_IN_2023, source: 'cosing3', confidence: 'read',
  },
  {
    id: 'turpentine', kind: 'natural-extract', entry: 124, labelName: 'Turpentine', sumMembers: true,
    match: {
      names: ['Turpentine', 'Turpentine gum', 'Turpentine oil and rectified oil', 'Turpentine, steam distilled'],
      cas: ['9005-90-7', '8006-64-2', '8052-14-0'],
    },
    members: [
      { name: 'Turpentine gum (Pinus spp.)', cas: ['9005-90-7'] },
      { name: 'Turpentine oil and rectified oil', cas: ['8006-64-2'] },
      { name: 'Turpentine, steam distilled (Pinus spp.)', cas: ['8052-14-0'] },
    ],
    ...ADDED_IN_2023, source: 'cosing3', confidence: 'read',
  },
  {
    id: 'alpha-terpinene', kind: 'single-substance', entry: 131, labelName: 'Alpha-Terpinene', sumMembers: false,
    match: { names: ['Alpha-Terpinene'], cas: ['99-86-5'] }, members: [{ name: 'Alpha-Terpinene', cas: ['99-86-5'] }],
    ...ADDED_IN_2023, source: 'cosing3', confidence: 'read',
  },
  {
    id: 'terpinolene', kind: 'single-substance', entry: 133, labelName: 'Terpinolene', sumMembers: false,
    match: { names: ['Terpinolene'], cas: ['586-62-9'] }, members: [{ name: 'Terpinolene', cas: ['586-62-9'] }],
    ...ADDED_IN_2023, source: 'cosing3', confidence: 'read',
  },
  {
    id: 'myroxylon-pereirae-oil-extract', kind: 'natural-extract', entry: 154,
    labelName: 'Myroxylon Pereirae Oil/Extract', collectiveName: 'Myroxylon Pereirae Oil/Extract', sumMembers: true,
    match: {
      names: [
        'Myroxylon Pereirae Oil/Extract', 'Myroxylon Balsamum Pereirae Balsam Extract',
        'Myroxylon Balsamum Pereirae Balsam Oil', 'Myroxylon Pereirae Oil', 'Myroxylon Pereirae Resin Extract',
        'Myroxylon Pereirae Resin',
      ],
      plantPart: ['resin'], cas: ['8007-00-9'],
    },
    members: [
      { name: 'Myroxylon Balsamum Pereirae Balsam Extract', cas: ['8007-00-9'] },
      { name: 'Myroxylon Balsamum Pereirae Balsam Oil', cas: ['8007-00-9'] },
      { name: 'Myroxylon Pereirae Oil', cas: ['8007-00-9'] },
      { name: 'Myroxylon Pereirae Resin Extract', cas: ['8007-00-9'] },
      { name: 'Myroxylon Pereirae Resin', cas: ['8007-00-9'] },
    ],
    ...ADDED_IN_2023,
    note: 'Extracts and distillates only. The crude exudation (Peru balsam, same CAS) is prohibited as a fragrance ingredient: Annex II 1136.',
    source: 'cosing3', confidence: 'read',
  },
  {
    id: 'rose-ketones', kind: 'group', entry: 157, labelName: 'Rose Ketones', collectiveName: 'Rose Ketones',
    sumMembers: true,
    match: {
      names: [
        'Rose Ketones', 'Alpha-Damascone', 'cis-Rose Ketone 1', 'trans-Rose Ketone 1', 'Rose Ketone 4', 'Damascenone',
        'Rose Ketone 3', 'delta-Damascone', 'trans-Rose Ketone 3', 'cis-Rose Ketone 2', 'cis-beta-Damascone',
        'trans-Rose Ketone 2', 'trans-beta-Damascone',
      ],
      cas: [
        '43052-87-5', '23726-94-5', '24720-09-0', '23696-85-7', '57378-68-4', '71048-82-3', '23726-92-3',
        '23726-91-2',
      ],
    },
    members: [
      { name: 'Alpha-Damascone', cas: ['43052-87-5'] },
      { name: 'cis-Rose Ketone 1', cas: ['23726-94-5'] },
      { name: 'trans-Rose Ketone 1', cas: ['24720-09-0'] },
      { name: 'Rose Ketone 4 (Damascenone)', cas: ['23696-85-7'] },
      { name: 'Rose Ketone 3 (delta-Damascone)', cas: ['57378-68-4'] },
      { name: 'trans-Rose Ketone 3', cas: ['71048-82-3'] },
      { name: 'cis-Rose Ketone 2 (cis-beta-Damascone)', cas: ['23726-92-3'] },
      { name: 'trans-Rose Ketone 2 (trans-beta-Damascone)', cas: ['23726-91-2'] },
    ],
    ...ADDED_IN_2023,
    note: "2023 text printed 'Rose ketone 4 (Damascone)'; the 2025 corrigendum corrects it to Damascenone. The 0.02 % cap is for the sum of the rose ketones (footnote 16; sum rule from memory).",
    source: 'cosing3', alsoSources: ['corrigendum-2025'], confidence: 'read',
  },
  {
    id: '3-propylidenephthalide', kind: 'single-substance', entry: 175, labelName: '3-Propylidenephthalide',
    sumMembers: false, match: { names: ['3-Propylidenephthalide'], cas: ['17369-59-4'] },
    members: [{ name: '3-Propylidenephthalide', cas: ['17369-59-4'] }], ...ADDED_IN_2023, source: 'cosing3',
    confidence: 'read',
  },
  {
    id: 'lippia-citriodora-absolute', kind: 'natural-extract', entry: 196, labelName: 'Lippia citriodora absolute',
    sumMembers: true,
    match: {
      names: ['Lippia citriodora absolute', 'verbena absolute'], process: ['absolute'],
      cas: ['8024-12-2', '85116-63-8'],
    },
    members: [{ name: 'Lippia citriodora absolute (verbena absolute)', cas: ['8024-12-2', '85116-63-8'] }],
    ...ADDED_IN_2023,
    note: 'Verbena essential oil and other derivatives are prohibited as fragrance ingredients: Annex II 450 (same CAS 8024-12-2).',
    source: 'cosing3', confidence: 'read',
  },
  {
    id: 'methyl-salicylate', kind: 'single-substance', entry: 324, labelName: 'Methyl Salicylate', sumMembers: false,
    match: { names: ['Methyl Salicylate'], cas: ['119-36-8'] },
    members: [{ name: 'Methyl Salicylate', cas: ['119-36-8'] }], ...ADDED_IN_2023,
    note: 'EU: not in products for children under 6 years except toothpaste. Great Britain has its own entry 324 with different limits and without the allergen labelling duty (see restricted-substances).',
    source: 'cosing3', confidence: 'read',
  },
  {
    id: 'acetyl-cedrene', kind: 'single-substance', entry: 327, labelName: 'Acetyl Cedrene', sumMembers: false,
    match: { names: ['Acetyl Cedrene'], cas: ['32388-55-9'] },
    members: [{ name: 'Acetyl Cedrene', cas: ['32388-55-9'] }], ...ADDED_IN_2023, source: 'cosing3',
    confidence: 'read',
  },
  {
    id: 'amyl-salicylate', kind: 'single-substance', entry: 328, labelName: 'Amyl Salicylate', sumMembers: false,
    match: { names: ['Amyl Salicylate'], cas: ['2050-08-0'] },
    members: [{ name: 'Amyl Salicylate', cas: ['2050-08-0'] }], ...ADDED_IN_2023, source: 'cosing3',
    confidence: 'read',
  },
  {
    id: 'anethole', kind: 'isomer-group', entry: 329, labelName: 'Anethole', sumMembers: true,
    match: { names: ['Anethole', 'trans-Anethole'], cas: ['104-46-1', '4180-23-8'] },
    members: [{ name: 'Anethole', cas: ['104-46-1'] }, { name: 'trans-Anethole', cas: ['4180-23-8'] }],
    ...ADDED_IN_2023, source: 'cosing3', confidence: 'read',
  },
  {
    id: 'benzaldehyde', kind: 'single-substance', entry: 330, labelName: 'Benzaldehyde', sumMembers: false,
    match: { names: ['Benzaldehyde'], cas: ['100-52-7'] }, members: [{ name: 'Benzaldehyde', cas: ['100-52-7'] }],
    ...ADDED_IN_2023, source: 'cosing3', confidence: 'read',
  },
  {
    id: 'camphor', kind: 'isomer-group', entry: 331, labelName: 'Camphor', sumMembers: true,
    match: {
      names: ['Camphor', 'dl-Camphor', 'd-Camphor', 'l-Camphor'],
      cas: ['76-22-2', '21368-68-3', '464-49-3', '464-48-2'],
    },
    members: [
      { name: 'Camphor', cas: ['76-22-2'] },
      { name: 'dl-Camphor', cas: ['21368-68-3'] },
      { name: 'd-Camphor', cas: ['464-49-3'] },
      { name: 'l-Camphor', cas: ['464-48-2'] },
    ],
    ...ADDED_IN_2023, note: 'No maximum concentration in the EU entry, only labelling.', source: 'cosing3',
    confidence: 'read',
  },
  {
    id: 'beta-caryophyllene', kind: 'single-substance', entry: 332, labelName: 'Beta-Caryophyllene',
    sumMembers: false, match: { names: ['Beta-Caryophyllene'], cas: ['87-44-5'] },
    members: [{ name: 'Beta-Caryophyllene', cas: ['87-44-5'] }], ...ADDED_IN_2023, source: 'cosing3',
    confidence: 'read',
  },
  {
    id: 'carvone', kind: 'isomer-group', entry: 333, labelName: 'Carvone', sumMembers: true,
    match: { names: ['Carvone', '(R)-(-)-Carvone', '(S)-(+)-Carvone'], cas: ['99-49-0', '6485-40-1', '2244-16-8'] },
    members: [
      { name: 'Carvone', cas: ['99-49-0'] },
      { name: '(R)-(-)-Carvone', cas: ['6485-40-1'] },
      { name: '(S)-(+)-Carvone', cas: ['2244-16-8'] },
    ],
    ...ADDED_IN_2023, source: 'cosing3', confidence: 'read',
  },
  {
    id: 'dimethyl-phenethyl-acetate', kind: 'single-substance', entry: 334, labelName: 'Dimethyl Phenethyl Acetate',
    sumMembers: false, match: { names: ['Dimethyl Phenethyl Acetate'], cas: ['151-05-3'] },
    members: [{ name: 'Dimethyl Phenethyl Acetate', cas: ['151-05-3'] }], ...ADDED_IN_2023, source: 'cosing3',
    confidence: 'read',
  },
  {
    id: 'hexadecanolactone', kind: 'single-substance', entry: 335, labelName: 'Hexadecanolactone', sumMembers: false,
    match: { names: ['Hexadecanolactone'], cas: ['109-29-5'] },
    members: [{ name: 'Hexadecanolactone', cas: ['109-29-5'] }], ...ADDED_IN_2023, source: 'cosing3',
    confidence: 'read',
  },
  {
    id: 'hexamethylindanopyran', kind: 'single-substance', entry: 336, labelName: 'Hexamethylindanopyran',
    sumMembers: false, match: { names: ['Hexamethylindanopyran'], cas: ['1222-05-5'] },
    members: [{ name: 'Hexamethylindanopyran', cas: ['1222-05-5'] }], ...ADDED_IN_2023, source: 'cosing3',
    confidence: 'read',
  },
  {
    id: 'linalyl-acetate', kind: 'single-substance', entry: 337, labelName: 'Linalyl Acetate', sumMembers: false,
    match: { names: ['Linalyl Acetate'], cas: ['115-95-7'] },
    members: [{ name: 'Linalyl Acetate', cas: ['115-95-7'] }], ...ADDED_IN_2023, source: 'cosing3',
    confidence: 'read',
  },
  {
    id: 'menthol', kind: 'isomer-group', entry: 338, labelName: 'Menthol', sumMembers: true,
    match: {
      names: ['Menthol', 'dl-Menthol', 'l-Menthol', 'd-Menthol'],
      cas: ['89-78-1', '1490-04-6', '2216-51-5', '15356-60-2'],
    },
    members: [
      { name: 'dl-Menthol', cas: ['89-78-1'] },
      { name: 'Menthol', cas: ['1490-04-6'] },
      { name: 'l-Menthol', cas: ['2216-51-5'] },
      { name: 'd-Menthol', cas: ['15356-60-2'] },
    ],
    ...ADDED_IN_2023, source: 'cosing3', confidence: 'read',
  },
  {
    id: 'trimethylcyclopentenyl-methylisopentenol', kind: 'single-substance', entry: 339,
    labelName: 'Trimethylcyclopentenyl Methylisopentenol', sumMembers: false,
    match: { names: ['Trimethylcyclopentenyl Methylisopentenol'], cas: ['67801-20-1'] },
    members: [{ name: 'Trimethylcyclopentenyl Methylisopentenol', cas: ['67801-20-1'] }], ...ADDED_IN_2023,
    source: 'cosing3', confidence: 'read',
  },
  {
    id: 'salicylaldehyde', kind: 'single-substance', entry: 340, labelName: 'Salicylaldehyde', sumMembers: false,
    match: { names: ['Salicylaldehyde'], cas: ['90-02-8'] }, members: [{ name: 'Salicylaldehyde', cas: ['90-02-8'] }],
    ...ADDED_IN_2023, source: 'cosing3', confidence: 'read',
  },
  {
    id: 'santalol', kind: 'isomer-group', entry: 341, labelName: 'Santalol', sumMembers: true,
    match: { names: ['Santalol', 'alpha-Santalol', 'beta-Santalol'], cas: ['11031-45-1', '115-71-9', '77-42-9'] },
    members: [
      { name: 'Santalol', cas: ['11031-45-1'] },
      { name: 'alpha-Santalol', cas: ['115-71-9'] },
      { name: 'beta-Santalol', cas: ['77-42-9'] },
    ],
    ...ADDED_IN_2023, source: 'cosing3', confidence: 'read',
  },
  {
    id: 'sclareol', kind: 'single-substance', entry: 342, labelName: 'Sclareol', sumMembers: false,
    match: { names: ['Sclareol'], cas: ['515-03-7'] }, members: [{ name: 'Sclareol', cas: ['515-03-7'] }],
    ...ADDED_IN_2023, source: 'cosing3', confidence: 'read',
  },
  {
    id: 'terpineol', kind: 'isomer-group', entry: 343, labelName: 'Terpineol', sumMembers: true,
    match: {
      names: ['Terpineol', 'alpha-Terpineol', 'beta-Terpineol', 'gamma-Terpineol'],
      cas: ['8000-41-7', '98-55-5', '138-87-4', '586-81-2'],
    },
    members: [
      { name: 'Terpineol (mixture)', cas: ['8000-41-7'] },
      { name: 'alpha-Terpineol', cas: ['98-55-5'] },
      { name: 'beta-Terpineol', cas: ['138-87-4'] },
      { name: 'gamma-Terpineol', cas: ['586-81-2'] },
    ],
    ...ADDED_IN_2023, source: 'cosing3', confidence: 'read',
  },
  {
    id: 'tetramethyl-acetyloctahydronaphthalenes', kind: 'isomer-group', entry: 344,
    labelName: 'Tetramethyl Acetyloctahydronaphthalenes', sumMembers: true,
    match: {
      names: ['Tetramethyl Acetyloctahydronaphthalenes'],
      cas: ['54464-57-2', '54464-59-4', '68155-66-8', '68155-67-9'],
    },
    members: [
      {
        name: 'Tetramethyl Acetyloctahydronaphthalenes',
        cas: ['54464-57-2', '54464-59-4', '68155-66-8', '68155-67-9'],
      },
    ],
    ...ADDED_IN_2023, source: 'cosing3', confidence: 'read',
  },
  {
    id: 'trimethylbenzenepropanol', kind: 'single-substance', entry: 345, labelName: 'Trimethylbenzenepropanol',
    sumMembers: false, match: { names: ['Trimethylbenzenepropanol'], cas: ['103694-68-4'] },
    members: [{ name: 'Trimethylbenzenepropanol', cas: ['103694-68-4'] }], ...ADDED_IN_2023, source: 'cosing3',
    confidence: 'read',
  },
  {
    id: 'vanillin', kind: 'single-substance', entry: 346, labelName: 'Vanillin', sumMembers: false,
    match: { names: ['Vanillin'], cas: ['121-33-5'] }, members: [{ name: 'Vanillin', cas: ['121-33-5'] }],
    ...ADDED_IN_2023, source: 'cosing3', confidence: 'read',
  },
  {
    id: 'cananga-odorata-oil-extract', kind: 'natural-extract', entry: 347, labelName: 'Cananga Odorata Oil/Extract',
    collectiveName: 'Cananga Odorata Oil/Extract', sumMembers: true,
    match: {
      names: ['Cananga Odorata Oil/Extract', 'Cananga Odorata Flower Extract', 'Cananga Odorata Flower Oil'],
      plantPart: ['flower'], cas: ['83863-30-3', '8006-81-3', '68606-83-7', '93686-30-7'],
    },
    members: [
      { name: 'Cananga Odorata Flower Extract', cas: ['83863-30-3', '8006-81-3', '68606-83-7', '93686-30-7'] },
      { name: 'Cananga Odorata Flower Oil', cas: ['83863-30-3', '8006-81-3', '68606-83-7', '93686-30-7'] },
    ],
    ...ADDED_IN_2023, source: 'cosing3', confidence: 'read',
  },
  {
    id: 'cinnamomum-cassia-leaf-oil', kind: 'natural-extract', entry: 348, labelName: 'Cinnamomum Cassia Leaf Oil',
    sumMembers: true,
    match: { names: ['Cinnamomum Cassia Leaf Oil'], plantPart: ['leaf'], cas: ['8007-80-5', '84961-46-6'] },
    members: [{ name: 'Cinnamomum Cassia Leaf Oil', cas: ['8007-80-5', '84961-46-6'] }], ...ADDED_IN_2023,
    source: 'cosing3', confidence: 'read',
  },
  {
    id: 'cinnamomum-zeylanicum-bark-oil', kind: 'natural-extract', entry: 349,
    labelName: 'Cinnamomum Zeylanicum Bark Oil', sumMembers: true,
    match: { names: ['Cinnamomum Zeylanicum Bark Oil'], plantPart: ['bark'], cas: ['8015-91-6', '84649-98-9'] },
    members: [{ name: 'Cinnamomum Zeylanicum Bark Oil', cas: ['8015-91-6', '84649-98-9'] }], ...ADDED_IN_2023,
    note: 'Bark oil only. Leaf oil is not named; its eugenol is.', source: 'cosing3', confidence: 'read',
  },
  {
    id: 'citrus-aurantium-flower-oil', kind: 'natural-extract', entry: 350, labelName: 'Citrus Aurantium Flower Oil',
    collectiveName: 'Citrus Aurantium Flower Oil', sumMembers: true,
    match: {
      names: ['Citrus Aurantium Flower Oil', 'Citrus Aurantium Amara Flower Oil', 'Citrus Aurantium Dulcis Flower Oil'],
      plantPart: ['flower'], cas: ['72968-50-4', '8028-48-6', '8016-38-4'],
    },
    members: [
      { name: 'Citrus Aurantium Amara Flower Oil', cas: ['72968-50-4'] },
      { name: 'Citrus Aurantium Dulcis Flower Oil', cas: ['8028-48-6', '8016-38-4'] },
    ],
    ...ADDED_IN_2023, source: 'cosing3', confidence: 'read',
  },
  {
    id: 'citrus-aurantium-peel-oil', kind: 'natural-extract', entry: 351, labelName: 'Citrus Aurantium Peel Oil',
    collectiveName: 'Citrus Aurantium Peel Oil', sumMembers: true,
    match: {
      names: [
        'Citrus Aurantium Peel Oil', 'Citrus Aurantium Amara Peel Oil', 'Citrus Aurantium Dulcis Peel Oil',
        'Citrus Sinensis Peel Oil',
      ],
      plantPart: ['peel'], cas: ['68916-04-1', '72968-50-4', '97766-30-8', '8028-48-6', '8008-57-9'],
    },
    members: [
      { name: 'Citrus Aurantium Amara Peel Oil', cas: ['68916-04-1', '72968-50-4'] },
      { name: 'Citrus Aurantium Dulcis Peel Oil', cas: ['97766-30-8', '8028-48-6'] },
      { name: 'Citrus Sinensis Peel Oil', cas: ['8008-57-9'] },
    ],
    ...ADDED_IN_2023, source: 'cosing3', confidence: 'read',
  },
  {
    id: 'citrus-aurantium-bergamia-peel-oil', kind: 'natural-extract', entry: 352,
    labelName: 'Citrus Aurantium Bergamia Peel Oil', sumMembers: true,
    match: {
      names: ['Citrus Aurantium Bergamia Peel Oil'], plantPart: ['peel'],
      cas: ['8007-75-8', '89957-91-5', '68648-33-9', '85049-52-1'],
    },
    members: [{ name: 'Citrus Aurantium Bergamia Peel Oil', cas: ['8007-75-8', '89957-91-5', '68648-33-9', '85049-52-1'] }],
    ...ADDED_IN_2023, source: 'cosing3', confidence: 'read',
  },
  {
    id: 'citrus-limon-peel-oil', kind: 'natural-extract', entry: 353, labelName: 'Citrus Limon Peel Oil',
    sumMembers: true,
    match: { names: ['Citrus Limon Peel Oil'], plantPart: ['peel'], cas: ['84929-31-7', '8008-56-8'] },
    members: [{ name: 'Citrus Limon Peel Oil', cas: ['84929-31-7', '8008-56-8'] }], ...ADDED_IN_2023,
    note: 'The database export prints the CAS numbers in the EC column by mistake; checked against the ECHA list (EC 284-515-8).',
    source: 'cosing3', confidence: 'read',
  },
  {
    id: 'lemongrass-oil', kind: 'natural-extract', entry: 354, labelName: 'Lemongrass Oil',
    collectiveName: 'Lemongrass Oil', sumMembers: true,
    match: {
      names: ['Lemongrass Oil', 'Cymbopogon Schoenanthus Oil', 'Cymbopogon Flexuosus Oil', 'Cymbopogon Citratus Leaf Oil'],
      cas: ['8007-02-1', '89998-16-3', '91844-92-7'],
    },
    members: [
      { name: 'Cymbopogon Schoenanthus Oil', cas: ['8007-02-1', '89998-16-3'] },
      { name: 'Cymbopogon Flexuosus Oil', cas: ['91844-92-7'] },
      { name: 'Cymbopogon Citratus Leaf Oil', cas: ['8007-02-1', '91844-92-7'] },
    ],
    ...ADDED_IN_2023, source: 'cosing3', confidence: 'read',
  },
  {
    id: 'eucalyptus-globulus-oil', kind: 'natural-extract', entry: 355, labelName: 'Eucalyptus Globulus Oil',
    collectiveName: 'Eucalyptus Globulus Oil', sumMembers: true,
    match: {
      names: ['Eucalyptus Globulus Oil', 'Eucalyptus Globulus Leaf Oil', 'Eucalyptus Globulus Leaf/Twig Oil'],
      plantPart: ['leaf'], cas: ['97926-40-4', '8000-48-4'],
    },
    members: [
      { name: 'Eucalyptus Globulus Leaf Oil', cas: ['97926-40-4', '8000-48-4'] },
      { name: 'Eucalyptus Globulus Leaf/Twig Oil', cas: ['8000-48-4'] },
    ],
    ...ADDED_IN_2023, source: 'cosing3', confidence: 'read',
  },
  {
    id: 'eugenia-caryophyllus-oil', kind: 'natural-extract', entry: 356, labelName: 'Eugenia Caryophyllus Oil',
    collectiveName: 'Eugenia Caryophyllus Oil', sumMembers: true,
    match: {
      names: [
        'Eugenia Caryophyllus Oil', 'Eugenia Caryophyllus Leaf Oil', 'Eugenia Caryophyllus Flower Oil',
        'Eugenia Caryophyllus Stem Oil', 'Eugenia Caryophyllus Bud Oil',
      ],
      cas: ['8000-34-8', '8015-97-2', '84961-50-2'],
    },
    members: [
      { name: 'Eugenia Caryophyllus Leaf Oil', cas: ['8000-34-8', '8015-97-2', '84961-50-2'] },
      { name: 'Eugenia Caryophyllus Flower Oil', cas: ['84961-50-2'] },
      { name: 'Eugenia Caryophyllus Stem Oil', cas: ['84961-50-2'] },
      { name: 'Eugenia Caryophyllus Bud Oil', cas: ['84961-50-2'] },
    ],
    ...ADDED_IN_2023, source: 'cosing3', confidence: 'read',
  },
  {
    id: 'jasmine-oil-extract', kind: 'natural-extract', entry: 357, labelName: 'Jasmine Oil/Extract',
    collectiveName: 'Jasmine Oil/Extract', sumMembers: true,
    match: {
      names: [
        'Jasmine Oil/Extract', 'Jasminum Grandiflorum Flower Extract', 'Jasminum Officinale Oil',
        'Jasminum Officinale Flower Extract',
      ],
      cas: ['84776-64-7', '90045-94-6', '8022-96-6', '8024-43-9'],
    },
    members: [
      { name: 'Jasminum Grandiflorum Flower Extract', cas: ['84776-64-7', '90045-94-6', '8022-96-6', '8024-43-9'] },
      { name: 'Jasminum Officinale Oil', cas: ['84776-64-7', '90045-94-6', '8022-96-6', '8024-43-9'] },
      { name: 'Jasminum Officinale Flower Extract', cas: ['90045-94-6'] },
    ],
    ...ADDED_IN_2023, source: 'cosing3', confidence: 'read',
  },
  {
    id: 'juniperus-virginiana-oil', kind: 'natural-extract', entry: 358, labelName: 'Juniperus Virginiana Oil',
    collectiveName: 'Juniperus Virginiana Oil', sumMembers: true,
    match: { names: ['Juniperus Virginiana Oil', 'Juniperus Virginiana Wood Oil'], cas: ['8000-27-9', '85085-41-2'] },
    members: [
      { name: 'Juniperus Virginiana Oil', cas: ['8000-27-9', '85085-41-2'] },
      { name: 'Juniperus Virginiana Wood Oil', cas: ['8000-27-9', '85085-41-2'] },
    ],
    ...ADDED_IN_2023, source: 'cosing3', confidence: 'read',
  },
  {
    id: 'laurus-nobilis-leaf-oil', kind: 'natural-extract', entry: 359, labelName: 'Laurus Nobilis Leaf Oil',
    sumMembers: true,
    match: { names: ['Laurus Nobilis Leaf Oil'], plantPart: ['leaf'], cas: ['8002-41-3', '8007-48-5', '84603-73-6'] },
    members: [{ name: 'Laurus Nobilis Leaf Oil', cas: ['8002-41-3', '8007-48-5', '84603-73-6'] }],
    ...ADDED_IN_2023,
    note: 'Oil from the seeds (same CAS 84603-73-6) is prohibited: Annex II 359. Laurel soap made from berry/seed oil needs care.',
    source: 'cosing3', confidence: 'read',
  },
  {
    id: 'lavandula-oil-extract', kind: 'natural-extract', entry: 360, labelName: 'Lavandula Oil/Extract',
    collectiveName: 'Lavandula Oil/Extract', sumMembers: true,
    match: {
      names: [
        'Lavandula Oil/Extract', 'Lavandula Hybrida Oil', 'Lavandula Hybrida Extract',
        'Lavandula Hybrida Flower Extract', 'Lavandula Intermedia Flower/Leaf/Stem Extract',
        'Lavandula Intermedia Flower/Leaf/Stem Oil', 'Lavandula Intermedia Oil', 'Lavandula Angustifolia Oil',
        'Lavandula Angustifolia Flower/Leaf/Stem Extract',
      ],
      cas: ['91722-69-9', '8022-15-9', '93455-96-0', '93455-97-1', '92623-76-2', '84776-65-8', '8000-28-0', '90063-37-9'],
    },
    members: [
      { name: 'Lavandula Hybrida Oil', cas: ['91722-69-9', '8022-15-9', '93455-96-0', '93455-97-1', '92623-76-2'] },
      {
        name: 'Lavandula Hybrida Extract', cas: ['91722-69-9', '8022-15-9', '93455-96-0', '93455-97-1', '92623-76-2'],
      },
      {
        name: 'Lavandula Hybrida Flower Extract',
        cas: ['91722-69-9', '8022-15-9', '93455-96-0', '93455-97-1', '92623-76-2'],
      },
      { name: 'Lavandula Intermedia Flower/Leaf/Stem Extract', cas: ['84776-65-8', '8000-28-0', '90063-37-9'] },
      { name: 'Lavandula Intermedia Flower/Leaf/Stem Oil', cas: ['84776-65-8', '8000-28-0', '90063-37-9'] },
      { name: 'Lavandula Intermedia Oil', cas: ['84776-65-8', '8000-28-0', '90063-37-9'] },
      { name: 'Lavandula Angustifolia Oil', cas: ['84776-65-8', '8000-28-0', '90063-37-9'] },
      { name: 'Lavandula Angustifolia Flower/Leaf/Stem Extract', cas: ['84776-65-8', '8000-28-0', '90063-37-9'] },
    ],
    ...ADDED_IN_2023, note: 'Spike lavender (Lavandula Latifolia) is not named in the entry.', source: 'cosing3',
    confidence: 'read',
  },
  {
    id: 'mentha-piperita-oil', kind: 'natural-extract', entry: 361, labelName: 'Mentha Piperita Oil',
    sumMembers: true, match: { names: ['Mentha Piperita Oil'], cas: ['8006-90-4', '84082-70-2'] },
    members: [{ name: 'Mentha Piperita Oil', cas: ['8006-90-4', '84082-70-2'] }], ...ADDED_IN_2023,
    source: 'cosing3', confidence: 'read',
  },
  {
    id: 'mentha-viridis-leaf-oil', kind: 'natural-extract', entry: 362, labelName: 'Mentha Viridis Leaf Oil',
    sumMembers: true,
    match: { names: ['Mentha Viridis Leaf Oil'], plantPart: ['leaf'], cas: ['8008-79-5', '84696-51-5'] },
    members: [{ name: 'Mentha Viridis Leaf Oil (spearmint)', cas: ['8008-79-5', '84696-51-5'] }],
    ...ADDED_IN_2023, source: 'cosing3', confidence: 'read',
  },
  {
    id: 'narcissus-extract', kind: 'natural-extract', entry: 363, labelName: 'Narcissus Extract',
    collectiveName: 'Narcissus Extract', sumMembers: true,
    match: {
      names: [
        'Narcissus Extract', 'Narcissus Poeticus Extract', 'Narcissus Pseudonarcissus Flower Extract',
        'Narcissus Jonquilla Extract', 'Narcissus Tazetta Extract',
      ],
      cas: ['90064-26-9', '68917-12-4', '90064-27-0', '90064-25-8'],
    },
    members: [
      { name: 'Narcissus Poeticus Extract', cas: ['90064-26-9', '68917-12-4'] },
      { name: 'Narcissus Pseudonarcissus Flower Extract', cas: ['90064-27-0'] },
      { name: 'Narcissus Jonquilla Extract', cas: ['90064-25-8'] },
      { name: 'Narcissus Tazetta Extract', cas: ['90064-25-8'] },
    ],
    ...ADDED_IN_2023, source: 'cosing3', confidence: 'read',
  },
  {
    id: 'pelargonium-graveolens-flower-oil', kind: 'natural-extract', entry: 364,
    labelName: 'Pelargonium Graveolens Flower Oil', sumMembers: true,
    match: {
      names: ['Pelargonium Graveolens Flower Oil', 'Pelargonium Graveolens Oil', 'Pelargonium Graveolens Leaf Oil'],
      cas: ['90082-51-2', '8000-46-2'],
    },
    members: [
      { name: 'Pelargonium Graveolens Flower Oil', cas: ['90082-51-2', '8000-46-2'] },
      { name: 'Pelargonium Graveolens Oil', cas: ['90082-51-2', '8000-46-2'] },
      { name: 'Pelargonium Graveolens Leaf Oil', cas: ['90082-51-2', '8000-46-2'] },
    ],
    ...ADDED_IN_2023,
    note: "'Pelargonium Graveolens Oil' and '... Leaf Oil' were added as glossary names by the 2025 corrigendum (already shown as identified ingredients by the Commission database). Which of the three names is to be printed after the corrigendum was not read: print the name of the oil used; any of the three is a glossary name.",
    source: 'cosing3', alsoSources: ['corrigendum-2025'], confidence: 'read',
  },
  {
    id: 'pogostemon-cablin-oil', kind: 'natural-extract', entry: 365, labelName: 'Pogostemon Cablin Oil',
    sumMembers: true,
    match: { names: ['Pogostemon Cablin Oil', 'Pogostemon Cablin Leaf Oil'], cas: ['8014-09-3', '84238-39-1'] },
    members: [
      { name: 'Pogostemon Cablin Oil', cas: ['8014-09-3', '84238-39-1'] },
      { name: 'Pogostemon Cablin Leaf Oil', cas: ['8014-09-3', '84238-39-1'] },
    ],
    ...ADDED_IN_2023,
    note: "'Pogostemon Cablin Leaf Oil' added as a glossary name by the 2025 corrigendum (secondary source).",
    source: 'cosing3', alsoSources: ['corrigendum-2025'], confidence: 'read',
  },
  {
    id: 'rose-flower-oil-extract', kind: 'natural-extract', entry: 366, labelName: 'Rose Flower Oil/Extract',
    collectiveName: 'Rose Flower Oil/Extract', sumMembers: true,
    match: {
      names: [
        'Rose Flower Oil/Extract', 'Rosa Damascena Flower Oil', 'Rosa Damascena Flower Extract',
        'Rosa Alba Flower Oil', 'Rosa Alba Flower Extract', 'Rosa Canina Flower Oil', 'Rosa Centifolia Flower Oil',
        'Rosa Centifolia Flower Extract', 'Rosa Gallica Flower Oil', 'Rosa Moschata Flower Oil',
        'Rosa Rugosa Flower Oil',
      ],
      plantPart: ['flower'],
      cas: ['8007-01-0', '90106-38-0', '93334-48-6', '84696-47-9', '84604-12-6', '84604-13-7', '92347-25-6'],
    },
    members: [
      { name: 'Rosa Damascena Flower Oil', cas: ['8007-01-0', '90106-38-0'] },
      { name: 'Rosa Damascena Flower Extract', cas: ['8007-01-0', '90106-38-0'] },
      { name: 'Rosa Alba Flower Oil', cas: ['93334-48-6'] },
      { name: 'Rosa Alba Flower Extract', cas: ['93334-48-6'] },
      { name: 'Rosa Canina Flower Oil', cas: ['84696-47-9'] },
      { name: 'Rosa Centifolia Flower Oil', cas: ['84604-12-6'] },
      { name: 'Rosa Centifolia Flower Extract', cas: ['84604-12-6'] },
      { name: 'Rosa Gallica Flower Oil', cas: ['84604-13-7'] },
      { name: 'Rosa Moschata Flower Oil', cas: [] },
      { name: 'Rosa Rugosa Flower Oil', cas: ['92347-25-6'] },
    ],
    ...ADDED_IN_2023,
    note: 'Flower material only. Rosehip seed/fruit oil shares CAS 84696-47-9 and is NOT this entry: match by name before CAS. Rose oil carries methyl eugenol: see Annex III 102.',
    source: 'cosing3', confidence: 'read',
  },
  {
    id: 'santalum-album-oil', kind: 'natural-extract', entry: 367, labelName: 'Santalum Album Oil', sumMembers: true,
    match: { names: ['Santalum Album Oil'], cas: ['8006-87-9', '84787-70-2'] },
    members: [{ name: 'Santalum Album Oil', cas: ['8006-87-9', '84787-70-2'] }], ...ADDED_IN_2023,
    source: 'cosing3', confidence: 'read',
  },
  {
    id: 'eugenyl-acetate', kind: 'single-substance', entry: 368, labelName: 'Eugenyl Acetate', sumMembers: false,
    match: { names: ['Eugenyl Acetate'], cas: ['93-28-7'] }, members: [{ name: 'Eugenyl Acetate', cas: ['93-28-7'] }],
    ...ADDED_IN_2023,
    note: 'The Commission database prints the chemical name (Phenol, 2-methoxy-4-(2-propenyl)-, acetate) in the glossary column; published lists of the entry use Eugenyl Acetate.',
    source: 'cosing3', confidence: 'read',
  },
  {
    id: 'geranyl-acetate', kind: 'single-substance', entry: 369, labelName: 'Geranyl Acetate', sumMembers: false,
    match: { names: ['Geranyl Acetate'], cas: ['105-87-3'] },
    members: [{ name: 'Geranyl Acetate', cas: ['105-87-3'] }], ...ADDED_IN_2023, source: 'cosing3',
    confidence: 'read',
  },
  {
    id: 'isoeugenyl-acetate', kind: 'single-substance', entry: 370, labelName: 'Isoeugenyl Acetate',
    sumMembers: false, match: { names: ['Isoeugenyl Acetate'], cas: ['93-29-8'] },
    members: [{ name: 'Isoeugenyl Acetate', cas: ['93-29-8'] }], ...ADDED_IN_2023, source: 'cosing3',
    confidence: 'read',
  },
  {
    id: 'pinene', kind: 'isomer-group', entry: 371, labelName: 'Pinene', sumMembers: true,
    match: { names: ['Pinene', 'alpha-Pinene', 'beta-Pinene'], cas: ['80-56-8', '7785-70-8', '127-91-3', '18172-67-3'] },
    members: [
      { name: 'alpha-Pinene', cas: ['80-56-8', '7785-70-8'] },
      { name: 'beta-Pinene', cas: ['127-91-3', '18172-67-3'] },
    ],
    ...ADDED_IN_2023, note: "Entry counts the two together ('the substance or the substances').",
    source: 'cosing3', confidence: 'read',
  },
];

export const allergenCasTraps: readonly CasTrap[] = [
  {
    id: 'cas-72968-50-4', cas: '72968-50-4', tellApartBy: ['plantPart'],
    materials: [
      { name: 'bitter orange flower oil', allergenEntryId: 'citrus-aurantium-flower-oil', plantPart: 'flower' },
      { name: 'bitter orange peel oil', allergenEntryId: 'citrus-aurantium-peel-oil', plantPart: 'peel' },
    ],
    source: 'cosing3', confidence: 'read',
  },
  {
    id: 'cas-8028-48-6', cas: '8028-48-6', tellApartBy: ['plantPart'],
    materials: [
      { name: 'sweet orange flower oil', allergenEntryId: 'citrus-aurantium-flower-oil', plantPart: 'flower' },
      { name: 'sweet orange peel oil', allergenEntryId: 'citrus-aurantium-peel-oil', plantPart: 'peel' },
      { name: 'any other sweet orange extract' },
    ],
    note: 'Catalogues use this number for any sweet orange extract.', source: 'cosing3', confidence: 'read',
  },
  {
    id: 'cas-84696-47-9', cas: '84696-47-9', tellApartBy: ['plantPart'],
    materials: [
      { name: 'Rosa Canina flower oil', allergenEntryId: 'rose-flower-oil-extract', plantPart: 'flower' },
      { name: 'rosehip oil (Rosa Canina fruit)', plantPart: 'fruit' },
      { name: 'rosehip oil (Rosa Canina seed)', plantPart: 'seed' },
    ],
    source: 'cosing3', confidence: 'read',
  },
  {
    id: 'cas-84603-73-6', cas: '84603-73-6', tellApartBy: ['plantPart'],
    materials: [
      { name: 'laurel leaf oil', allergenEntryId: 'laurus-nobilis-leaf-oil', plantPart: 'leaf' },
      { name: 'laurel seed oil', plantPart: 'seed', prohibitedEntry: 'Annex II 359' },
    ],
    source: 'cosing3', confidence: 'read',
  },
  {
    id: 'cas-8007-00-9', cas: '8007-00-9', tellApartBy: ['form'],
    materials: [
      {
        name: 'Peru balsam extract or distillate', allergenEntryId: 'myroxylon-pereirae-oil-extract',
        plantPart: 'resin', form: 'extract or distillate',
      },
      { name: 'crude Peru balsam', plantPart: 'resin', form: 'crude exudation', prohibitedEntry: 'Annex II 1136' },
    ],
    source: 'cosing3', confidence: 'read',
  },
  {
    id: 'cas-8024-12-2', cas: '8024-12-2', tellApartBy: ['process'],
    materials: [
      { name: 'verbena absolute', allergenEntryId: 'lippia-citriodora-absolute', process: 'absolute' },
      { name: 'verbena essential oil and every derivative other than the absolute', prohibitedEntry: 'Annex II 450' },
    ],
    note: 'Only the absolute may be used; every other derivative counts as prohibited.', source: 'cosing3',
    confidence: 'read',
  },
  {
    id: 'cas-84929-31-7', cas: '84929-31-7', tellApartBy: ['plantPart'],
    materials: [
      { name: 'lemon peel oil', allergenEntryId: 'citrus-limon-peel-oil', plantPart: 'peel' },
      { name: 'other lemon extracts (fruit)', plantPart: 'fruit' },
    ],
    note: 'Catalogues use this number for other lemon extracts (fruit, peel extract).', source: 'cosing3',
    confidence: 'read',
  },
  {
    id: 'cas-8015-91-6', cas: '8015-91-6', tellApartBy: ['plantPart'],
    materials: [
      { name: 'cinnamon bark oil', allergenEntryId: 'cinnamomum-zeylanicum-bark-oil', plantPart: 'bark' },
      { name: 'cinnamon leaf oil', plantPart: 'leaf' },
    ],
    note: 'The number for leaf oil is from memory (see essential-oils).', source: 'cosing3', confidence: 'memory',
  },
  {
    id: 'cas-84649-98-9', cas: '84649-98-9', tellApartBy: ['plantPart'],
    materials: [
      { name: 'cinnamon bark oil', allergenEntryId: 'cinnamomum-zeylanicum-bark-oil', plantPart: 'bark' },
      { name: 'cinnamon leaf oil', plantPart: 'leaf' },
    ],
    note: 'The number for leaf oil is from memory (see essential-oils).', source: 'cosing3', confidence: 'memory',
  },
  {
    id: 'cas-8007-75-8', cas: '8007-75-8', tellApartBy: ['process'],
    materials: [
      {
        name: 'bergamot oil, expressed', allergenEntryId: 'citrus-aurantium-bergamia-peel-oil', plantPart: 'peel',
        process: 'expressed',
      },
      {
        name: 'bergamot oil, furocoumarin-free', allergenEntryId: 'citrus-aurantium-bergamia-peel-oil',
        plantPart: 'peel', process: 'furocoumarin-free',
      },
    ],
    note: 'Same naming duty; the phototoxic limit holds for the expressed oil only.', source: 'cosing3',
    confidence: 'read',
  },
];

export const allergenNamingRules: readonly NamingRule[] = [
  {
    id: 'threshold',
    text: "Name the allergen in the ingredient list, in addition to 'Parfum' or 'Aroma', when its total concentration in the finished product exceeds 0.001 % (leave-on) or 0.01 % (rinse-off). Exactly the threshold is not 'exceeds'.",
    source: 'cosing3', confidence: 'read',
  },
  {
    id: 'all-origins',
    text: 'Count every origin: perfume, essential oils and extracts, impurities, and the substance added as such.',
    source: 'industry-guid', confidence: 'read',
  },
  {
    id: 'collective',
    text: 'Where collectiveName is not null that name is printed and the members are added together.',
    source: 'cosing3', confidence: 'read',
  },
  {
    id: 'isomers',
    text: "Where one entry lists several CAS numbers under one glossary name (e.g. Limonene, Pinene, Terpineol) add them together and print the one name. For entries not worded 'substance or substances' the adding-up is the usual reading, not express text.",
    source: 'memory', confidence: 'memory',
  },
  {
    id: 'oil-and-constituents',
    text: 'A listed essential oil and its listed constituents are separate entries: lavender oil can require Lavandula Oil/Extract and also Linalool, Linalyl Acetate, Limonene ...',
    source: 'cosing3', confidence: 'read',
  },
  {
    id: 'own-function', text: 'The naming duty follows from presence, whatever the function of the substance.',
    source: 'industry-guid', confidence: 'read',
  },
  {
    id: 'eu-dates',
    text: 'Products with newly listed allergens not named: placed on the Union market until 31 July 2026, made available until 31 July 2028. The dates in the rows are the first day on which the name is required, so the day after. Each unit/batch is judged by its own date of first supply.',
    source: 'eu-2023-1545', confidence: 'read',
  },
  { id: 'ni', text: 'Northern Ireland follows the EU list and dates.', source: 'gb-notices', confidence: 'read' },
  {
    id: 'gb',
    text: 'Great Britain: only the 24 rows with gb.listed true must be named (older CAS scope, e.g. d-Limonene 5989-27-5 for Limonene). No GB instrument adding the other rows was found up to the reading date.',
    source: 'gb-notices', confidence: 'read',
  },
  {
    id: 'deleted',
    text: 'Entries 68 (now 45), 79 (HICC, now prohibited, Annex II 1380) and 83 (Butylphenyl Methylpropional, now prohibited, Annex II 1666) are no longer allergen entries; 125, 126, 158, 160-163, 165, 167, 168 were deleted by the 2023 act.',
    source: 'eu-2023-1545', confidence: 'read',
  },
  {
    id: 'match',
    text: 'A material belongs to an entry when its name stands in match.names (case and spaces round / ignored), or when its CAS stands in match.cas and its plantPart and process do not contradict match.plantPart and match.process. An empty list sets no condition. Name goes before CAS; a CAS in casTraps never decides alone.',
    source: 'cosing3', confidence: 'derived',
  },
  {
    id: 'twig', text: 'Twig and stem are counted as wood in match.plantPart.', source: 'memory',
    confidence: 'derived',
  },
];

/** As published: what the table must add up to. */
export const fragranceAllergenCounts = { entries: 81, oldListEntries: 24, newEntries: 57, labelNames: 81, distinctCas: 167, naturalExtractEntries: 29, collectiveNameEntries: 17 };

export const fragranceAllergenSources: readonly ReferenceSource[] = [
  {
    id: 'cosing3',
    title: 'European Commission cosmetic ingredient database (CosIng): Annex III list, export of 25 December 2025 (list last updated 8 December 2025)',
    where: 'European Commission, CosIng, Annex III', read: true,
  },
  {
    id: 'eu-2023-1545',
    title: 'Commission Regulation (EU) 2023/1545 of 26 July 2023 amending Regulation (EC) No 1223/2009 as regards labelling of fragrance allergens',
    where: 'OJ L 188, 27.7.2023, p. 1-23 (CELEX 32023R1545); title, recitals and footnote wording read; the table rows were read through source cosing3 and checked against two independent transcriptions',
    read: true,
  },
  {
    id: 'corrigendum-2025', title: 'Corrigendum to Regulation (EU) 2023/1545',
    where: 'OJ L, 2025/90876, 7.11.2025 (CELEX 32023R1545R(02)); the English text itself was not read, its content comes from two independent secondary descriptions and from the opening of the Polish text (entry 157)',
    read: false,
  },
  {
    id: 'd-2008-42',
    title: 'Commission Directive 2008/42/EC, Annex (wording and CAS numbers of Annex III entries 45, 72, 73, 88, 89 before the 2023 change)',
    where: 'legislation.gov.uk, eudr/2008/42', read: true,
  },
  {
    id: 'gb-notices',
    title: 'UK trade and laboratory notices 2025-2026: Regulation (EU) 2023/1545 applies in Northern Ireland, not adopted for Great Britain',
    where: 'several public notices, the latest read from 2026; no statutory instrument adding the allergens was found',
    read: true,
  },
  {
    id: 'industry-guid',
    title: 'Industry guidelines on the fragrance allergens requirements (7 November 2023), as reported in public summaries (81 allergens; all origins count; group names)',
    where: 'public summaries, 2023-2024', read: true,
  },
  { id: 'memory', title: 'From memory, not confirmed in a printed text', where: 'not seen in print', read: false },
];
