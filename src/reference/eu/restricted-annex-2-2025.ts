/**
 * Annex II of Regulation (EC) No 1223/2009: substances that cosmetics must not contain, and the natural contents allowed.
 * A selection that makers with natural materials meet. The sources stand in restricted-substances-2025.
 */
import type { RestrictedSubstance } from '../restricted-substance.ts';

export const prohibitedSubstances: readonly RestrictedSubstance[] = [
  {
    id: 'furocoumarins-added', name: 'Furocoumarins, added as such (e.g. 5-MOP bergapten, 8-MOP, trioxsalen)',
    aliases: ['Bergapten', '5-Methoxypsoralen', '5-MOP', 'Methoxsalen', '8-Methoxypsoralen', '8-MOP', 'Trioxsalen'],
    cas: ['298-81-7', '484-20-8', '3902-71-4'], origin: 'added', kind: 'prohibited', annex: 'II', entry: '358',
    rules: [
      {
        id: 'furocoumarins-added-eu-any', markets: ['EU', 'NI'], quantity: 'prohibited', source: 'cosing2',
        confidence: 'read',
      },
      {
        id: 'furocoumarins-added-gb-any', markets: ['GB'], quantity: 'prohibited', source: 'memory',
        confidence: 'memory', note: 'Retained entry, taken as unchanged; not looked up entry by entry.',
      },
    ],
    source: 'cosing2', confidence: 'read', note: 'Normal content of natural essences: row furocoumarins-natural.',
  },
  {
    id: 'furocoumarins-natural', name: 'Furocoumarins, normal content of natural essences',
    aliases: ['Bergapten', '5-Methoxypsoralen', '5-MOP', 'Methoxsalen', '8-Methoxypsoralen', '8-MOP', 'Trioxsalen'],
    cas: ['298-81-7', '484-20-8', '3902-71-4'], origin: 'natural', kind: 'restricted', annex: 'II', entry: '358',
    rules: [
      {
        id: 'furocoumarins-natural-eu-sun-protection', markets: ['EU', 'NI'], productType: 'sun-protection',
        quantity: 'max', value: 1, unit: 'mg-per-kg', asWhat: 'furocoumarins in total', strict: true,
        source: 'cosing2', confidence: 'read', note: '0.0001 %.',
      },
      {
        id: 'furocoumarins-natural-eu-bronzing', markets: ['EU', 'NI'], productType: 'bronzing', quantity: 'max',
        value: 1, unit: 'mg-per-kg', asWhat: 'furocoumarins in total', strict: true, source: 'cosing2',
        confidence: 'read', note: '0.0001 %.',
      },
      {
        id: 'furocoumarins-natural-gb-sun-protection', markets: ['GB'], productType: 'sun-protection',
        quantity: 'max', value: 1, unit: 'mg-per-kg', asWhat: 'furocoumarins in total', strict: true,
        source: 'memory', confidence: 'memory',
        note: 'Retained entry, taken as unchanged; not looked up entry by entry.',
      },
      {
        id: 'furocoumarins-natural-gb-bronzing', markets: ['GB'], productType: 'bronzing', quantity: 'max', value: 1,
        unit: 'mg-per-kg', asWhat: 'furocoumarins in total', strict: true, source: 'memory', confidence: 'memory',
        note: 'Retained entry, taken as unchanged; not looked up entry by entry.',
      },
    ],
    source: 'cosing2', confidence: 'read',
    note: 'Other products: no figure in the entry. Bergamot (not FCF), lime expressed, lemon expressed, bitter orange, angelica root, rue. Leave-on safety for UV still has to be judged in the safety report. IFRA limits the oils for phototoxicity.',
  },
  {
    id: 'safrole-added', name: 'Safrole, added as such', aliases: ['Safrole'], cas: ['94-59-7'], origin: 'added',
    kind: 'prohibited', annex: 'II', entry: '360',
    rules: [
      {
        id: 'safrole-added-eu-any', markets: ['EU', 'NI'], quantity: 'prohibited', source: 'cosing2',
        confidence: 'read',
      },
      {
        id: 'safrole-added-gb-any', markets: ['GB'], quantity: 'prohibited', source: 'memory', confidence: 'memory',
        note: 'Retained entry, taken as unchanged; not looked up entry by entry.',
      },
    ],
    source: 'cosing2', confidence: 'read', note: 'Normal content of natural essences: row safrole-natural.',
  },
  {
    id: 'safrole-natural', name: 'Safrole, normal content of natural essences', aliases: ['Safrole'],
    cas: ['94-59-7'], origin: 'natural', kind: 'restricted', annex: 'II', entry: '360',
    rules: [
      {
        id: 'safrole-natural-eu-any', markets: ['EU', 'NI'], quantity: 'max', value: 100, unit: 'mg-per-kg',
        source: 'cosing2', confidence: 'read', note: '0.01 %.',
      },
      {
        id: 'safrole-natural-eu-oral', markets: ['EU', 'NI'], bodyPart: 'oral', quantity: 'max', value: 50,
        unit: 'mg-per-kg', source: 'cosing2', confidence: 'read', note: '0.005 %. Dental and oral hygiene.',
      },
      {
        id: 'safrole-natural-eu-childrens-toothpaste', markets: ['EU', 'NI'], use: 'rinse-off', bodyPart: 'oral',
        productType: 'toothpaste', quantity: 'prohibited', onlyIf: 'intended-for-children', source: 'cosing2',
        confidence: 'read',
      },
      {
        id: 'safrole-natural-gb-any', markets: ['GB'], quantity: 'max', value: 100, unit: 'mg-per-kg',
        source: 'memory', confidence: 'memory',
        note: 'Retained entry, taken as unchanged; not looked up entry by entry.',
      },
      {
        id: 'safrole-natural-gb-oral', markets: ['GB'], bodyPart: 'oral', quantity: 'max', value: 50,
        unit: 'mg-per-kg', source: 'memory', confidence: 'memory',
        note: 'Retained entry, taken as unchanged; not looked up entry by entry.',
      },
      {
        id: 'safrole-natural-gb-childrens-toothpaste', markets: ['GB'], use: 'rinse-off', bodyPart: 'oral',
        productType: 'toothpaste', quantity: 'prohibited', onlyIf: 'intended-for-children', source: 'memory',
        confidence: 'memory', note: 'Retained entry, taken as unchanged; not looked up entry by entry.',
      },
    ],
    source: 'cosing2', confidence: 'read',
    note: 'Nutmeg, mace, cinnamon leaf, brown camphor, star anise. Decides for cinnamon leaf also in rinse-off products.',
  },
  {
    id: 'laurel-seed-oil', name: 'Oil from the seeds of Laurus nobilis',
    aliases: ['Laurus Nobilis Seed Oil', 'Laurel seed oil'], cas: ['84603-73-6'], plantPart: ['seed'],
    kind: 'prohibited', annex: 'II', entry: '359',
    rules: [
      {
        id: 'laurel-seed-oil-eu-any', markets: ['EU', 'NI'], quantity: 'prohibited', source: 'cosing2',
        confidence: 'read',
      },
      {
        id: 'laurel-seed-oil-gb-any', markets: ['GB'], quantity: 'prohibited', source: 'memory', confidence: 'memory',
        note: 'Retained entry, taken as unchanged; not looked up entry by entry.',
      },
    ],
    source: 'cosing2', confidence: 'read',
    note: "Laurel berry oil (Aleppo soap): ask the supplier what the oil is pressed from and take the assessor's word. CAS 84603-73-6 is also laurel leaf oil, which is allowed: match by plant part.",
  },
  {
    id: 'verbena-oil', name: 'Verbena essential oil and derivatives other than absolute',
    aliases: ['Lippia Citriodora Oil', 'Lemon verbena oil', 'Verbena oil'], cas: ['8024-12-2'],
    process: ['distilled', 'concrete', 'extract'], kind: 'prohibited', annex: 'II', entry: '450',
    rules: [
      {
        id: 'verbena-oil-eu-any', markets: ['EU', 'NI'], quantity: 'prohibited', onlyIf: 'used-as-fragrance',
        source: 'cosing2', confidence: 'read',
      },
      {
        id: 'verbena-oil-gb-any', markets: ['GB'], quantity: 'prohibited', onlyIf: 'used-as-fragrance',
        source: 'memory', confidence: 'memory',
        note: 'Retained entry, taken as unchanged; not looked up entry by entry.',
      },
    ],
    source: 'cosing2', confidence: 'read',
    note: 'The absolute is allowed up to 0.2 % (row verbena-absolute, same CAS).',
  },
  {
    id: 'peru-balsam', name: 'Peru balsam, crude (Myroxylon pereirae)',
    aliases: ['Myroxylon Pereirae Resin', 'Peru balsam', 'Balsam Peru'], cas: ['8007-00-9'], plantPart: ['resin'],
    process: ['crude'], kind: 'prohibited', annex: 'II', entry: '1136',
    rules: [
      {
        id: 'peru-balsam-eu-any', markets: ['EU', 'NI'], quantity: 'prohibited', onlyIf: 'used-as-fragrance',
        source: 'cosing2', confidence: 'read',
      },
      {
        id: 'peru-balsam-gb-any', markets: ['GB'], quantity: 'prohibited', onlyIf: 'used-as-fragrance',
        source: 'memory', confidence: 'memory',
        note: 'Retained entry, taken as unchanged; not looked up entry by entry.',
      },
    ],
    source: 'cosing2', confidence: 'read',
    note: 'Extracts and distillates are allowed up to 0.4 % (row myroxylon-oil, same CAS).',
  },
  {
    id: 'hicc', name: 'Hydroxyisohexyl 3-Cyclohexene Carboxaldehyde', aliases: ['HICC', 'Lyral'],
    cas: ['31906-04-4', '51414-25-6'], kind: 'prohibited', annex: 'II', entry: '1380',
    rules: [
      { id: 'hicc-eu-any', markets: ['EU', 'NI'], quantity: 'prohibited', source: 'cosing2', confidence: 'read' },
      {
        id: 'hicc-gb-any', markets: ['GB'], quantity: 'prohibited', source: 'memory', confidence: 'memory',
        note: 'Retained entry, taken as unchanged; not looked up entry by entry.',
      },
    ],
    source: 'cosing2', confidence: 'read', note: 'Old perfume oils. Was one of the first 26 allergens.',
  },
  {
    id: 'atranol', name: 'Atranol', cas: ['526-37-4'], kind: 'prohibited', annex: 'II', entry: '1381',
    rules: [
      { id: 'atranol-eu-any', markets: ['EU', 'NI'], quantity: 'prohibited', source: 'cosing2', confidence: 'read' },
      {
        id: 'atranol-gb-any', markets: ['GB'], quantity: 'prohibited', source: 'memory', confidence: 'memory',
        note: 'Retained entry, taken as unchanged; not looked up entry by entry.',
      },
    ],
    source: 'cosing2', confidence: 'read', note: 'In untreated oak moss and tree moss; extracts must be free of it.',
  },
  {
    id: 'chloroatranol', name: 'Chloroatranol', cas: ['57074-21-2'], kind: 'prohibited', annex: 'II', entry: '1382',
    rules: [
      {
        id: 'chloroatranol-eu-any', markets: ['EU', 'NI'], quantity: 'prohibited', source: 'cosing2',
        confidence: 'read',
      },
      {
        id: 'chloroatranol-gb-any', markets: ['GB'], quantity: 'prohibited', source: 'memory', confidence: 'memory',
        note: 'Retained entry, taken as unchanged; not looked up entry by entry.',
      },
    ],
    source: 'cosing2', confidence: 'read', note: 'In untreated oak moss and tree moss; extracts must be free of it.',
  },
  {
    id: 'bmhca', name: 'Butylphenyl Methylpropional (2-(4-tert-butylbenzyl)propionaldehyde)',
    aliases: ['BMHCA', 'Butylphenyl Methylpropional', 'Lilial'], cas: ['80-54-6'], kind: 'prohibited', annex: 'II',
    entry: '1666',
    rules: [
      {
        id: 'bmhca-eu-any', markets: ['EU', 'NI'], quantity: 'prohibited', from: '2022-03-01', source: 'cosing2',
        confidence: 'read', note: 'Date from memory.',
      },
      {
        id: 'bmhca-gb-any', markets: ['GB'], quantity: 'prohibited', source: 'memory', confidence: 'memory',
        note: 'Also prohibited in Great Britain since December 2022; day not known.',
      },
    ],
    source: 'cosing2', confidence: 'read', note: 'Old perfume oils. Was one of the first 26 allergens.',
  },
  {
    id: 'tagetes-erecta', name: 'Tagetes erecta flower extract and oil',
    aliases: ['Tagetes Erecta Flower Oil', 'Tagetes Erecta Flower Extract'], cas: ['90131-43-4'],
    plantPart: ['flower'], kind: 'prohibited', annex: 'II', entry: '1383',
    rules: [
      {
        id: 'tagetes-erecta-eu-any', markets: ['EU', 'NI'], quantity: 'prohibited', source: 'cosing2',
        confidence: 'read',
      },
      {
        id: 'tagetes-erecta-gb-any', markets: ['GB'], quantity: 'prohibited', source: 'memory', confidence: 'memory',
        note: 'Retained entry, taken as unchanged; not looked up entry by entry.',
      },
    ],
    source: 'cosing2', confidence: 'read',
  },
  {
    id: 'allyl-isothiocyanate', name: 'Allyl isothiocyanate', aliases: ['Mustard oil, volatile'], cas: ['57-06-7'],
    kind: 'prohibited', annex: 'II', entry: '18',
    rules: [
      {
        id: 'allyl-isothiocyanate-eu-any', markets: ['EU', 'NI'], quantity: 'prohibited', source: 'cosing2',
        confidence: 'read',
      },
      {
        id: 'allyl-isothiocyanate-gb-any', markets: ['GB'], quantity: 'prohibited', source: 'memory',
        confidence: 'memory', note: 'Retained entry, taken as unchanged; not looked up entry by entry.',
      },
    ],
    source: 'cosing2', confidence: 'read', note: 'Mustard and horseradish oil.',
  },
  {
    id: 'chenopodium-oil', name: 'Chenopodium ambrosioides essential oil',
    aliases: ['Chenopodium oil', 'Wormseed oil'], cas: ['8006-99-3'], kind: 'prohibited', annex: 'II', entry: '76',
    rules: [
      {
        id: 'chenopodium-oil-eu-any', markets: ['EU', 'NI'], quantity: 'prohibited', source: 'cosing2',
        confidence: 'read',
      },
      {
        id: 'chenopodium-oil-gb-any', markets: ['GB'], quantity: 'prohibited', source: 'memory', confidence: 'memory',
        note: 'Retained entry, taken as unchanged; not looked up entry by entry.',
      },
    ],
    source: 'cosing2', confidence: 'read',
  },
  {
    id: 'croton-oil', name: 'Croton tiglium oil', aliases: ['Croton Tiglium Seed Oil', 'Croton oil'],
    cas: ['8001-28-3'], kind: 'prohibited', annex: 'II', entry: '107',
    rules: [
      {
        id: 'croton-oil-eu-any', markets: ['EU', 'NI'], quantity: 'prohibited', source: 'cosing2', confidence: 'read',
      },
      {
        id: 'croton-oil-gb-any', markets: ['GB'], quantity: 'prohibited', source: 'memory', confidence: 'memory',
        note: 'Retained entry, taken as unchanged; not looked up entry by entry.',
      },
    ],
    source: 'cosing2', confidence: 'read',
  },
  {
    id: 'savin-oil', name: 'Juniperus sabina leaves and essential oil',
    aliases: ['Savin oil', 'Juniperus Sabina Oil'], cas: ['90046-04-1'], kind: 'prohibited', annex: 'II',
    entry: '294',
    rules: [
      {
        id: 'savin-oil-eu-any', markets: ['EU', 'NI'], quantity: 'prohibited', source: 'cosing2', confidence: 'read',
      },
      {
        id: 'savin-oil-gb-any', markets: ['GB'], quantity: 'prohibited', source: 'memory', confidence: 'memory',
        note: 'Retained entry, taken as unchanged; not looked up entry by entry.',
      },
    ],
    source: 'cosing2', confidence: 'read', note: 'Not Juniperus communis.',
  },
  {
    id: 'costus-oil', name: 'Costus root oil (Saussurea lappa)',
    aliases: ['Costus root oil', 'Saussurea Lappa Root Oil'], cas: ['8023-88-9'], plantPart: ['root'],
    kind: 'prohibited', annex: 'II', entry: '1133',
    rules: [
      {
        id: 'costus-oil-eu-any', markets: ['EU', 'NI'], quantity: 'prohibited', onlyIf: 'used-as-fragrance',
        source: 'cosing2', confidence: 'read',
      },
      {
        id: 'costus-oil-gb-any', markets: ['GB'], quantity: 'prohibited', onlyIf: 'used-as-fragrance',
        source: 'memory', confidence: 'memory',
        note: 'Retained entry, taken as unchanged; not looked up entry by entry.',
      },
    ],
    source: 'cosing2', confidence: 'read',
  },
  {
    id: 'alantroot-oil', name: 'Alantroot oil (Inula helenium)',
    aliases: ['Elecampane oil', 'Inula Helenium Root Oil'], cas: ['97676-35-2'], plantPart: ['root'],
    kind: 'prohibited', annex: 'II', entry: '423',
    rules: [
      {
        id: 'alantroot-oil-eu-any', markets: ['EU', 'NI'], quantity: 'prohibited', onlyIf: 'used-as-fragrance',
        source: 'cosing2', confidence: 'read',
      },
      {
        id: 'alantroot-oil-gb-any', markets: ['GB'], quantity: 'prohibited', onlyIf: 'used-as-fragrance',
        source: 'memory', confidence: 'memory',
        note: 'Retained entry, taken as unchanged; not looked up entry by entry.',
      },
    ],
    source: 'cosing2', confidence: 'read',
  },
  {
    id: 'fig-leaf-absolute', name: 'Fig leaf absolute (Ficus carica)', aliases: ['Ficus Carica Leaf Absolute'],
    cas: ['68916-52-9'], plantPart: ['leaf'], process: ['absolute'], kind: 'prohibited', annex: 'II', entry: '436',
    rules: [
      {
        id: 'fig-leaf-absolute-eu-any', markets: ['EU', 'NI'], quantity: 'prohibited', onlyIf: 'used-as-fragrance',
        source: 'cosing2', confidence: 'read',
      },
      {
        id: 'fig-leaf-absolute-gb-any', markets: ['GB'], quantity: 'prohibited', onlyIf: 'used-as-fragrance',
        source: 'memory', confidence: 'memory',
        note: 'Retained entry, taken as unchanged; not looked up entry by entry.',
      },
    ],
    source: 'cosing2', confidence: 'read',
  },
  {
    id: 'dihydrocoumarin', name: '3,4-Dihydrocoumarin', aliases: ['Dihydrocoumarin'], cas: ['119-84-6'],
    kind: 'prohibited', annex: 'II', entry: '427',
    rules: [
      {
        id: 'dihydrocoumarin-eu-any', markets: ['EU', 'NI'], quantity: 'prohibited', onlyIf: 'used-as-fragrance',
        source: 'cosing2', confidence: 'read',
      },
      {
        id: 'dihydrocoumarin-gb-any', markets: ['GB'], quantity: 'prohibited', onlyIf: 'used-as-fragrance',
        source: 'memory', confidence: 'memory',
        note: 'Retained entry, taken as unchanged; not looked up entry by entry.',
      },
    ],
    source: 'cosing2', confidence: 'read', note: 'Prohibited although IFRA gives a limit: the law decides.',
  },
  {
    id: 'hexahydrocoumarin', name: 'Hexahydrocoumarin', cas: ['700-82-3'], kind: 'prohibited', annex: 'II',
    entry: '1135',
    rules: [
      {
        id: 'hexahydrocoumarin-eu-any', markets: ['EU', 'NI'], quantity: 'prohibited', onlyIf: 'used-as-fragrance',
        source: 'cosing2', confidence: 'read',
      },
      {
        id: 'hexahydrocoumarin-gb-any', markets: ['GB'], quantity: 'prohibited', onlyIf: 'used-as-fragrance',
        source: 'memory', confidence: 'memory',
        note: 'Retained entry, taken as unchanged; not looked up entry by entry.',
      },
    ],
    source: 'cosing2', confidence: 'read',
  },
  {
    id: 'vitamin-d', name: 'Ergocalciferol and Cholecalciferol (vitamins D2, D3)',
    aliases: ['Ergocalciferol', 'Cholecalciferol', 'Vitamin D2', 'Vitamin D3'], cas: ['50-14-6', '67-97-0'],
    kind: 'prohibited', annex: 'II', entry: '335',
    rules: [
      {
        id: 'vitamin-d-eu-any', markets: ['EU', 'NI'], quantity: 'prohibited', source: 'cosing2', confidence: 'read',
      },
      {
        id: 'vitamin-d-gb-any', markets: ['GB'], quantity: 'prohibited', source: 'memory', confidence: 'memory',
        note: 'Retained entry, taken as unchanged; not looked up entry by entry.',
      },
    ],
    source: 'cosing2', confidence: 'read',
  },
  {
    id: 'vitamin-k1', name: 'Phytonadione (vitamin K1)', aliases: ['Phytonadione', 'Vitamin K1'],
    cas: ['84-80-0', '81818-54-4'], kind: 'prohibited', annex: 'II', entry: '1371',
    rules: [
      {
        id: 'vitamin-k1-eu-any', markets: ['EU', 'NI'], quantity: 'prohibited', source: 'cosing2', confidence: 'read',
      },
      {
        id: 'vitamin-k1-gb-any', markets: ['GB'], quantity: 'prohibited', source: 'memory', confidence: 'memory',
        note: 'Retained entry, taken as unchanged; not looked up entry by entry.',
      },
    ],
    source: 'cosing2', confidence: 'read',
  },
  {
    id: 'retinoic-acid', name: 'Tretinoin (retinoic acid and salts)', aliases: ['Tretinoin', 'Retinoic acid'],
    cas: ['302-79-4'], kind: 'prohibited', annex: 'II', entry: '375',
    rules: [
      {
        id: 'retinoic-acid-eu-any', markets: ['EU', 'NI'], quantity: 'prohibited', source: 'cosing2',
        confidence: 'read',
      },
      {
        id: 'retinoic-acid-gb-any', markets: ['GB'], quantity: 'prohibited', source: 'memory', confidence: 'memory',
        note: 'Retained entry, taken as unchanged; not looked up entry by entry.',
      },
    ],
    source: 'cosing2', confidence: 'read',
  },
  {
    id: 'hydroquinone', name: 'Hydroquinone (except Annex III 14)', cas: ['123-31-9'], kind: 'prohibited',
    annex: 'II', entry: '1339',
    rules: [
      {
        id: 'hydroquinone-eu-any', markets: ['EU', 'NI'], quantity: 'prohibited', source: 'cosing2',
        confidence: 'read',
      },
      {
        id: 'hydroquinone-gb-any', markets: ['GB'], quantity: 'prohibited', source: 'memory', confidence: 'memory',
        note: 'Retained entry, taken as unchanged; not looked up entry by entry.',
      },
    ],
    source: 'cosing2', confidence: 'read', note: 'Except as in Annex III entry 14.',
  },
  {
    id: 'boric-acid', name: 'Boric acid', aliases: ['Boric Acid'], cas: ['10043-35-3', '11113-50-1'],
    kind: 'prohibited', annex: 'II', entry: '1395',
    rules: [
      {
        id: 'boric-acid-eu-any', markets: ['EU', 'NI'], quantity: 'prohibited', source: 'cosing2', confidence: 'read',
      },
      {
        id: 'boric-acid-gb-any', markets: ['GB'], quantity: 'prohibited', source: 'memory', confidence: 'memory',
        note: 'Retained entry, taken as unchanged; not looked up entry by entry.',
      },
    ],
    source: 'cosing2', confidence: 'read',
  },
  {
    id: 'borax', name: 'Borates incl. Sodium Borate (borax)', aliases: ['Sodium Borate', 'Borax'],
    cas: ['12008-41-2', '12280-03-4', '10377-81-8'], kind: 'prohibited', annex: 'II', entry: '1396',
    rules: [
      { id: 'borax-eu-any', markets: ['EU', 'NI'], quantity: 'prohibited', source: 'cosing2', confidence: 'read' },
      {
        id: 'borax-gb-any', markets: ['GB'], quantity: 'prohibited', source: 'memory', confidence: 'memory',
        note: 'Retained entry, taken as unchanged; not looked up entry by entry.',
      },
    ],
    source: 'cosing2', confidence: 'read',
    note: 'The old beeswax-borax emulsifier is not allowed. List of CAS is longer in the entry.',
  },
  {
    id: 'secondary-amines', name: 'Secondary alkyl- and alkanolamines and salts (e.g. diethanolamine)',
    aliases: ['Diethanolamine', 'DEA', 'Diisopropanolamine'], cas: ['111-42-2', '110-97-4'], kind: 'prohibited',
    annex: 'II', entry: '411',
    rules: [
      {
        id: 'secondary-amines-eu-any', markets: ['EU', 'NI'], quantity: 'prohibited', source: 'cosing2',
        confidence: 'read',
      },
      {
        id: 'secondary-amines-gb-any', markets: ['GB'], quantity: 'prohibited', source: 'memory',
        confidence: 'memory', note: 'Retained entry, taken as unchanged; not looked up entry by entry.',
      },
    ],
    source: 'cosing2', confidence: 'read',
  },
  {
    id: 'margosa-extract',
    name: 'Margosa extract: neem kernels extracted with water and further processed with organic solvents',
    aliases: ['Margosa extract'], cas: ['84696-25-3'], plantPart: ['seed'], process: ['extract'], kind: 'prohibited',
    annex: 'II', entry: '1716',
    rules: [
      {
        id: 'margosa-extract-eu-any', markets: ['EU', 'NI'], quantity: 'prohibited', source: 'cosing2',
        confidence: 'read',
      },
      {
        id: 'margosa-extract-gb-not-known', markets: ['GB'], quantity: 'max', value: null, source: 'memory',
        confidence: 'memory', note: 'Not checked for Great Britain.',
      },
    ],
    source: 'cosing2', confidence: 'read',
    note: "Only neem kernels extracted with water and further processed with organic solvents. Pressed neem seed oil carries the same CAS in catalogues but is not this entry; keep the supplier's process statement.",
  },
  {
    id: 'hydrogen-cyanide', name: 'Hydrogen cyanide and its salts', aliases: ['Hydrocyanic acid'], cas: ['74-90-8'],
    kind: 'prohibited', annex: 'II', entry: '111',
    rules: [
      {
        id: 'hydrogen-cyanide-eu-any', markets: ['EU', 'NI'], quantity: 'prohibited', source: 'cosing2',
        confidence: 'read',
      },
      {
        id: 'hydrogen-cyanide-gb-any', markets: ['GB'], quantity: 'prohibited', source: 'memory',
        confidence: 'memory', note: 'Retained entry, taken as unchanged; not looked up entry by entry.',
      },
    ],
    source: 'cosing2', confidence: 'read', note: 'Bitter almond oil must be free of it (FFPA).',
  },
  {
    id: '4-mbc', name: '4-Methylbenzylidene Camphor', aliases: ['4-MBC'], cas: ['36861-47-9'], kind: 'prohibited',
    annex: 'II', entry: '1730',
    rules: [{ id: '4-mbc-eu-any', markets: ['EU', 'NI'], quantity: 'prohibited', source: 'cosing2', confidence: 'read' }],
    source: 'cosing2', confidence: 'read', note: 'Great Britain: own row.',
  },
  {
    id: '4-mbc-gb', name: '4-Methylbenzylidene Camphor', aliases: ['4-MBC'], cas: ['36861-47-9'], kind: 'prohibited',
    annex: 'II',
    rules: [
      {
        id: '4-mbc-gb-any', markets: ['GB'], quantity: 'prohibited', from: '2026-07-15', until: '2027-01-15',
        source: 'gb2026', confidence: 'read-secondary', note: 'As notified.',
      },
    ],
    source: 'gb2026', confidence: 'read-secondary',
    note: "Great Britain's instrument of 2026 as reported in notices (the earlier table said memory); its number was not read.",
  },
];
