/**
 * Annex III of Regulation (EC) No 1223/2009: substances allowed within rules. Entries with a peroxide value stand in
 * restricted-peroxides-2025.
 * A selection that makers with natural materials meet. The sources stand in restricted-substances-2025.
 */
import type { RestrictedSubstance } from '../restricted-substance.ts';

export const restrictedSubstancesOfAnnex3: readonly RestrictedSubstance[] = [
  {
    id: 'methyl-eugenol', name: 'Methyl Eugenol',
    aliases: ['Methyleugenol', 'Eugenol methyl ether', '4-Allylveratrole'], cas: ['93-15-2'], kind: 'restricted',
    annex: 'III', entry: '102',
    rules: [
      {
        id: 'methyl-eugenol-eu-fine-fragrance', markets: ['EU', 'NI'], use: 'leave-on', productType: 'fine-fragrance',
        quantity: 'max', value: 0.01, source: 'cosing3', confidence: 'read',
      },
      {
        id: 'methyl-eugenol-eu-eau-de-toilette', markets: ['EU', 'NI'], use: 'leave-on',
        productType: 'eau-de-toilette', quantity: 'max', value: 0.004, source: 'cosing3', confidence: 'read',
      },
      {
        id: 'methyl-eugenol-eu-fragrance-cream', markets: ['EU', 'NI'], use: 'leave-on',
        productType: 'fragrance-cream', quantity: 'max', value: 0.002, source: 'cosing3', confidence: 'read',
      },
      {
        id: 'methyl-eugenol-eu-leave-on', markets: ['EU', 'NI'], use: 'leave-on', quantity: 'max', value: 0.0002,
        source: 'cosing3', confidence: 'read', note: 'Other leave-on products.',
      },
      {
        id: 'methyl-eugenol-eu-oral', markets: ['EU', 'NI'], bodyPart: 'oral', quantity: 'max', value: 0.0002,
        source: 'cosing3', confidence: 'read',
      },
      {
        id: 'methyl-eugenol-eu-rinse-off', markets: ['EU', 'NI'], use: 'rinse-off', quantity: 'max', value: 0.001,
        source: 'cosing3', confidence: 'read',
      },
      {
        id: 'methyl-eugenol-gb-fine-fragrance', markets: ['GB'], use: 'leave-on', productType: 'fine-fragrance',
        quantity: 'max', value: 0.01, source: 'memory', confidence: 'memory',
        note: 'Retained entry, taken as unchanged; not looked up entry by entry.',
      },
      {
        id: 'methyl-eugenol-gb-eau-de-toilette', markets: ['GB'], use: 'leave-on', productType: 'eau-de-toilette',
        quantity: 'max', value: 0.004, source: 'memory', confidence: 'memory',
        note: 'Retained entry, taken as unchanged; not looked up entry by entry.',
      },
      {
        id: 'methyl-eugenol-gb-fragrance-cream', markets: ['GB'], use: 'leave-on', productType: 'fragrance-cream',
        quantity: 'max', value: 0.002, source: 'memory', confidence: 'memory',
        note: 'Retained entry, taken as unchanged; not looked up entry by entry.',
      },
      {
        id: 'methyl-eugenol-gb-leave-on', markets: ['GB'], use: 'leave-on', quantity: 'max', value: 0.0002,
        source: 'memory', confidence: 'memory',
        note: 'Retained entry, taken as unchanged; not looked up entry by entry.',
      },
      {
        id: 'methyl-eugenol-gb-oral', markets: ['GB'], bodyPart: 'oral', quantity: 'max', value: 0.0002,
        source: 'memory', confidence: 'memory',
        note: 'Retained entry, taken as unchanged; not looked up entry by entry.',
      },
      {
        id: 'methyl-eugenol-gb-rinse-off', markets: ['GB'], use: 'rinse-off', quantity: 'max', value: 0.001,
        source: 'memory', confidence: 'memory',
        note: 'Retained entry, taken as unchanged; not looked up entry by entry.',
      },
    ],
    source: 'cosing3', confidence: 'read',
    note: "Constituent of rose, basil, bay, nutmeg, clove, tea tree, myrtle, pimento oils; sum over all oils. A body butter is 'other leave-on': 0.0002 %. Same figures in the opinion of 2000 (sccnfp-me). Ten times stricter than IFRA category 5A.",
  },
  {
    id: 'isoeugenol', name: 'Isoeugenol', aliases: ['trans-Isoeugenol', 'cis-Isoeugenol'],
    cas: ['97-54-1', '5932-68-3', '5912-86-7'], kind: 'restricted', annex: 'III', entry: '73',
    rules: [
      {
        id: 'isoeugenol-eu-any', markets: ['EU', 'NI'], quantity: 'max', value: 0.02, onlyIf: 'not-oral',
        source: 'cosing3', confidence: 'read',
      },
      {
        id: 'isoeugenol-gb-any', markets: ['GB'], quantity: 'max', value: 0.02, onlyIf: 'not-oral', source: 'memory',
        confidence: 'memory', note: 'Retained entry, taken as unchanged; not looked up entry by entry.',
      },
    ],
    source: 'cosing3', confidence: 'read',
    note: 'Also an allergen entry. Same figure in Directive 2008/42/EC (eu200842).',
  },
  {
    id: 'hydroxycitronellal', name: 'Hydroxycitronellal', cas: ['107-75-5'], kind: 'restricted', annex: 'III',
    entry: '72',
    rules: [
      {
        id: 'hydroxycitronellal-eu-any', markets: ['EU', 'NI'], quantity: 'max', value: 1, onlyIf: 'not-oral',
        source: 'cosing3', confidence: 'read',
      },
      {
        id: 'hydroxycitronellal-gb-any', markets: ['GB'], quantity: 'max', value: 1, onlyIf: 'not-oral',
        source: 'memory', confidence: 'memory',
        note: 'Retained entry, taken as unchanged; not looked up entry by entry.',
      },
    ],
    source: 'cosing3', confidence: 'read',
    note: 'Also an allergen entry. Same figure in Directive 2008/42/EC (eu200842).',
  },
  {
    id: 'methyl-2-octynoate', name: 'Methyl 2-Octynoate',
    aliases: ['Methyl heptine carbonate', 'Methyl oct-2-ynoate'], cas: ['111-12-6'], kind: 'restricted', annex: 'III',
    entry: '89',
    rules: [
      {
        id: 'methyl-2-octynoate-eu-any', markets: ['EU', 'NI'], quantity: 'max', value: 0.01, sumGroup: 'octynoates',
        onlyIf: 'not-oral', source: 'cosing3', confidence: 'read',
        note: 'Alone, or together with methyl octine carbonate.',
      },
      {
        id: 'methyl-2-octynoate-gb-any', markets: ['GB'], quantity: 'max', value: 0.01, sumGroup: 'octynoates',
        onlyIf: 'not-oral', source: 'memory', confidence: 'memory',
        note: 'Retained entry, taken as unchanged; not looked up entry by entry.',
      },
    ],
    source: 'cosing3', confidence: 'read',
    note: 'With methyl octine carbonate (111-80-8): together at most 0.01 %, of which methyl octine carbonate at most 0.002 %. Also an allergen entry.',
  },
  {
    id: 'methyl-octine-carbonate', name: 'Methyl Octine Carbonate',
    aliases: ['Methyl 2-nonynoate', 'Methyl non-2-ynoate'], cas: ['111-80-8'], kind: 'restricted', annex: 'III',
    entry: '173',
    rules: [
      {
        id: 'methyl-octine-carbonate-eu-any', markets: ['EU', 'NI'], quantity: 'max', value: 0.002,
        onlyIf: 'not-oral', source: 'cosing3', confidence: 'read',
      },
      {
        id: 'methyl-octine-carbonate-eu-together', markets: ['EU', 'NI'], quantity: 'max', value: 0.01,
        sumGroup: 'octynoates', onlyIf: 'not-oral', source: 'cosing3', confidence: 'read',
        note: 'Together with methyl 2-octynoate.',
      },
      {
        id: 'methyl-octine-carbonate-gb-any', markets: ['GB'], quantity: 'max', value: 0.002, onlyIf: 'not-oral',
        source: 'memory', confidence: 'memory',
        note: 'Retained entry, taken as unchanged; not looked up entry by entry.',
      },
      {
        id: 'methyl-octine-carbonate-gb-together', markets: ['GB'], quantity: 'max', value: 0.01,
        sumGroup: 'octynoates', onlyIf: 'not-oral', source: 'memory', confidence: 'memory',
        note: 'Retained entry, taken as unchanged; not looked up entry by entry.',
      },
    ],
    source: 'cosing3', confidence: 'read',
  },
  {
    id: 'rose-ketones', name: 'Rose Ketones (damascones, damascenone)',
    aliases: [
      'Alpha-Damascone', 'cis-Rose Ketone 1', 'trans-Rose Ketone 1', 'Rose Ketone 4', 'Damascenone', 'Rose Ketone 3',
      'delta-Damascone', 'trans-Rose Ketone 3', 'cis-Rose Ketone 2', 'cis-beta-Damascone', 'trans-Rose Ketone 2',
      'trans-beta-Damascone', 'Damascone',
    ],
    cas: [
      '43052-87-5', '23726-94-5', '24720-09-0', '23696-85-7', '57378-68-4', '71048-82-3', '23726-92-3', '23726-91-2',
      '39872-57-6', '33673-71-1',
    ],
    kind: 'restricted', annex: 'III', entry: '157, 159, 164',
    rules: [
      {
        id: 'rose-ketones-eu-any', markets: ['EU', 'NI'], quantity: 'max', value: 0.02, onlyIf: 'not-oral',
        source: 'cosing3', confidence: 'read',
      },
      {
        id: 'rose-ketones-gb-any', markets: ['GB'], quantity: 'max', value: 0.02, onlyIf: 'not-oral',
        source: 'memory', confidence: 'memory',
        note: 'Retained entry, taken as unchanged; not looked up entry by entry.',
      },
    ],
    source: 'cosing3', confidence: 'read',
    note: 'Sum of the group (sum rule: memory). Entry 157 names the first eight CAS and is an allergen entry; 39872-57-6 and 33673-71-1 come with entries 159 and 164. Great Britain keeps the older single entries 157 to 168 (memory).',
  },
  {
    id: 'propylidenephthalide', name: '3-Propylidenephthalide', cas: ['17369-59-4'], kind: 'restricted', annex: 'III',
    entry: '175',
    rules: [
      {
        id: 'propylidenephthalide-eu-any', markets: ['EU', 'NI'], quantity: 'max', value: 0.01, onlyIf: 'not-oral',
        source: 'cosing3', confidence: 'read',
      },
      {
        id: 'propylidenephthalide-gb-any', markets: ['GB'], quantity: 'max', value: 0.01, onlyIf: 'not-oral',
        source: 'memory', confidence: 'memory',
        note: 'Retained entry, taken as unchanged; not looked up entry by entry.',
      },
    ],
    source: 'cosing3', confidence: 'read', note: 'Also an allergen entry.',
  },
  {
    id: 'trans-2-hexenal', name: 'trans-2-Hexenal', aliases: ['Leaf aldehyde', '(E)-Hex-2-enal'], cas: ['6728-26-3'],
    kind: 'restricted', annex: 'III', entry: '166',
    rules: [
      {
        id: 'trans-2-hexenal-eu-any', markets: ['EU', 'NI'], quantity: 'max', value: 0.002, onlyIf: 'not-oral',
        source: 'cosing3', confidence: 'read',
      },
      {
        id: 'trans-2-hexenal-gb-any', markets: ['GB'], quantity: 'max', value: 0.002, onlyIf: 'not-oral',
        source: 'memory', confidence: 'memory',
        note: 'Retained entry, taken as unchanged; not looked up entry by entry.',
      },
    ],
    source: 'cosing3', confidence: 'read', note: 'Stricter than IFRA category 5A (0.0026 %).',
  },
  {
    id: 'perillaldehyde', name: 'Perillaldehyde', aliases: ['Perilla aldehyde', 'p-Mentha-1,8-dien-7-al'],
    cas: ['2111-75-3'], kind: 'restricted', annex: 'III', entry: '169',
    rules: [
      {
        id: 'perillaldehyde-eu-any', markets: ['EU', 'NI'], quantity: 'max', value: 0.1, onlyIf: 'not-oral',
        source: 'cosing3', confidence: 'read',
      },
      {
        id: 'perillaldehyde-gb-any', markets: ['GB'], quantity: 'max', value: 0.1, onlyIf: 'not-oral',
        source: 'memory', confidence: 'memory',
        note: 'Retained entry, taken as unchanged; not looked up entry by entry.',
      },
    ],
    source: 'cosing3', confidence: 'read', note: 'IFRA category 5A (0.076 %) is stricter.',
  },
  {
    id: '1-octen-3-yl-acetate', name: '1-Octen-3-yl Acetate',
    aliases: ['Oct-1-en-3-yl acetate', 'Amyl vinyl carbinyl acetate'], cas: ['2442-10-6'], kind: 'restricted',
    annex: 'III', entry: '174',
    rules: [
      {
        id: '1-octen-3-yl-acetate-eu-any', markets: ['EU', 'NI'], quantity: 'max', value: 0.3, onlyIf: 'not-oral',
        source: 'cosing3', confidence: 'read',
      },
      {
        id: '1-octen-3-yl-acetate-gb-any', markets: ['GB'], quantity: 'max', value: 0.3, onlyIf: 'not-oral',
        source: 'memory', confidence: 'memory',
        note: 'Retained entry, taken as unchanged; not looked up entry by entry.',
      },
    ],
    source: 'cosing3', confidence: 'read', note: 'In lavender. Stricter than IFRA category 5A (0.38 %).',
  },
  {
    id: 'furfural', name: 'Furfural', aliases: ['2-Furaldehyde'], cas: ['98-01-1'], kind: 'restricted', annex: 'III',
    entry: '312',
    rules: [
      {
        id: 'furfural-eu-any', markets: ['EU', 'NI'], quantity: 'max', value: 0.001, source: 'cosing3',
        confidence: 'read',
      },
      {
        id: 'furfural-gb-any', markets: ['GB'], quantity: 'max', value: 0.001, source: 'memory', confidence: 'memory',
        note: 'Retained entry, taken as unchanged; not looked up entry by entry.',
      },
    ],
    source: 'cosing3', confidence: 'read', note: 'Traces in distilled oils, vanilla extracts.',
  },
  {
    id: 'myroxylon-oil', name: 'Myroxylon pereirae extracts and distillates (Peru balsam oil)',
    aliases: [
      'Myroxylon Pereirae Oil/Extract', 'Myroxylon Pereirae Oil', 'Myroxylon Balsamum Pereirae Balsam Extract',
      'Myroxylon Balsamum Pereirae Balsam Oil', 'Myroxylon Pereirae Resin Extract', 'Peru balsam oil',
    ],
    cas: ['8007-00-9'], process: ['extract', 'distilled'], kind: 'restricted', annex: 'III', entry: '154',
    rules: [
      {
        id: 'myroxylon-oil-eu-any', markets: ['EU', 'NI'], quantity: 'max', value: 0.4, source: 'cosing3',
        confidence: 'read',
      },
      {
        id: 'myroxylon-oil-gb-any', markets: ['GB'], quantity: 'max', value: 0.4, source: 'memory',
        confidence: 'memory', note: 'Retained entry, taken as unchanged; not looked up entry by entry.',
      },
    ],
    source: 'cosing3', confidence: 'read',
    note: 'Crude balsam as fragrance is prohibited (row peru-balsam, same CAS).',
  },
  {
    id: 'verbena-absolute', name: 'Lippia citriodora absolute',
    aliases: ['Verbena absolute', 'Lippia Citriodora Absolute'], cas: ['8024-12-2', '85116-63-8'],
    process: ['absolute'], kind: 'restricted', annex: 'III', entry: '196',
    rules: [
      {
        id: 'verbena-absolute-eu-any', markets: ['EU', 'NI'], quantity: 'max', value: 0.2, source: 'cosing3',
        confidence: 'read',
      },
      {
        id: 'verbena-absolute-gb-any', markets: ['GB'], quantity: 'max', value: 0.2, source: 'memory',
        confidence: 'memory', note: 'Retained entry, taken as unchanged; not looked up entry by entry.',
      },
    ],
    source: 'cosing3', confidence: 'read',
    note: 'Oil and other derivatives are prohibited as fragrance (row verbena-oil, same CAS).',
  },
  {
    id: 'cumin-oil', name: 'Cuminum cyminum oil and extract',
    aliases: ['Cumin oil', 'Cuminum Cyminum Seed Oil', 'Cuminum Cyminum Fruit Oil', 'Cuminum Cyminum Seed Extract'],
    cas: ['84775-51-9'], kind: 'restricted', annex: 'III', entry: '156',
    rules: [
      {
        id: 'cumin-oil-eu-leave-on', markets: ['EU', 'NI'], use: 'leave-on', quantity: 'max', value: 0.4,
        asWhat: 'cumin oil', source: 'cosing3', confidence: 'read',
      },
      {
        id: 'cumin-oil-eu-rinse-off', markets: ['EU', 'NI'], use: 'rinse-off', quantity: 'max', value: 100,
        asWhat: 'cumin oil', source: 'cosing3', confidence: 'read', note: 'No maximum.',
      },
      {
        id: 'cumin-oil-gb-leave-on', markets: ['GB'], use: 'leave-on', quantity: 'max', value: 0.4,
        asWhat: 'cumin oil', source: 'memory', confidence: 'memory',
        note: 'Retained entry, taken as unchanged; not looked up entry by entry.',
      },
      {
        id: 'cumin-oil-gb-rinse-off', markets: ['GB'], use: 'rinse-off', quantity: 'max', value: 100,
        asWhat: 'cumin oil', source: 'memory', confidence: 'memory',
        note: 'Retained entry, taken as unchanged; not looked up entry by entry.',
      },
    ],
    source: 'cosing3', confidence: 'read', note: 'The limit is stated as cumin oil.',
  },
  {
    id: 'tagetes-minuta', name: 'Tagetes minuta flower extract and oil',
    aliases: ['Tagetes Minuta Flower Oil', 'Tagetes Minuta Flower Extract'], cas: ['91770-75-1', '8016-84-0'],
    plantPart: ['flower'], kind: 'restricted', annex: 'III', entry: '308',
    rules: [
      {
        id: 'tagetes-minuta-eu-leave-on', markets: ['EU', 'NI'], use: 'leave-on', quantity: 'max', value: 0.01,
        sumGroup: 'tagetes', source: 'cosing3', confidence: 'read',
      },
      {
        id: 'tagetes-minuta-eu-rinse-off', markets: ['EU', 'NI'], use: 'rinse-off', quantity: 'max', value: 0.1,
        sumGroup: 'tagetes', source: 'cosing3', confidence: 'read',
      },
      {
        id: 'tagetes-minuta-eu-sun-protection', markets: ['EU', 'NI'], use: 'leave-on', productType: 'sun-protection',
        quantity: 'prohibited', source: 'cosing3', confidence: 'read',
      },
      {
        id: 'tagetes-minuta-eu-uv-exposure', markets: ['EU', 'NI'], use: 'leave-on', productType: 'uv-exposure',
        quantity: 'prohibited', source: 'cosing3', confidence: 'read',
      },
      {
        id: 'tagetes-minuta-eu-raw-alpha-terthienyl', markets: ['EU', 'NI'], basis: 'raw-material', quantity: 'max',
        value: 0.35, asWhat: 'alpha-terthienyl', source: 'cosing3', confidence: 'read',
      },
      {
        id: 'tagetes-minuta-gb-leave-on', markets: ['GB'], use: 'leave-on', quantity: 'max', value: 0.01,
        sumGroup: 'tagetes', source: 'memory', confidence: 'memory',
        note: 'Retained entry of Regulation (EU) 2018/978.',
      },
      {
        id: 'tagetes-minuta-gb-rinse-off', markets: ['GB'], use: 'rinse-off', quantity: 'max', value: 0.1,
        sumGroup: 'tagetes', source: 'memory', confidence: 'memory',
        note: 'Retained entry of Regulation (EU) 2018/978.',
      },
      {
        id: 'tagetes-minuta-gb-sun-protection', markets: ['GB'], use: 'leave-on', productType: 'sun-protection',
        quantity: 'prohibited', source: 'memory', confidence: 'memory',
        note: 'Retained entry of Regulation (EU) 2018/978.',
      },
      {
        id: 'tagetes-minuta-gb-uv-exposure', markets: ['GB'], use: 'leave-on', productType: 'uv-exposure',
        quantity: 'prohibited', source: 'memory', confidence: 'memory',
        note: 'Retained entry of Regulation (EU) 2018/978.',
      },
      {
        id: 'tagetes-minuta-gb-raw-alpha-terthienyl', markets: ['GB'], basis: 'raw-material', quantity: 'max',
        value: 0.35, asWhat: 'alpha-terthienyl', source: 'memory', confidence: 'memory',
        note: 'Retained entry of Regulation (EU) 2018/978.',
      },
    ],
    source: 'cosing3', confidence: 'read',
    note: 'Limit shared by Tagetes minuta and Tagetes patula. Tagetes erecta is prohibited (row tagetes-erecta).',
  },
  {
    id: 'tagetes-patula', name: 'Tagetes patula flower extract and oil',
    aliases: ['Tagetes Patula Flower Oil', 'Tagetes Patula Flower Extract'], cas: ['91722-29-1', '8016-84-0'],
    plantPart: ['flower'], kind: 'restricted', annex: 'III', entry: '309',
    rules: [
      {
        id: 'tagetes-patula-eu-leave-on', markets: ['EU', 'NI'], use: 'leave-on', quantity: 'max', value: 0.01,
        sumGroup: 'tagetes', source: 'cosing3', confidence: 'read',
      },
      {
        id: 'tagetes-patula-eu-rinse-off', markets: ['EU', 'NI'], use: 'rinse-off', quantity: 'max', value: 0.1,
        sumGroup: 'tagetes', source: 'cosing3', confidence: 'read',
      },
      {
        id: 'tagetes-patula-eu-sun-protection', markets: ['EU', 'NI'], use: 'leave-on', productType: 'sun-protection',
        quantity: 'prohibited', source: 'cosing3', confidence: 'read',
      },
      {
        id: 'tagetes-patula-eu-uv-exposure', markets: ['EU', 'NI'], use: 'leave-on', productType: 'uv-exposure',
        quantity: 'prohibited', source: 'cosing3', confidence: 'read',
      },
      {
        id: 'tagetes-patula-eu-raw-alpha-terthienyl', markets: ['EU', 'NI'], basis: 'raw-material', quantity: 'max',
        value: 0.35, asWhat: 'alpha-terthienyl', source: 'cosing3', confidence: 'read',
      },
      {
        id: 'tagetes-patula-gb-leave-on', markets: ['GB'], use: 'leave-on', quantity: 'max', value: 0.01,
        sumGroup: 'tagetes', source: 'memory', confidence: 'memory',
        note: 'Retained entry of Regulation (EU) 2018/978.',
      },
      {
        id: 'tagetes-patula-gb-rinse-off', markets: ['GB'], use: 'rinse-off', quantity: 'max', value: 0.1,
        sumGroup: 'tagetes', source: 'memory', confidence: 'memory',
        note: 'Retained entry of Regulation (EU) 2018/978.',
      },
      {
        id: 'tagetes-patula-gb-sun-protection', markets: ['GB'], use: 'leave-on', productType: 'sun-protection',
        quantity: 'prohibited', source: 'memory', confidence: 'memory',
        note: 'Retained entry of Regulation (EU) 2018/978.',
      },
      {
        id: 'tagetes-patula-gb-uv-exposure', markets: ['GB'], use: 'leave-on', productType: 'uv-exposure',
        quantity: 'prohibited', source: 'memory', confidence: 'memory',
        note: 'Retained entry of Regulation (EU) 2018/978.',
      },
      {
        id: 'tagetes-patula-gb-raw-alpha-terthienyl', markets: ['GB'], basis: 'raw-material', quantity: 'max',
        value: 0.35, asWhat: 'alpha-terthienyl', source: 'memory', confidence: 'memory',
        note: 'Retained entry of Regulation (EU) 2018/978.',
      },
    ],
    source: 'cosing3', confidence: 'read',
    note: 'Limit shared by Tagetes minuta and Tagetes patula. Tagetes erecta is prohibited (row tagetes-erecta).',
  },
  {
    id: 'methyl-n-methylanthranilate', name: 'Methyl-N-methylanthranilate',
    aliases: ['Methyl N-methylanthranilate', 'Dimethyl anthranilate', 'M-N-MA'], cas: ['85-91-6'], kind: 'restricted',
    annex: 'III', entry: '323',
    rules: [
      {
        id: 'methyl-n-methylanthranilate-eu-leave-on', markets: ['EU', 'NI'], use: 'leave-on', quantity: 'max',
        value: 0.1, source: 'cosing3', confidence: 'read',
      },
      {
        id: 'methyl-n-methylanthranilate-eu-rinse-off', markets: ['EU', 'NI'], use: 'rinse-off', quantity: 'max',
        value: 0.2, source: 'cosing3', confidence: 'read',
      },
      {
        id: 'methyl-n-methylanthranilate-eu-sun-protection', markets: ['EU', 'NI'], use: 'leave-on',
        productType: 'sun-protection', quantity: 'prohibited', source: 'cosing3', confidence: 'read',
      },
      {
        id: 'methyl-n-methylanthranilate-eu-uv-exposure', markets: ['EU', 'NI'], use: 'leave-on',
        productType: 'uv-exposure', quantity: 'prohibited', source: 'cosing3', confidence: 'read',
      },
      {
        id: 'methyl-n-methylanthranilate-eu-nitrosating', markets: ['EU', 'NI'], quantity: 'prohibited',
        onlyIf: 'with-nitrosating-agents', source: 'cosing3', confidence: 'read',
      },
      {
        id: 'methyl-n-methylanthranilate-eu-nitrosamine', markets: ['EU', 'NI'], quantity: 'max', value: 0.05,
        unit: 'mg-per-kg', asWhat: 'nitrosamines', source: 'cosing3', confidence: 'read',
        note: '50 ug/kg. The entry does not say whether in the substance or in the product.',
      },
    ],
    source: 'cosing3', confidence: 'read',
    note: 'In mandarin oil and petitgrain mandarin. Keep in nitrite-free containers. Great Britain: own row.',
  },
  {
    id: 'methyl-n-methylanthranilate-gb', name: 'Methyl-N-methylanthranilate',
    aliases: ['Methyl N-methylanthranilate', 'Dimethyl anthranilate', 'M-N-MA'], cas: ['85-91-6'], kind: 'restricted',
    annex: 'III', entry: '321',
    rules: [
      {
        id: 'methyl-n-methylanthranilate-gb-gb-leave-on', markets: ['GB'], use: 'leave-on', quantity: 'max',
        value: 0.1, from: '2024-07-06', until: '2026-07-06', source: 'si2023_836', confidence: 'read-secondary',
      },
      {
        id: 'methyl-n-methylanthranilate-gb-gb-rinse-off', markets: ['GB'], use: 'rinse-off', quantity: 'max',
        value: 0.2, from: '2024-07-06', until: '2026-07-06', source: 'si2023_836', confidence: 'read-secondary',
      },
      {
        id: 'methyl-n-methylanthranilate-gb-gb-sun-protection', markets: ['GB'], use: 'leave-on',
        productType: 'sun-protection', quantity: 'prohibited', from: '2024-07-06', until: '2026-07-06',
        source: 'si2023_836', confidence: 'read-secondary',
      },
      {
        id: 'methyl-n-methylanthranilate-gb-gb-uv-exposure', markets: ['GB'], use: 'leave-on',
        productType: 'uv-exposure', quantity: 'prohibited', from: '2024-07-06', until: '2026-07-06',
        source: 'si2023_836', confidence: 'read-secondary',
      },
      {
        id: 'methyl-n-methylanthranilate-gb-gb-nitrosating', markets: ['GB'], quantity: 'prohibited',
        from: '2024-07-06', until: '2026-07-06', onlyIf: 'with-nitrosating-agents', source: 'si2023_836',
        confidence: 'read-secondary',
      },
      {
        id: 'methyl-n-methylanthranilate-gb-gb-nitrosamine', markets: ['GB'], quantity: 'max', value: 0.05,
        unit: 'mg-per-kg', asWhat: 'nitrosamines', from: '2024-07-06', until: '2026-07-06', source: 'si2023_836',
        confidence: 'read-secondary',
        note: '50 ug/kg. The entry does not say whether in the substance or in the product.',
      },
    ],
    source: 'si2023_836', confidence: 'read-secondary',
    note: "Great Britain's own entry. Keep in nitrite-free containers. Entry number from trade notices, not confirmed.",
  },
  {
    id: 'methyl-salicylate-eu', name: 'Methyl Salicylate', aliases: ['Methyl 2-hydroxybenzoate'], cas: ['119-36-8'],
    kind: 'restricted', annex: 'III', entry: '324',
    rules: [
      {
        id: 'methyl-salicylate-eu-leave-on', markets: ['EU', 'NI'], use: 'leave-on', quantity: 'max', value: 0.06,
        source: 'cosing3', confidence: 'read',
        note: 'Leave-on skin (not face make-up, spray body lotion, spray deodorant, hydroalcoholic fragrance) and non-spray leave-on hair products.',
      },
      {
        id: 'methyl-salicylate-eu-face-make-up', markets: ['EU', 'NI'], use: 'leave-on', bodyPart: 'face',
        productType: 'face-make-up', quantity: 'max', value: 0.05, source: 'cosing3', confidence: 'read',
      },
      {
        id: 'methyl-salicylate-eu-eye-make-up', markets: ['EU', 'NI'], use: 'leave-on', bodyPart: 'eye',
        productType: 'eye-make-up', quantity: 'max', value: 0.002, source: 'cosing3', confidence: 'read',
      },
      {
        id: 'methyl-salicylate-eu-eye-make-up-remover', markets: ['EU', 'NI'], bodyPart: 'eye',
        productType: 'make-up-remover', quantity: 'max', value: 0.002, source: 'cosing3', confidence: 'read',
        note: "'Eye make-up and remover'.",
      },
      {
        id: 'methyl-salicylate-eu-hair-spray', markets: ['EU', 'NI'], use: 'leave-on', bodyPart: 'hair',
        productType: 'hair-spray', quantity: 'max', value: 0.009, source: 'cosing3', confidence: 'read',
      },
      {
        id: 'methyl-salicylate-eu-deodorant-spray', markets: ['EU', 'NI'], use: 'leave-on',
        productType: 'deodorant-spray', quantity: 'max', value: 0.003, source: 'cosing3', confidence: 'read',
      },
      {
        id: 'methyl-salicylate-eu-body-lotion-spray', markets: ['EU', 'NI'], use: 'leave-on', bodyPart: 'body',
        productType: 'body-lotion-spray', quantity: 'max', value: 0.04, source: 'cosing3', confidence: 'read',
      },
      {
        id: 'methyl-salicylate-eu-rinse-off', markets: ['EU', 'NI'], use: 'rinse-off', quantity: 'max', value: 0.06,
        source: 'cosing3', confidence: 'read', note: 'Rinse-off skin (not hand wash) and rinse-off hair.',
      },
      {
        id: 'methyl-salicylate-eu-hand-wash', markets: ['EU', 'NI'], use: 'rinse-off', bodyPart: 'hand',
        productType: 'hand-wash', quantity: 'max', value: 0.6, source: 'cosing3', confidence: 'read',
      },
      {
        id: 'methyl-salicylate-eu-hydroalcoholic-fragrance', markets: ['EU', 'NI'], use: 'leave-on',
        productType: 'hydroalcoholic-fragrance', quantity: 'max', value: 0.6, source: 'cosing3', confidence: 'read',
      },
      {
        id: 'methyl-salicylate-eu-lip', markets: ['EU', 'NI'], bodyPart: 'lip', quantity: 'max', value: 0.03,
        source: 'cosing3', confidence: 'read',
      },
      {
        id: 'methyl-salicylate-eu-toothpaste', markets: ['EU', 'NI'], use: 'rinse-off', bodyPart: 'oral',
        productType: 'toothpaste', quantity: 'max', value: 2.52, source: 'cosing3', confidence: 'read',
      },
      {
        id: 'methyl-salicylate-eu-mouthwash-6-to-10', markets: ['EU', 'NI'], use: 'rinse-off', bodyPart: 'oral',
        productType: 'mouthwash', minAgeMonths: 72, maxAgeMonths: 120, quantity: 'max', value: 0.1, source: 'cosing3',
        confidence: 'read',
        note: "'6-10 years'; whether the year between the 10th and the 11th birthday still belongs here is not said.",
      },
      {
        id: 'methyl-salicylate-eu-mouthwash-over-10', markets: ['EU', 'NI'], use: 'rinse-off', bodyPart: 'oral',
        productType: 'mouthwash', minAgeMonths: 120, quantity: 'max', value: 0.6, source: 'cosing3',
        confidence: 'read',
      },
      {
        id: 'methyl-salicylate-eu-mouth-spray', markets: ['EU', 'NI'], bodyPart: 'oral', productType: 'mouth-spray',
        quantity: 'max', value: 0.65, source: 'cosing3', confidence: 'read',
      },
      {
        id: 'methyl-salicylate-eu-under-6', markets: ['EU', 'NI'], exceptProductTypes: ['toothpaste'],
        maxAgeMonths: 72, quantity: 'prohibited', source: 'cosing3', confidence: 'read',
        note: 'Not in products for children under 6 years, except toothpaste.',
      },
    ],
    source: 'cosing3', confidence: 'read',
    note: 'Great Britain has its own row. Wintergreen and sweet birch oil are nearly pure methyl salicylate; ylang and tuberose carry some. Same figures in Regulation (EU) 2022/1531 (eu1531). Also an allergen entry.',
  },
  {
    id: 'methyl-salicylate-gb', name: 'Methyl Salicylate', aliases: ['Methyl 2-hydroxybenzoate'], cas: ['119-36-8'],
    kind: 'restricted', annex: 'III', entry: '324',
    rules: [
      {
        id: 'methyl-salicylate-gb-rinse-off-6-to-12-months', markets: ['GB'], use: 'rinse-off', minAgeMonths: 6,
        maxAgeMonths: 12, quantity: 'max', value: 0.02, from: '2025-09-30', until: '2026-03-31', source: 'si2025_413',
        confidence: 'read', note: 'Rinse-off skin and hair (not hand wash).',
      },
      {
        id: 'methyl-salicylate-gb-rinse-off', markets: ['GB'], use: 'rinse-off', minAgeMonths: 12, quantity: 'max',
        value: 0.06, from: '2025-09-30', until: '2026-03-31', source: 'si2025_413', confidence: 'read',
        note: 'Rinse-off skin and hair (not hand wash).',
      },
      {
        id: 'methyl-salicylate-gb-rinse-off-under-6-months', markets: ['GB'], use: 'rinse-off', maxAgeMonths: 6,
        quantity: 'max', value: null, from: '2025-09-30', until: '2026-03-31', source: 'si2025_413',
        confidence: 'read', note: 'The entry gives no figure below 6 months.',
      },
      {
        id: 'methyl-salicylate-gb-hand-wash-6-to-12-months', markets: ['GB'], use: 'rinse-off', bodyPart: 'hand',
        productType: 'hand-wash', minAgeMonths: 6, maxAgeMonths: 12, quantity: 'max', value: 0.02, from: '2025-09-30',
        until: '2026-03-31', source: 'si2025_413', confidence: 'read',
      },
      {
        id: 'methyl-salicylate-gb-hand-wash', markets: ['GB'], use: 'rinse-off', bodyPart: 'hand',
        productType: 'hand-wash', minAgeMonths: 12, quantity: 'max', value: 0.6, from: '2025-09-30',
        until: '2026-03-31', source: 'si2025_413', confidence: 'read',
      },
      {
        id: 'methyl-salicylate-gb-hand-wash-under-6-months', markets: ['GB'], use: 'rinse-off', bodyPart: 'hand',
        productType: 'hand-wash', maxAgeMonths: 6, quantity: 'max', value: null, from: '2025-09-30',
        until: '2026-03-31', source: 'si2025_413', confidence: 'read',
        note: 'The entry gives no figure below 6 months.',
      },
      {
        id: 'methyl-salicylate-gb-leave-on-6-to-12-months', markets: ['GB'], use: 'leave-on', minAgeMonths: 6,
        maxAgeMonths: 12, quantity: 'max', value: 0.02, from: '2025-09-30', until: '2026-03-31', source: 'si2025_413',
        confidence: 'read',
        note: 'Leave-on skin (not face make-up, spray and aerosol body lotion and deodorant, hydroalcoholic fragrance) and non-aerosol hair.',
      },
      {
        id: 'methyl-salicylate-gb-leave-on', markets: ['GB'], use: 'leave-on', minAgeMonths: 12, quantity: 'max',
        value: 0.06, from: '2025-09-30', until: '2026-03-31', source: 'si2025_413', confidence: 'read',
        note: 'Leave-on skin (not face make-up, spray and aerosol body lotion and deodorant, hydroalcoholic fragrance) and non-aerosol hair.',
      },
      {
        id: 'methyl-salicylate-gb-leave-on-under-6-months', markets: ['GB'], use: 'leave-on', maxAgeMonths: 6,
        quantity: 'max', value: null, from: '2025-09-30', until: '2026-03-31', source: 'si2025_413',
        confidence: 'read', note: 'The entry gives no figure below 6 months.',
      },
      {
        id: 'methyl-salicylate-gb-lip-6-to-12-months', markets: ['GB'], bodyPart: 'lip', minAgeMonths: 6,
        maxAgeMonths: 12, quantity: 'max', value: 0.02, from: '2025-09-30', until: '2026-03-31', source: 'si2025_413',
        confidence: 'read',
      },
      {
        id: 'methyl-salicylate-gb-lip', markets: ['GB'], bodyPart: 'lip', minAgeMonths: 12, quantity: 'max',
        value: 0.03, from: '2025-09-30', until: '2026-03-31', source: 'si2025_413', confidence: 'read',
      },
      {
        id: 'methyl-salicylate-gb-lip-under-6-months', markets: ['GB'], bodyPart: 'lip', maxAgeMonths: 6,
        quantity: 'max', value: null, from: '2025-09-30', until: '2026-03-31', source: 'si2025_413',
        confidence: 'read', note: 'The entry gives no figure below 6 months.',
      },
      {
        id: 'methyl-salicylate-gb-face-make-up', markets: ['GB'], use: 'leave-on', bodyPart: 'face',
        productType: 'face-make-up', quantity: 'max', value: 0.05, from: '2025-09-30', until: '2026-03-31',
        source: 'si2025_413', confidence: 'read',
      },
      {
        id: 'methyl-salicylate-gb-eye-make-up', markets: ['GB'], use: 'leave-on', bodyPart: 'eye',
        productType: 'eye-make-up', quantity: 'max', value: 0.002, from: '2025-09-30', until: '2026-03-31',
        source: 'si2025_413', confidence: 'read',
      },
      {
        id: 'methyl-salicylate-gb-eye-make-up-remover', markets: ['GB'], bodyPart: 'eye',
        productType: 'make-up-remover', quantity: 'max', value: 0.002, from: '2025-09-30', until: '2026-03-31',
        source: 'si2025_413', confidence: 'read', note: "'Eye make-up products and make-up remover'.",
      },
      {
        id: 'methyl-salicylate-gb-toothpaste', markets: ['GB'], use: 'rinse-off', bodyPart: 'oral',
        productType: 'toothpaste', quantity: 'max', value: 2.5, from: '2025-09-30', until: '2026-03-31',
        source: 'si2025_413', confidence: 'read',
      },
      {
        id: 'methyl-salicylate-gb-mouthwash-6-to-10', markets: ['GB'], use: 'rinse-off', bodyPart: 'oral',
        productType: 'mouthwash', minAgeMonths: 72, maxAgeMonths: 120, quantity: 'max', value: 0.1,
        from: '2025-09-30', until: '2026-03-31', source: 'si2025_413', confidence: 'read',
        note: "'6 to 10 years' against 'above 10 years'.",
      },
      {
        id: 'methyl-salicylate-gb-mouthwash-over-10', markets: ['GB'], use: 'rinse-off', bodyPart: 'oral',
        productType: 'mouthwash', minAgeMonths: 120, quantity: 'max', value: 0.4, from: '2025-09-30',
        until: '2026-03-31', source: 'si2025_413', confidence: 'read',
      },
      {
        id: 'methyl-salicylate-gb-mouth-spray', markets: ['GB'], bodyPart: 'oral', productType: 'mouth-spray',
        quantity: 'max', value: 0.65, from: '2025-09-30', until: '2026-03-31', source: 'si2025_413',
        confidence: 'read',
      },
      {
        id: 'methyl-salicylate-gb-hydroalcoholic-fragrance', markets: ['GB'], use: 'leave-on',
        productType: 'hydroalcoholic-fragrance', quantity: 'max', value: 0.6, from: '2025-09-30', until: '2026-03-31',
        source: 'si2025_413', confidence: 'read',
      },
      {
        id: 'methyl-salicylate-gb-deodorant-spray', markets: ['GB'], use: 'leave-on', productType: 'deodorant-spray',
        quantity: 'max', value: 0.003, from: '2025-09-30', until: '2026-03-31', source: 'si2025_413',
        confidence: 'read',
      },
      {
        id: 'methyl-salicylate-gb-hair-spray', markets: ['GB'], use: 'leave-on', bodyPart: 'hair',
        productType: 'hair-spray', quantity: 'max', value: 0.009, from: '2025-09-30', until: '2026-03-31',
        source: 'si2025_413', confidence: 'read',
      },
      {
        id: 'methyl-salicylate-gb-body-lotion-spray', markets: ['GB'], use: 'leave-on', bodyPart: 'body',
        productType: 'body-lotion-spray', quantity: 'max', value: 0.04, from: '2025-09-30', until: '2026-03-31',
        source: 'si2025_413', confidence: 'read',
      },
    ],
    source: 'si2025_413', confidence: 'read',
    note: "Great Britain's own entry: no ban under 6 years, no allergen naming. Old stock placed on the market on or before 30 September 2025.",
  },
  {
    id: 'hexyl-salicylate', name: 'Hexyl Salicylate', aliases: ['Hexyl 2-hydroxybenzoate'], cas: ['6259-76-3'],
    kind: 'restricted', annex: 'III',
    rules: [
      {
        id: 'hexyl-salicylate-eu-hydroalcoholic-fragrance', markets: ['EU', 'NI'], use: 'leave-on',
        productType: 'hydroalcoholic-fragrance', minAgeMonths: 36, quantity: 'max', value: 2, from: '2026-05-01',
        source: 'eu2026_78', confidence: 'read-secondary',
      },
      {
        id: 'hexyl-salicylate-eu-rinse-off', markets: ['EU', 'NI'], use: 'rinse-off', minAgeMonths: 36,
        quantity: 'max', value: 0.5, from: '2026-05-01', source: 'eu2026_78', confidence: 'read-secondary',
      },
      {
        id: 'hexyl-salicylate-eu-leave-on', markets: ['EU', 'NI'], use: 'leave-on', minAgeMonths: 36, quantity: 'max',
        value: 0.3, from: '2026-05-01', source: 'eu2026_78', confidence: 'read-secondary',
      },
      {
        id: 'hexyl-salicylate-eu-toothpaste', markets: ['EU', 'NI'], use: 'rinse-off', bodyPart: 'oral',
        productType: 'toothpaste', quantity: 'max', value: 0.001, from: '2026-05-01', source: 'eu2026_78',
        confidence: 'read-secondary',
      },
      {
        id: 'hexyl-salicylate-eu-mouthwash', markets: ['EU', 'NI'], use: 'rinse-off', bodyPart: 'oral',
        productType: 'mouthwash', minAgeMonths: 36, quantity: 'max', value: 0.001, from: '2026-05-01',
        warning: 'Not to be used for children under 3 years of age', source: 'eu2026_78',
        confidence: 'read-secondary',
      },
      {
        id: 'hexyl-salicylate-eu-under-3-shower-gel', markets: ['EU', 'NI'], use: 'rinse-off', bodyPart: 'body',
        productType: 'shower-gel', maxAgeMonths: 36, quantity: 'max', value: 0.1, from: '2026-05-01',
        source: 'eu2026_78', confidence: 'read-secondary',
      },
      {
        id: 'hexyl-salicylate-eu-under-3-hand-wash', markets: ['EU', 'NI'], use: 'rinse-off', bodyPart: 'hand',
        productType: 'hand-wash', maxAgeMonths: 36, quantity: 'max', value: 0.1, from: '2026-05-01',
        source: 'eu2026_78', confidence: 'read-secondary',
      },
      {
        id: 'hexyl-salicylate-eu-under-3-shampoo', markets: ['EU', 'NI'], use: 'rinse-off', bodyPart: 'hair',
        productType: 'shampoo', maxAgeMonths: 36, quantity: 'max', value: 0.1, from: '2026-05-01',
        source: 'eu2026_78', confidence: 'read-secondary',
      },
      {
        id: 'hexyl-salicylate-eu-under-3-hair-conditioner', markets: ['EU', 'NI'], bodyPart: 'hair',
        productType: 'hair-conditioner', maxAgeMonths: 36, quantity: 'max', value: 0.1, from: '2026-05-01',
        source: 'eu2026_78', confidence: 'read-secondary',
      },
      {
        id: 'hexyl-salicylate-eu-under-3-body-lotion', markets: ['EU', 'NI'], use: 'leave-on', bodyPart: 'body',
        productType: 'body-lotion', maxAgeMonths: 36, quantity: 'max', value: 0.1, from: '2026-05-01',
        source: 'eu2026_78', confidence: 'read-secondary',
      },
      {
        id: 'hexyl-salicylate-eu-under-3-face-cream', markets: ['EU', 'NI'], use: 'leave-on', bodyPart: 'face',
        productType: 'face-cream', maxAgeMonths: 36, quantity: 'max', value: 0.1, from: '2026-05-01',
        source: 'eu2026_78', confidence: 'read-secondary',
      },
      {
        id: 'hexyl-salicylate-eu-under-3-hand-cream', markets: ['EU', 'NI'], use: 'leave-on', bodyPart: 'hand',
        productType: 'hand-cream', maxAgeMonths: 36, quantity: 'max', value: 0.1, from: '2026-05-01',
        source: 'eu2026_78', confidence: 'read-secondary',
      },
      {
        id: 'hexyl-salicylate-eu-under-3-lip-product', markets: ['EU', 'NI'], bodyPart: 'lip',
        productType: 'lip-product', maxAgeMonths: 36, quantity: 'max', value: 0.1, from: '2026-05-01',
        source: 'eu2026_78', confidence: 'read-secondary',
      },
      {
        id: 'hexyl-salicylate-eu-under-3-fragrance', markets: ['EU', 'NI'], use: 'leave-on', productType: 'fragrance',
        maxAgeMonths: 36, quantity: 'max', value: 0.1, from: '2026-05-01', source: 'eu2026_78',
        confidence: 'read-secondary',
      },
      {
        id: 'hexyl-salicylate-eu-under-3-other', markets: ['EU', 'NI'],
        exceptProductTypes: [
          'shower-gel', 'hand-wash', 'shampoo', 'hair-conditioner', 'body-lotion', 'face-cream', 'hand-cream',
          'lip-product', 'fragrance', 'toothpaste',
        ],
        maxAgeMonths: 36, quantity: 'prohibited', from: '2026-05-01', source: 'eu2026_78',
        confidence: 'read-secondary', note: 'Not in other preparations for children under 3 years.',
      },
    ],
    source: 'eu2026_78', confidence: 'read-secondary',
    note: 'New entry of 2026, number not read. Product lists as described in public notices of Regulation (EU) 2026/78; the Official Journal text was not read. Great Britain: own row. Common in perfume oils.',
  },
  {
    id: 'hexyl-salicylate-gb', name: 'Hexyl Salicylate', aliases: ['Hexyl 2-hydroxybenzoate'], cas: ['6259-76-3'],
    kind: 'restricted', annex: 'III', entry: '325',
    rules: [
      {
        id: 'hexyl-salicylate-gb-gb-hydroalcoholic-fragrance', markets: ['GB'], use: 'leave-on',
        productType: 'hydroalcoholic-fragrance', minAgeMonths: 36, quantity: 'max', value: 2, from: '2026-08-15',
        until: '2027-02-14', source: 'gb2026', confidence: 'read-secondary',
      },
      {
        id: 'hexyl-salicylate-gb-gb-rinse-off', markets: ['GB'], use: 'rinse-off', minAgeMonths: 36, quantity: 'max',
        value: 0.5, from: '2026-08-15', until: '2027-02-14', source: 'gb2026', confidence: 'read-secondary',
      },
      {
        id: 'hexyl-salicylate-gb-gb-leave-on', markets: ['GB'], use: 'leave-on', minAgeMonths: 36, quantity: 'max',
        value: 0.3, from: '2026-08-15', until: '2027-02-14', source: 'gb2026', confidence: 'read-secondary',
      },
      {
        id: 'hexyl-salicylate-gb-gb-toothpaste', markets: ['GB'], use: 'rinse-off', bodyPart: 'oral',
        productType: 'toothpaste', quantity: 'max', value: 0.001, from: '2026-08-15', until: '2027-02-14',
        source: 'gb2026', confidence: 'read-secondary',
      },
      {
        id: 'hexyl-salicylate-gb-gb-mouthwash', markets: ['GB'], use: 'rinse-off', bodyPart: 'oral',
        productType: 'mouthwash', quantity: 'max', value: 0.001, from: '2026-08-15', until: '2027-02-14',
        source: 'gb2026', confidence: 'read-secondary',
      },
      {
        id: 'hexyl-salicylate-gb-gb-under-3-shower-gel', markets: ['GB'], use: 'rinse-off', bodyPart: 'body',
        productType: 'shower-gel', maxAgeMonths: 36, quantity: 'max', value: 0.1, from: '2026-08-15',
        until: '2027-02-14', source: 'gb2026', confidence: 'read-secondary',
      },
      {
        id: 'hexyl-salicylate-gb-gb-under-3-hand-wash', markets: ['GB'], use: 'rinse-off', bodyPart: 'hand',
        productType: 'hand-wash', maxAgeMonths: 36, quantity: 'max', value: 0.1, from: '2026-08-15',
        until: '2027-02-14', source: 'gb2026', confidence: 'read-secondary',
      },
      {
        id: 'hexyl-salicylate-gb-gb-under-3-shampoo', markets: ['GB'], use: 'rinse-off', bodyPart: 'hair',
        productType: 'shampoo', maxAgeMonths: 36, quantity: 'max', value: 0.1, from: '2026-08-15',
        until: '2027-02-14', source: 'gb2026', confidence: 'read-secondary',
      },
      {
        id: 'hexyl-salicylate-gb-gb-under-3-hair-conditioner', markets: ['GB'], bodyPart: 'hair',
        productType: 'hair-conditioner', maxAgeMonths: 36, quantity: 'max', value: 0.1, from: '2026-08-15',
        until: '2027-02-14', source: 'gb2026', confidence: 'read-secondary',
      },
      {
        id: 'hexyl-salicylate-gb-gb-under-3-body-lotion', markets: ['GB'], use: 'leave-on', bodyPart: 'body',
        productType: 'body-lotion', maxAgeMonths: 36, quantity: 'max', value: 0.1, from: '2026-08-15',
        until: '2027-02-14', source: 'gb2026', confidence: 'read-secondary',
      },
      {
        id: 'hexyl-salicylate-gb-gb-under-3-face-cream', markets: ['GB'], use: 'leave-on', bodyPart: 'face',
        productType: 'face-cream', maxAgeMonths: 36, quantity: 'max', value: 0.1, from: '2026-08-15',
        until: '2027-02-14', source: 'gb2026', confidence: 'read-secondary',
      },
      {
        id: 'hexyl-salicylate-gb-gb-under-3-hand-cream', markets: ['GB'], use: 'leave-on', bodyPart: 'hand',
        productType: 'hand-cream', maxAgeMonths: 36, quantity: 'max', value: 0.1, from: '2026-08-15',
        until: '2027-02-14', source: 'gb2026', confidence: 'read-secondary',
      },
      {
        id: 'hexyl-salicylate-gb-gb-under-3-lip-product', markets: ['GB'], bodyPart: 'lip',
        productType: 'lip-product', maxAgeMonths: 36, quantity: 'max', value: 0.1, from: '2026-08-15',
        until: '2027-02-14', source: 'gb2026', confidence: 'read-secondary',
      },
      {
        id: 'hexyl-salicylate-gb-gb-under-3-fragrance', markets: ['GB'], use: 'leave-on', productType: 'fragrance',
        maxAgeMonths: 36, quantity: 'max', value: 0.1, from: '2026-08-15', until: '2027-02-14', source: 'gb2026',
        confidence: 'read-secondary',
      },
      {
        id: 'hexyl-salicylate-gb-gb-under-3-other', markets: ['GB'],
        exceptProductTypes: [
          'shower-gel', 'hand-wash', 'shampoo', 'hair-conditioner', 'body-lotion', 'face-cream', 'hand-cream',
          'lip-product', 'fragrance', 'toothpaste', 'mouthwash',
        ],
        maxAgeMonths: 36, quantity: 'prohibited', from: '2026-08-15', until: '2027-02-14', source: 'memory',
        confidence: 'memory',
        note: 'Whether the instrument bans other preparations for children under 3 years was not read; kept as the careful reading.',
      },
    ],
    source: 'gb2026', confidence: 'read-secondary',
    note: "Great Britain's own entry, near-identical to the EU's: toothpaste and mouthwash also for children under 3, no mouthwash warning. Finer product categories than in the EU; the instrument's table was not read.",
  },
  {
    id: 'retinol', name: 'Retinol; Retinyl Acetate; Retinyl Palmitate',
    aliases: ['Retinol', 'Retinyl Acetate', 'Retinyl Palmitate', 'Vitamin A'],
    cas: ['11103-57-4', '68-26-8', '127-47-9', '79-81-2'], kind: 'restricted', annex: 'III', entry: '376',
    rules: [
      {
        id: 'retinol-eu-body-lotion', markets: ['EU', 'NI'], use: 'leave-on', bodyPart: 'body',
        productType: 'body-lotion', quantity: 'max', value: 0.05, asWhat: 'retinol equivalents', from: '2025-11-01',
        until: '2027-04-30', warning: 'Contains Vitamin A. Consider your daily intake before use.', source: 'cosing3',
        confidence: 'read', note: 'Old stock may not be made available from 2027-05-01.',
      },
      {
        id: 'retinol-eu-other', markets: ['EU', 'NI'], quantity: 'max', value: 0.3, asWhat: 'retinol equivalents',
        from: '2025-11-01', until: '2027-04-30',
        warning: 'Contains Vitamin A. Consider your daily intake before use.', source: 'cosing3', confidence: 'read',
        note: 'Old stock may not be made available from 2027-05-01.',
      },
      {
        id: 'retinol-gb-not-known', markets: ['GB'], quantity: 'max', value: null, asWhat: 'retinol equivalents',
        source: 'memory', confidence: 'memory', note: 'No adoption for Great Britain found; not proved.',
      },
    ],
    source: 'cosing3', confidence: 'read',
    note: '1 % retinyl palmitate is about 0.546 % RE, 1 % retinyl acetate about 0.872 % RE (from molar masses). Rosehip and sea buckthorn oils carry carotenoids, not retinol.',
  },
  {
    id: 'alpha-arbutin', name: 'Alpha-Arbutin', cas: ['84380-01-8'], kind: 'restricted', annex: 'III', entry: '377',
    rules: [
      {
        id: 'alpha-arbutin-eu-face-cream', markets: ['EU', 'NI'], use: 'leave-on', bodyPart: 'face',
        productType: 'face-cream', quantity: 'max', value: 2, from: '2025-02-01', until: '2025-10-31',
        source: 'cosing3', confidence: 'read', note: 'Old stock may not be made available from 2025-11-01.',
      },
      {
        id: 'alpha-arbutin-eu-body-lotion', markets: ['EU', 'NI'], use: 'leave-on', bodyPart: 'body',
        productType: 'body-lotion', quantity: 'max', value: 0.5, from: '2025-02-01', until: '2025-10-31',
        source: 'cosing3', confidence: 'read', note: 'Old stock may not be made available from 2025-11-01.',
      },
      {
        id: 'alpha-arbutin-gb-not-known', markets: ['GB'], quantity: 'max', value: null, source: 'memory',
        confidence: 'memory', note: 'No adoption for Great Britain found; not proved.',
      },
    ],
    source: 'cosing3', confidence: 'read', note: 'Hydroquinone only as unavoidable trace.',
  },
  {
    id: 'arbutin', name: 'Arbutin', aliases: ['beta-Arbutin'], cas: ['497-76-7'], kind: 'restricted', annex: 'III',
    entry: '378',
    rules: [
      {
        id: 'arbutin-eu-face-cream', markets: ['EU', 'NI'], use: 'leave-on', bodyPart: 'face',
        productType: 'face-cream', quantity: 'max', value: 7, from: '2025-02-01', until: '2025-10-31',
        source: 'cosing3', confidence: 'read', note: 'Old stock may not be made available from 2025-11-01.',
      },
      {
        id: 'arbutin-gb-not-known', markets: ['GB'], quantity: 'max', value: null, source: 'memory',
        confidence: 'memory', note: 'No adoption for Great Britain found; not proved.',
      },
    ],
    source: 'cosing3', confidence: 'read', note: 'Hydroquinone only as unavoidable trace.',
  },
  {
    id: 'kojic-acid', name: 'Kojic Acid', cas: ['501-30-4'], kind: 'restricted', annex: 'III', entry: '375',
    rules: [
      {
        id: 'kojic-acid-eu-face', markets: ['EU', 'NI'], bodyPart: 'face', quantity: 'max', value: 1,
        from: '2025-02-01', until: '2025-10-31', source: 'cosing3', confidence: 'read',
        note: 'Old stock may not be made available from 2025-11-01.',
      },
      {
        id: 'kojic-acid-eu-hand', markets: ['EU', 'NI'], bodyPart: 'hand', quantity: 'max', value: 1,
        from: '2025-02-01', until: '2025-10-31', source: 'cosing3', confidence: 'read',
        note: 'Old stock may not be made available from 2025-11-01.',
      },
      {
        id: 'kojic-acid-gb-not-known', markets: ['GB'], quantity: 'max', value: null, source: 'memory',
        confidence: 'memory', note: 'No adoption for Great Britain found; not proved.',
      },
    ],
    source: 'cosing3', confidence: 'read',
  },
  {
    id: 'genistein', name: 'Genistein', cas: ['446-72-0'], kind: 'restricted', annex: 'III', entry: '373',
    rules: [
      {
        id: 'genistein-eu-any', markets: ['EU', 'NI'], quantity: 'max', value: 0.007, from: '2025-02-01',
        until: '2025-10-31', source: 'cosing3', confidence: 'read',
        note: 'Old stock may not be made available from 2025-11-01.',
      },
      {
        id: 'genistein-gb-not-known', markets: ['GB'], quantity: 'max', value: null, source: 'memory',
        confidence: 'memory', note: 'No adoption for Great Britain found; not proved.',
      },
    ],
    source: 'cosing3', confidence: 'read', note: 'Soy isoflavone extracts.',
  },
  {
    id: 'daidzein', name: 'Daidzein', cas: ['486-66-8'], kind: 'restricted', annex: 'III', entry: '374',
    rules: [
      {
        id: 'daidzein-eu-any', markets: ['EU', 'NI'], quantity: 'max', value: 0.02, from: '2025-02-01',
        until: '2025-10-31', source: 'cosing3', confidence: 'read',
        note: 'Old stock may not be made available from 2025-11-01.',
      },
      {
        id: 'daidzein-gb-not-known', markets: ['GB'], quantity: 'max', value: null, source: 'memory',
        confidence: 'memory', note: 'No adoption for Great Britain found; not proved.',
      },
    ],
    source: 'cosing3', confidence: 'read', note: 'Soy isoflavone extracts.',
  },
  {
    id: 'salicylic-acid', name: 'Salicylic Acid (not as preservative)', aliases: ['Salicylic Acid'], cas: ['69-72-7'],
    kind: 'restricted', annex: 'III', entry: '98',
    rules: [
      {
        id: 'salicylic-acid-rinse-off-hair', markets: ['EU', 'NI', 'GB'], use: 'rinse-off', bodyPart: 'hair',
        quantity: 'max', value: 3, warning: 'Not to be used for children under 3 years of age', source: 'cosing3',
        confidence: 'read',
        note: 'Warning only on products that might be used for children under 3 years. Great Britain: same limits since December 2022.',
      },
      {
        id: 'salicylic-acid-other', markets: ['EU', 'NI', 'GB'], quantity: 'max', value: 2,
        warning: 'Not to be used for children under 3 years of age', source: 'cosing3', confidence: 'read',
        note: 'Warning only on products that might be used for children under 3 years. Great Britain: same limits since December 2022.',
      },
      {
        id: 'salicylic-acid-body-lotion', markets: ['EU', 'NI', 'GB'], use: 'leave-on', bodyPart: 'body',
        productType: 'body-lotion', quantity: 'max', value: 0.5,
        warning: 'Not to be used for children under 3 years of age', source: 'cosing3', confidence: 'read',
        note: 'Warning only on products that might be used for children under 3 years. Great Britain: same limits since December 2022.',
      },
      {
        id: 'salicylic-acid-eye-shadow', markets: ['EU', 'NI', 'GB'], use: 'leave-on', bodyPart: 'eye',
        productType: 'eye-shadow', quantity: 'max', value: 0.5,
        warning: 'Not to be used for children under 3 years of age', source: 'cosing3', confidence: 'read',
        note: 'Warning only on products that might be used for children under 3 years. Great Britain: same limits since December 2022.',
      },
      {
        id: 'salicylic-acid-mascara', markets: ['EU', 'NI', 'GB'], use: 'leave-on', bodyPart: 'eye',
        productType: 'mascara', quantity: 'max', value: 0.5,
        warning: 'Not to be used for children under 3 years of age', source: 'cosing3', confidence: 'read',
        note: 'Warning only on products that might be used for children under 3 years. Great Britain: same limits since December 2022.',
      },
      {
        id: 'salicylic-acid-eyeliner', markets: ['EU', 'NI', 'GB'], use: 'leave-on', bodyPart: 'eye',
        productType: 'eyeliner', quantity: 'max', value: 0.5,
        warning: 'Not to be used for children under 3 years of age', source: 'cosing3', confidence: 'read',
        note: 'Warning only on products that might be used for children under 3 years. Great Britain: same limits since December 2022.',
      },
      {
        id: 'salicylic-acid-lipstick', markets: ['EU', 'NI', 'GB'], use: 'leave-on', bodyPart: 'lip',
        productType: 'lipstick', quantity: 'max', value: 0.5,
        warning: 'Not to be used for children under 3 years of age', source: 'cosing3', confidence: 'read',
        note: 'Warning only on products that might be used for children under 3 years. Great Britain: same limits since December 2022.',
      },
      {
        id: 'salicylic-acid-roll-on-deodorant', markets: ['EU', 'NI', 'GB'], use: 'leave-on',
        productType: 'roll-on-deodorant', quantity: 'max', value: 0.5,
        warning: 'Not to be used for children under 3 years of age', source: 'cosing3', confidence: 'read',
        note: 'Warning only on products that might be used for children under 3 years. Great Britain: same limits since December 2022.',
      },
      {
        id: 'salicylic-acid-under-3', markets: ['EU', 'NI', 'GB'], maxAgeMonths: 36, quantity: 'prohibited',
        source: 'cosing3', confidence: 'read', note: 'Great Britain: same limits since December 2022.',
      },
      {
        id: 'salicylic-acid-oral', markets: ['EU', 'NI', 'GB'], bodyPart: 'oral', quantity: 'prohibited',
        source: 'cosing3', confidence: 'read', note: 'Great Britain: same limits since December 2022.',
      },
      {
        id: 'salicylic-acid-lungs', markets: ['EU', 'NI', 'GB'], quantity: 'prohibited', onlyIf: 'lung-exposure',
        source: 'cosing3', confidence: 'read', note: 'Great Britain: same limits since December 2022.',
      },
    ],
    source: 'cosing3', confidence: 'read',
    note: 'Purpose must be apparent from the product. Levels include any use as preservative (row salicylic-preservative).',
  },
  {
    id: 'sodium-hydroxide', name: 'Sodium or potassium hydroxide',
    aliases: ['Sodium Hydroxide', 'Potassium Hydroxide', 'Caustic soda', 'Caustic potash', 'Lye'],
    cas: ['1310-73-2', '1310-58-3'], kind: 'restricted', annex: 'III', entry: '15a',
    rules: [
      {
        id: 'sodium-hydroxide-eu-cuticle-solvent', markets: ['EU', 'NI'], bodyPart: 'nail',
        productType: 'nail-cuticle-solvent', quantity: 'max', value: 5, source: 'cosing3', confidence: 'read',
      },
      {
        id: 'sodium-hydroxide-eu-straightener-consumer', markets: ['EU', 'NI'], bodyPart: 'hair',
        productType: 'hair-straightener', quantity: 'max', value: 2, onlyIf: 'consumer-use', source: 'cosing3',
        confidence: 'read',
      },
      {
        id: 'sodium-hydroxide-eu-straightener-professional', markets: ['EU', 'NI'], bodyPart: 'hair',
        productType: 'hair-straightener', quantity: 'max', value: 4.5, onlyIf: 'professional-use', source: 'cosing3',
        confidence: 'read',
      },
      {
        id: 'sodium-hydroxide-eu-callus-softener', markets: ['EU', 'NI'], bodyPart: 'foot',
        productType: 'callus-softener', quantity: 'max', value: 1.5, source: 'cosing3', confidence: 'read',
        note: 'Entry 15d.',
      },
      {
        id: 'sodium-hydroxide-eu-depilatory-ph', markets: ['EU', 'NI'], productType: 'depilatory', quantity: 'ph-max',
        value: 12.7, unit: 'ph', onlyIf: 'ph-adjuster', source: 'cosing3', confidence: 'read',
      },
      {
        id: 'sodium-hydroxide-eu-ph-adjuster', markets: ['EU', 'NI'], quantity: 'ph-max', value: 11, unit: 'ph',
        onlyIf: 'ph-adjuster', source: 'cosing3', confidence: 'read',
      },
      {
        id: 'sodium-hydroxide-gb-cuticle-solvent', markets: ['GB'], bodyPart: 'nail',
        productType: 'nail-cuticle-solvent', quantity: 'max', value: 5, source: 'memory', confidence: 'memory',
        note: 'Retained entry, taken as unchanged; not looked up entry by entry.',
      },
      {
        id: 'sodium-hydroxide-gb-straightener-consumer', markets: ['GB'], bodyPart: 'hair',
        productType: 'hair-straightener', quantity: 'max', value: 2, onlyIf: 'consumer-use', source: 'memory',
        confidence: 'memory', note: 'Retained entry, taken as unchanged; not looked up entry by entry.',
      },
      {
        id: 'sodium-hydroxide-gb-straightener-professional', markets: ['GB'], bodyPart: 'hair',
        productType: 'hair-straightener', quantity: 'max', value: 4.5, onlyIf: 'professional-use', source: 'memory',
        confidence: 'memory', note: 'Retained entry, taken as unchanged; not looked up entry by entry.',
      },
      {
        id: 'sodium-hydroxide-gb-callus-softener', markets: ['GB'], bodyPart: 'foot', productType: 'callus-softener',
        quantity: 'max', value: 1.5, source: 'memory', confidence: 'memory',
        note: 'Retained entry, taken as unchanged; not looked up entry by entry.',
      },
      {
        id: 'sodium-hydroxide-gb-depilatory-ph', markets: ['GB'], productType: 'depilatory', quantity: 'ph-max',
        value: 12.7, unit: 'ph', onlyIf: 'ph-adjuster', source: 'memory', confidence: 'memory',
        note: 'Retained entry, taken as unchanged; not looked up entry by entry.',
      },
      {
        id: 'sodium-hydroxide-gb-ph-adjuster', markets: ['GB'], quantity: 'ph-max', value: 11, unit: 'ph',
        onlyIf: 'ph-adjuster', source: 'memory', confidence: 'memory',
        note: 'Retained entry, taken as unchanged; not looked up entry by entry.',
      },
    ],
    source: 'cosing3', confidence: 'read',
    note: "Warnings ('Contains alkali' and more) for the limited uses; exact text not kept here; none for other use as pH adjuster. No percentage limit when used up in making soap; the finished soap's pH must stay at or below 11 if any lye acts as pH adjuster. Lye fully turned into soap is not an ingredient left in the product: name the soap salts (or list the starting oils plus Sodium Hydroxide, a tolerated practice; memory).",
  },
  {
    id: 'etidronic-acid', name: 'Etidronic acid and salts', aliases: ['Etidronic Acid', 'Tetrasodium Etidronate'],
    cas: ['2809-21-4'], kind: 'restricted', annex: 'III', entry: '53',
    rules: [
      {
        id: 'etidronic-acid-eu-hair', markets: ['EU', 'NI'], bodyPart: 'hair', quantity: 'max', value: 1.5,
        asWhat: 'etidronic acid', source: 'cosing3', confidence: 'read',
      },
      {
        id: 'etidronic-acid-eu-soap', markets: ['EU', 'NI'], use: 'rinse-off', productType: 'soap', quantity: 'max',
        value: 0.2, asWhat: 'etidronic acid', source: 'cosing3', confidence: 'read',
      },
      {
        id: 'etidronic-acid-gb-hair', markets: ['GB'], bodyPart: 'hair', quantity: 'max', value: 1.5,
        asWhat: 'etidronic acid', source: 'memory', confidence: 'memory',
        note: 'Retained entry, taken as unchanged; not looked up entry by entry.',
      },
      {
        id: 'etidronic-acid-gb-soap', markets: ['GB'], use: 'rinse-off', productType: 'soap', quantity: 'max',
        value: 0.2, asWhat: 'etidronic acid', source: 'memory', confidence: 'memory',
        note: 'Retained entry, taken as unchanged; not looked up entry by entry.',
      },
    ],
    source: 'cosing3', confidence: 'read', note: 'Chelator in melt-and-pour soap bases.',
  },
  {
    id: 'bht', name: 'Butylated Hydroxytoluene', aliases: ['BHT'], cas: ['128-37-0'], kind: 'restricted',
    annex: 'III', entry: '325',
    rules: [
      {
        id: 'bht-eu-mouthwash', markets: ['EU', 'NI'], use: 'rinse-off', bodyPart: 'oral', productType: 'mouthwash',
        quantity: 'max', value: 0.001, from: '2023-07-01', until: '2023-12-31', source: 'cosing3', confidence: 'read',
        note: 'Old stock may not be made available from 2024-01-01.',
      },
      {
        id: 'bht-eu-toothpaste', markets: ['EU', 'NI'], use: 'rinse-off', bodyPart: 'oral', productType: 'toothpaste',
        quantity: 'max', value: 0.1, from: '2023-07-01', until: '2023-12-31', source: 'cosing3', confidence: 'read',
        note: 'Old stock may not be made available from 2024-01-01.',
      },
      {
        id: 'bht-eu-other', markets: ['EU', 'NI'], quantity: 'max', value: 0.8, from: '2023-07-01',
        until: '2023-12-31', source: 'cosing3', confidence: 'read',
        note: 'Old stock may not be made available from 2024-01-01.',
      },
    ],
    source: 'cosing3', confidence: 'read', note: 'Great Britain: own row.',
  },
  {
    id: 'bht-gb', name: 'Butylated Hydroxytoluene', aliases: ['BHT'], cas: ['128-37-0'], kind: 'restricted',
    annex: 'III',
    rules: [
      {
        id: 'bht-gb-mouthwash', markets: ['GB'], use: 'rinse-off', bodyPart: 'oral', productType: 'mouthwash',
        quantity: 'max', value: 0.001, from: '2025-02-24', until: '2025-06-24', source: 'si2024_455',
        confidence: 'read-secondary',
      },
      {
        id: 'bht-gb-toothpaste', markets: ['GB'], use: 'rinse-off', bodyPart: 'oral', productType: 'toothpaste',
        quantity: 'max', value: 0.1, from: '2025-02-24', until: '2025-06-24', source: 'si2024_455',
        confidence: 'read-secondary',
      },
      {
        id: 'bht-gb-leave-on-oral', markets: ['GB'], use: 'leave-on', bodyPart: 'oral', quantity: 'max', value: 0.001,
        from: '2025-02-24', until: '2025-06-24', source: 'si2024_455', confidence: 'read-secondary',
      },
      {
        id: 'bht-gb-other', markets: ['GB'], quantity: 'max', value: 0.8, from: '2025-02-24', until: '2025-06-24',
        source: 'si2024_455', confidence: 'read-secondary',
      },
    ],
    source: 'si2024_455', confidence: 'read-secondary',
    note: "Great Britain's own restriction: leave-on oral care is capped too. Figures and dates from trade notices; the entry number was not confirmed. The earlier table gave no figures.",
  },
  {
    id: 'zinc-salts', name: 'Water-soluble zinc salts', aliases: ['Zinc Acetate', 'Zinc Chloride', 'Zinc Gluconate'],
    cas: [], kind: 'restricted', annex: 'III', entry: '24',
    rules: [
      {
        id: 'zinc-salts-eu-any', markets: ['EU', 'NI'], quantity: 'max', value: 1, asWhat: 'zinc', source: 'cosing3',
        confidence: 'read',
      },
      {
        id: 'zinc-salts-gb-any', markets: ['GB'], quantity: 'max', value: 1, asWhat: 'zinc', source: 'memory',
        confidence: 'memory', note: 'Retained entry, taken as unchanged; not looked up entry by entry.',
      },
    ],
    source: 'cosing3', confidence: 'read', note: 'Zinc oxide and zinc stearate are not water-soluble salts.',
  },
  {
    id: 'talc', name: 'Talc', cas: ['14807-96-6'], kind: 'restricted', annex: 'III', entry: '59',
    rules: [
      {
        id: 'talc-eu-powder-under-3', markets: ['EU', 'NI'], productType: 'powder', maxAgeMonths: 36, quantity: 'max',
        value: 100, warning: "Keep powder away from children's nose and mouth", source: 'cosing3', confidence: 'read',
        note: 'No maximum: the entry only asks for the warning.',
      },
      {
        id: 'talc-eu-other', markets: ['EU', 'NI'], quantity: 'max', value: 100, source: 'cosing3',
        confidence: 'read', note: 'No maximum.',
      },
      {
        id: 'talc-gb-powder-under-3', markets: ['GB'], productType: 'powder', maxAgeMonths: 36, quantity: 'max',
        value: 100, warning: "Keep powder away from children's nose and mouth", source: 'memory',
        confidence: 'memory', note: 'Retained entry, taken as unchanged; not looked up entry by entry.',
      },
      {
        id: 'talc-gb-other', markets: ['GB'], quantity: 'max', value: 100, source: 'memory', confidence: 'memory',
        note: 'Retained entry, taken as unchanged; not looked up entry by entry.',
      },
    ],
    source: 'cosing3', confidence: 'read',
    note: 'Powdery products for children under 3. Reclassification as carcinogen is under way in the EU (memory); watch.',
  },
  {
    id: 'titanium-dioxide',
    name: 'Titanium dioxide powder with 1 % or more particles of aerodynamic diameter 10 um or less',
    aliases: ['Titanium Dioxide', 'CI 77891'], cas: ['13463-67-7'], kind: 'restricted', annex: 'III', entry: '321',
    rules: [
      {
        id: 'titanium-dioxide-eu-loose-face-powder', markets: ['EU', 'NI'], use: 'leave-on', bodyPart: 'face',
        productType: 'loose-face-powder', quantity: 'max', value: 25, source: 'cosing3', confidence: 'read',
      },
      {
        id: 'titanium-dioxide-eu-hair-aerosol', markets: ['EU', 'NI'], use: 'leave-on', bodyPart: 'hair',
        productType: 'hair-spray', quantity: 'max', value: 1.4, onlyIf: 'consumer-use', source: 'cosing3',
        confidence: 'read',
      },
      {
        id: 'titanium-dioxide-eu-other', markets: ['EU', 'NI'],
        exceptProductTypes: ['loose-face-powder', 'hair-spray'], quantity: 'max', value: 100, source: 'cosing3',
        confidence: 'read', note: 'No maximum.',
      },
      {
        id: 'titanium-dioxide-eu-lungs', markets: ['EU', 'NI'],
        exceptProductTypes: ['loose-face-powder', 'hair-spray'], quantity: 'prohibited', onlyIf: 'lung-exposure',
        source: 'cosing3', confidence: 'read',
      },
      {
        id: 'titanium-dioxide-gb-not-known', markets: ['GB'], quantity: 'max', value: null, source: 'memory',
        confidence: 'memory', note: 'Not checked for Great Britain.',
      },
    ],
    source: 'cosing3', confidence: 'read',
    note: 'Only powder with 1 % or more particles of aerodynamic diameter 10 um or less. Other products: not where lungs may be exposed.',
  },
  {
    id: 'peanut-oil', name: 'Peanut oil, extracts and derivatives',
    aliases: ['Arachis Hypogaea Oil', 'Peanut Oil', 'Arachis oil', 'Groundnut oil'],
    cas: ['8002-03-7', '91744-77-3', '68440-49-3', '93572-05-5'], kind: 'restricted', annex: 'III', entry: '306',
    rules: [
      {
        id: 'peanut-oil-eu-raw-protein', markets: ['EU', 'NI'], basis: 'raw-material', quantity: 'max', value: 0.5,
        unit: 'mg-per-kg', asWhat: 'peanut protein', source: 'cosing3', confidence: 'read', note: '0.5 ppm.',
      },
      {
        id: 'peanut-oil-gb-raw-protein', markets: ['GB'], basis: 'raw-material', quantity: 'max', value: 0.5,
        unit: 'mg-per-kg', asWhat: 'peanut protein', source: 'memory', confidence: 'memory',
        note: 'Retained entry of Regulation (EU) 2017/2228.',
      },
    ],
    source: 'cosing3', confidence: 'read',
  },
  {
    id: 'hydrolyzed-wheat', name: 'Hydrolyzed Wheat Protein', aliases: ['Hydrolyzed Wheat Protein'],
    cas: ['94350-06-8', '222400-28-4', '70084-87-6', '100209-50-5'], kind: 'restricted', annex: 'III', entry: '307',
    rules: [
      {
        id: 'hydrolyzed-wheat-eu-raw-peptides', markets: ['EU', 'NI'], basis: 'raw-material', quantity: 'max',
        value: 3.5, unit: 'kda', asWhat: 'average molecular weight of the peptides', source: 'cosing3',
        confidence: 'read',
      },
      {
        id: 'hydrolyzed-wheat-gb-raw-peptides', markets: ['GB'], basis: 'raw-material', quantity: 'max', value: 3.5,
        unit: 'kda', asWhat: 'average molecular weight of the peptides', source: 'memory', confidence: 'memory',
        note: 'Retained entry of Regulation (EU) 2017/2228.',
      },
    ],
    source: 'cosing3', confidence: 'read',
  },
  {
    id: 'diethylene-glycol', name: 'Diethylene Glycol (trace in glycerin and glycols)',
    aliases: ['Diethylene Glycol', 'DEG'], cas: ['111-46-6'], kind: 'restricted', annex: 'III', entry: '186',
    rules: [
      {
        id: 'diethylene-glycol-eu-trace', markets: ['EU', 'NI'], quantity: 'max', value: 0.1,
        asWhat: 'trace from ingredients', source: 'cosing3', confidence: 'read',
        note: "'Traces in ingredients'; the entry may also be read as a limit for the ingredient.",
      },
      {
        id: 'diethylene-glycol-gb-trace', markets: ['GB'], quantity: 'max', value: 0.1,
        asWhat: 'trace from ingredients', source: 'memory', confidence: 'memory',
        note: 'Retained entry, taken as unchanged; not looked up entry by entry.',
      },
    ],
    source: 'cosing3', confidence: 'read', note: 'Trace in glycerin and glycols.',
  },
  {
    id: 'allyl-esters', name: 'Allyl esters (e.g. allyl caproate, allyl cyclohexylpropionate)',
    aliases: ['Allyl caproate', 'Allyl hexanoate', 'Allyl cyclohexylpropionate'], cas: ['123-68-2', '2705-87-5'],
    kind: 'restricted', annex: 'III', entry: '135-151',
    rules: [
      {
        id: 'allyl-esters-eu-raw-allyl-alcohol', markets: ['EU', 'NI'], basis: 'raw-material', quantity: 'max',
        value: 0.1, asWhat: 'free allyl alcohol', strict: true, source: 'cosing3', confidence: 'read',
      },
      {
        id: 'allyl-esters-gb-raw-allyl-alcohol', markets: ['GB'], basis: 'raw-material', quantity: 'max', value: 0.1,
        asWhat: 'free allyl alcohol', strict: true, source: 'memory', confidence: 'memory',
        note: 'Retained entry, taken as unchanged; not looked up entry by entry.',
      },
    ],
    source: 'cosing3', confidence: 'read',
  },
  {
    id: 'styrax', name: 'Styrax (Liquidambar orientalis, Liquidambar styraciflua)',
    aliases: ['Liquidambar Orientalis Resin Extract', 'Liquidambar Styraciflua Oil', 'Styrax oil', 'Storax'],
    cas: ['94891-27-7', '8046-19-3'], kind: 'restricted', annex: 'III', entry: '180, 181',
    rules: [
      {
        id: 'styrax-eu-any', markets: ['EU', 'NI'], quantity: 'max', value: 0.6, source: 'cosing3',
        confidence: 'read',
      },
      {
        id: 'styrax-gb-any', markets: ['GB'], quantity: 'max', value: 0.6, source: 'memory', confidence: 'memory',
        note: 'Retained entry, taken as unchanged; not looked up entry by entry.',
      },
    ],
    source: 'cosing3', confidence: 'read',
  },
  {
    id: 'opoponax', name: 'Opoponax',
    aliases: ['Opopanax oil', 'Opoponax resinoid', 'Commiphora Erythrea Gum Extract', 'Opopanax Chironium Resin'],
    cas: ['93686-00-1', '93384-32-8'], kind: 'restricted', annex: 'III', entry: '183, 184',
    rules: [
      {
        id: 'opoponax-eu-any', markets: ['EU', 'NI'], quantity: 'max', value: 0.6, source: 'cosing3',
        confidence: 'read',
      },
      {
        id: 'opoponax-gb-any', markets: ['GB'], quantity: 'max', value: 0.6, source: 'memory', confidence: 'memory',
        note: 'Retained entry, taken as unchanged; not looked up entry by entry.',
      },
    ],
    source: 'cosing3', confidence: 'read',
  },
  {
    id: 'camphor', name: 'Camphor', cas: ['76-22-2', '464-49-3', '464-48-2', '21368-68-3'], kind: 'naming-only',
    annex: 'III', entry: '331', rules: [], source: 'cosing3', confidence: 'read',
    note: 'EU: no maximum, only naming above the allergen threshold; no entry in Great Britain (memory). US: over-the-counter drug and poison-prevention rules apply to remedies (memory).',
  },
  {
    id: 'menthol', name: 'Menthol', cas: ['89-78-1', '2216-51-5'], kind: 'naming-only', annex: 'III', entry: '338',
    rules: [], source: 'cosing3', confidence: 'read',
    note: 'EU: no maximum, only naming above the allergen threshold; no entry in Great Britain (memory).',
  },
  {
    id: 'vanillin', name: 'Vanillin', cas: ['121-33-5'], kind: 'naming-only', annex: 'III', entry: '346', rules: [],
    source: 'cosing3', confidence: 'read', note: 'EU: no maximum, only naming; no entry in Great Britain (memory).',
  },
  {
    id: 'coumarin', name: 'Coumarin', cas: ['91-64-5'], kind: 'naming-only', annex: 'III', entry: '77', rules: [],
    source: 'cosing3', confidence: 'read',
    note: 'No maximum, only naming; the same in Great Britain (memory). Tonka absolute, cassia.',
  },
];
