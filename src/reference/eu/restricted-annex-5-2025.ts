/**
 * Annex V of Regulation (EC) No 1223/2009: preservatives.
 * A selection that makers with natural materials meet. The sources stand in restricted-substances-2025.
 */
import type { RestrictedSubstance } from '../restricted-substance.ts';

export const restrictedPreservatives: readonly RestrictedSubstance[] = [
  {
    id: 'benzoic', name: 'Benzoic Acid, Sodium Benzoate', aliases: ['Benzoic Acid', 'Sodium Benzoate'],
    cas: ['65-85-0', '532-32-1'], kind: 'preservative', annex: 'V', entry: '1',
    rules: [
      {
        id: 'benzoic-eu-rinse-off', markets: ['EU', 'NI'], use: 'rinse-off', quantity: 'max', value: 2.5,
        asWhat: 'acid', source: 'cosing5', confidence: 'read',
      },
      {
        id: 'benzoic-eu-oral', markets: ['EU', 'NI'], bodyPart: 'oral', quantity: 'max', value: 1.7, asWhat: 'acid',
        source: 'cosing5', confidence: 'read',
      },
      {
        id: 'benzoic-eu-leave-on', markets: ['EU', 'NI'], use: 'leave-on', quantity: 'max', value: 0.5,
        asWhat: 'acid', source: 'cosing5', confidence: 'read',
      },
      {
        id: 'benzoic-gb-rinse-off', markets: ['GB'], use: 'rinse-off', quantity: 'max', value: 2.5, asWhat: 'acid',
        source: 'memory', confidence: 'memory',
        note: 'Retained entry, taken as unchanged; not looked up entry by entry.',
      },
      {
        id: 'benzoic-gb-oral', markets: ['GB'], bodyPart: 'oral', quantity: 'max', value: 1.7, asWhat: 'acid',
        source: 'memory', confidence: 'memory',
        note: 'Retained entry, taken as unchanged; not looked up entry by entry.',
      },
      {
        id: 'benzoic-gb-leave-on', markets: ['GB'], use: 'leave-on', quantity: 'max', value: 0.5, asWhat: 'acid',
        source: 'memory', confidence: 'memory',
        note: 'Retained entry, taken as unchanged; not looked up entry by entry.',
      },
    ],
    source: 'cosing5', confidence: 'read', note: 'Only for products with water or that meet water.',
  },
  {
    id: 'sorbic', name: 'Sorbic Acid, Potassium Sorbate', aliases: ['Sorbic Acid', 'Potassium Sorbate'],
    cas: ['110-44-1', '24634-61-5'], kind: 'preservative', annex: 'V', entry: '4',
    rules: [
      {
        id: 'sorbic-eu-any', markets: ['EU', 'NI'], quantity: 'max', value: 0.6, asWhat: 'acid', source: 'cosing5',
        confidence: 'read',
      },
      {
        id: 'sorbic-gb-any', markets: ['GB'], quantity: 'max', value: 0.6, asWhat: 'acid', source: 'memory',
        confidence: 'memory', note: 'Retained entry, taken as unchanged; not looked up entry by entry.',
      },
    ],
    source: 'cosing5', confidence: 'read', note: 'Only for products with water or that meet water.',
  },
  {
    id: 'salicylic-preservative', name: 'Salicylic Acid and salts', aliases: ['Salicylic Acid', 'Sodium Salicylate'],
    cas: ['69-72-7'], kind: 'preservative', annex: 'V', entry: '3',
    rules: [
      {
        id: 'salicylic-preservative-eu-any', markets: ['EU', 'NI'], quantity: 'max', value: 0.5, asWhat: 'acid',
        warning: 'Not to be used for children under 3 years of age', source: 'cosing5', confidence: 'read',
        note: 'Warning only on products that might be used for children under 3 years.',
      },
      {
        id: 'salicylic-preservative-eu-under-3', markets: ['EU', 'NI'], maxAgeMonths: 36, quantity: 'prohibited',
        source: 'cosing5', confidence: 'read',
      },
      {
        id: 'salicylic-preservative-eu-oral', markets: ['EU', 'NI'], bodyPart: 'oral', quantity: 'prohibited',
        source: 'cosing5', confidence: 'read',
      },
      {
        id: 'salicylic-preservative-eu-lungs', markets: ['EU', 'NI'], quantity: 'prohibited', onlyIf: 'lung-exposure',
        source: 'cosing5', confidence: 'read',
      },
      {
        id: 'salicylic-preservative-gb-any', markets: ['GB'], quantity: 'max', value: 0.5, asWhat: 'acid',
        warning: 'Not to be used for children under 3 years of age', source: 'memory', confidence: 'memory',
        note: 'Retained entry, taken as unchanged; not looked up entry by entry.',
      },
      {
        id: 'salicylic-preservative-gb-under-3', markets: ['GB'], maxAgeMonths: 36, quantity: 'prohibited',
        source: 'memory', confidence: 'memory',
        note: 'Retained entry, taken as unchanged; not looked up entry by entry.',
      },
      {
        id: 'salicylic-preservative-gb-oral', markets: ['GB'], bodyPart: 'oral', quantity: 'prohibited',
        source: 'memory', confidence: 'memory',
        note: 'Retained entry, taken as unchanged; not looked up entry by entry.',
      },
      {
        id: 'salicylic-preservative-gb-lungs', markets: ['GB'], quantity: 'prohibited', onlyIf: 'lung-exposure',
        source: 'memory', confidence: 'memory',
        note: 'Retained entry, taken as unchanged; not looked up entry by entry.',
      },
    ],
    source: 'cosing5', confidence: 'read',
    note: 'The prohibitions are for salicylic acid; whether they hold for its salts is not kept here. Only for products with water or that meet water.',
  },
  {
    id: 'parabens-me-et', name: 'Methylparaben, Ethylparaben, 4-Hydroxybenzoic acid',
    aliases: ['Methylparaben', 'Ethylparaben', '4-Hydroxybenzoic Acid'], cas: ['99-96-7', '99-76-3'],
    kind: 'preservative', annex: 'V', entry: '12',
    rules: [
      {
        id: 'parabens-me-et-eu-single', markets: ['EU', 'NI'], quantity: 'max', value: 0.4, asWhat: 'acid',
        onlyIf: 'single-ester', source: 'cosing5', confidence: 'read',
      },
      {
        id: 'parabens-me-et-eu-mixture', markets: ['EU', 'NI'], quantity: 'max', value: 0.8, asWhat: 'acid',
        onlyIf: 'ester-mixture', source: 'cosing5', confidence: 'read',
      },
      {
        id: 'parabens-me-et-gb-single', markets: ['GB'], quantity: 'max', value: 0.4, asWhat: 'acid',
        onlyIf: 'single-ester', source: 'memory', confidence: 'memory',
        note: 'Retained entry, taken as unchanged; not looked up entry by entry.',
      },
      {
        id: 'parabens-me-et-gb-mixture', markets: ['GB'], quantity: 'max', value: 0.8, asWhat: 'acid',
        onlyIf: 'ester-mixture', source: 'memory', confidence: 'memory',
        note: 'Retained entry, taken as unchanged; not looked up entry by entry.',
      },
    ],
    source: 'cosing5', confidence: 'read', note: 'Only for products with water or that meet water.',
  },
  {
    id: 'parabens-pr-bu', name: 'Propylparaben, Butylparaben', aliases: ['Propylparaben', 'Butylparaben'],
    cas: ['94-13-3', '94-26-8'], kind: 'preservative', annex: 'V', entry: '12a',
    rules: [
      {
        id: 'parabens-pr-bu-eu-sum', markets: ['EU', 'NI'], quantity: 'max', value: 0.14, asWhat: 'acid',
        source: 'cosing5', confidence: 'read',
      },
      {
        id: 'parabens-pr-bu-eu-leave-on-under-3', markets: ['EU', 'NI'], use: 'leave-on', maxAgeMonths: 36,
        quantity: 'max', value: 0.14, asWhat: 'acid', warning: 'Do not use on the nappy area', source: 'cosing5',
        confidence: 'read',
      },
      {
        id: 'parabens-pr-bu-eu-nappy-area', markets: ['EU', 'NI'], use: 'leave-on', bodyPart: 'nappy-area',
        maxAgeMonths: 36, quantity: 'prohibited', source: 'cosing5', confidence: 'read',
      },
      {
        id: 'parabens-pr-bu-gb-sum', markets: ['GB'], quantity: 'max', value: 0.14, asWhat: 'acid', source: 'memory',
        confidence: 'memory', note: 'Retained entry, taken as unchanged; not looked up entry by entry.',
      },
      {
        id: 'parabens-pr-bu-gb-leave-on-under-3', markets: ['GB'], use: 'leave-on', maxAgeMonths: 36, quantity: 'max',
        value: 0.14, asWhat: 'acid', warning: 'Do not use on the nappy area', source: 'memory', confidence: 'memory',
        note: 'Retained entry, taken as unchanged; not looked up entry by entry.',
      },
      {
        id: 'parabens-pr-bu-gb-nappy-area', markets: ['GB'], use: 'leave-on', bodyPart: 'nappy-area',
        maxAgeMonths: 36, quantity: 'prohibited', source: 'memory', confidence: 'memory',
        note: 'Retained entry, taken as unchanged; not looked up entry by entry.',
      },
    ],
    source: 'cosing5', confidence: 'read', note: 'Sum of the two. Only for products with water or that meet water.',
  },
  {
    id: 'dehydroacetic', name: 'Dehydroacetic Acid, Sodium Dehydroacetate',
    aliases: ['Dehydroacetic Acid', 'Sodium Dehydroacetate'], cas: ['520-45-6'], kind: 'preservative', annex: 'V',
    entry: '13',
    rules: [
      {
        id: 'dehydroacetic-eu-any', markets: ['EU', 'NI'], quantity: 'max', value: 0.6, asWhat: 'acid',
        source: 'cosing5', confidence: 'read',
      },
      {
        id: 'dehydroacetic-eu-aerosol', markets: ['EU', 'NI'], quantity: 'prohibited', onlyIf: 'aerosol-spray',
        source: 'cosing5', confidence: 'read',
      },
      {
        id: 'dehydroacetic-gb-any', markets: ['GB'], quantity: 'max', value: 0.6, asWhat: 'acid', source: 'memory',
        confidence: 'memory', note: 'Retained entry, taken as unchanged; not looked up entry by entry.',
      },
      {
        id: 'dehydroacetic-gb-aerosol', markets: ['GB'], quantity: 'prohibited', onlyIf: 'aerosol-spray',
        source: 'memory', confidence: 'memory',
        note: 'Retained entry, taken as unchanged; not looked up entry by entry.',
      },
    ],
    source: 'cosing5', confidence: 'read', note: 'Only for products with water or that meet water.',
  },
  {
    id: 'formic', name: 'Formic Acid, Sodium Formate', aliases: ['Formic Acid', 'Sodium Formate'],
    cas: ['64-18-6', '141-53-7'], kind: 'preservative', annex: 'V', entry: '14',
    rules: [
      {
        id: 'formic-eu-any', markets: ['EU', 'NI'], quantity: 'max', value: 0.5, asWhat: 'acid', source: 'cosing5',
        confidence: 'read',
      },
      {
        id: 'formic-gb-any', markets: ['GB'], quantity: 'max', value: 0.5, asWhat: 'acid', source: 'memory',
        confidence: 'memory', note: 'Retained entry, taken as unchanged; not looked up entry by entry.',
      },
    ],
    source: 'cosing5', confidence: 'read', note: 'Only for products with water or that meet water.',
  },
  {
    id: 'dcba', name: '2,4-Dichlorobenzyl Alcohol', aliases: ['Dichlorobenzyl Alcohol'], cas: ['1777-82-8'],
    kind: 'preservative', annex: 'V', entry: '22',
    rules: [
      {
        id: 'dcba-eu-any', markets: ['EU', 'NI'], quantity: 'max', value: 0.15, source: 'cosing5', confidence: 'read',
      },
      {
        id: 'dcba-gb-any', markets: ['GB'], quantity: 'max', value: 0.15, source: 'memory', confidence: 'memory',
        note: 'Retained entry, taken as unchanged; not looked up entry by entry.',
      },
    ],
    source: 'cosing5', confidence: 'read', note: 'Only for products with water or that meet water.',
  },
  {
    id: 'phenoxyethanol', name: 'Phenoxyethanol', cas: ['122-99-6'], kind: 'preservative', annex: 'V', entry: '29',
    rules: [
      {
        id: 'phenoxyethanol-eu-any', markets: ['EU', 'NI'], quantity: 'max', value: 1, source: 'cosing5',
        confidence: 'read',
      },
      {
        id: 'phenoxyethanol-gb-any', markets: ['GB'], quantity: 'max', value: 1, source: 'memory',
        confidence: 'memory', note: 'Retained entry, taken as unchanged; not looked up entry by entry.',
      },
    ],
    source: 'cosing5', confidence: 'read', note: 'Only for products with water or that meet water.',
  },
  {
    id: 'benzyl-alcohol', name: 'Benzyl Alcohol (as preservative)', aliases: ['Benzyl Alcohol'], cas: ['100-51-6'],
    kind: 'preservative', annex: 'V', entry: '34',
    rules: [
      {
        id: 'benzyl-alcohol-eu-any', markets: ['EU', 'NI'], quantity: 'max', value: 1, source: 'cosing5',
        confidence: 'read',
      },
      {
        id: 'benzyl-alcohol-gb-any', markets: ['GB'], quantity: 'max', value: 1, source: 'memory',
        confidence: 'memory', note: 'Retained entry, taken as unchanged; not looked up entry by entry.',
      },
    ],
    source: 'cosing5', confidence: 'read',
    note: 'Also an allergen to be named (Annex III 45). Only for products with water or that meet water.',
  },
  {
    id: 'o-cymen-5-ol', name: 'o-Cymen-5-ol', cas: ['3228-02-2'], kind: 'preservative', annex: 'V', entry: '38',
    rules: [
      {
        id: 'o-cymen-5-ol-eu-any', markets: ['EU', 'NI'], quantity: 'max', value: 0.1, source: 'cosing5',
        confidence: 'read',
      },
      {
        id: 'o-cymen-5-ol-gb-any', markets: ['GB'], quantity: 'max', value: 0.1, source: 'memory',
        confidence: 'memory', note: 'Retained entry, taken as unchanged; not looked up entry by entry.',
      },
    ],
    source: 'cosing5', confidence: 'read', note: 'Only for products with water or that meet water.',
  },
  {
    id: 'mci-mi', name: 'Methylchloroisothiazolinone and Methylisothiazolinone (3:1)',
    aliases: ['Methylchloroisothiazolinone (and) Methylisothiazolinone'], cas: ['55965-84-9'], kind: 'preservative',
    annex: 'V', entry: '39',
    rules: [
      {
        id: 'mci-mi-eu-rinse-off', markets: ['EU', 'NI'], use: 'rinse-off', quantity: 'max', value: 0.0015,
        source: 'cosing5', confidence: 'read',
      },
      {
        id: 'mci-mi-eu-leave-on', markets: ['EU', 'NI'], use: 'leave-on', quantity: 'prohibited', source: 'cosing5',
        confidence: 'read', note: 'Rinse-off only.',
      },
      {
        id: 'mci-mi-gb-rinse-off', markets: ['GB'], use: 'rinse-off', quantity: 'max', value: 0.0015,
        source: 'memory', confidence: 'memory',
        note: 'Retained entry, taken as unchanged; not looked up entry by entry.',
      },
      {
        id: 'mci-mi-gb-leave-on', markets: ['GB'], use: 'leave-on', quantity: 'prohibited', source: 'memory',
        confidence: 'memory', note: 'Retained entry, taken as unchanged; not looked up entry by entry.',
      },
    ],
    source: 'cosing5', confidence: 'read', note: 'Only for products with water or that meet water.',
  },
  {
    id: 'mi', name: 'Methylisothiazolinone', aliases: ['MI', 'MIT'], cas: ['2682-20-4'], kind: 'preservative',
    annex: 'V', entry: '57',
    rules: [
      {
        id: 'mi-eu-rinse-off', markets: ['EU', 'NI'], use: 'rinse-off', quantity: 'max', value: 0.0015,
        source: 'cosing5', confidence: 'read',
      },
      {
        id: 'mi-eu-leave-on', markets: ['EU', 'NI'], use: 'leave-on', quantity: 'prohibited', source: 'cosing5',
        confidence: 'read', note: 'Rinse-off only.',
      },
      {
        id: 'mi-gb-rinse-off', markets: ['GB'], use: 'rinse-off', quantity: 'max', value: 0.0015, source: 'memory',
        confidence: 'memory', note: 'Retained entry, taken as unchanged; not looked up entry by entry.',
      },
      {
        id: 'mi-gb-leave-on', markets: ['GB'], use: 'leave-on', quantity: 'prohibited', source: 'memory',
        confidence: 'memory', note: 'Retained entry, taken as unchanged; not looked up entry by entry.',
      },
    ],
    source: 'cosing5', confidence: 'read', note: 'Only for products with water or that meet water.',
  },
  {
    id: 'chlorphenesin', name: 'Chlorphenesin', cas: ['104-29-0'], kind: 'preservative', annex: 'V', entry: '50',
    rules: [
      {
        id: 'chlorphenesin-eu-any', markets: ['EU', 'NI'], quantity: 'max', value: 0.3, source: 'cosing5',
        confidence: 'read',
      },
      {
        id: 'chlorphenesin-gb-any', markets: ['GB'], quantity: 'max', value: 0.3, source: 'memory',
        confidence: 'memory', note: 'Retained entry, taken as unchanged; not looked up entry by entry.',
      },
    ],
    source: 'cosing5', confidence: 'read', note: 'Only for products with water or that meet water.',
  },
  {
    id: 'dmdm', name: 'DMDM Hydantoin (releases formaldehyde)', aliases: ['DMDM Hydantoin'], cas: ['6440-58-0'],
    kind: 'preservative', annex: 'V', entry: '33',
    rules: [
      {
        id: 'dmdm-eu-any', markets: ['EU', 'NI'], quantity: 'max', value: 0.6, source: 'cosing5', confidence: 'read',
      },
      {
        id: 'dmdm-eu-releases-formaldehyde', markets: ['EU', 'NI'], quantity: 'max', value: 0.6,
        onlyIf: 'released-formaldehyde-over-threshold', warning: 'releases formaldehyde', source: 'memory',
        confidence: 'memory',
        note: 'Threshold 0.001 % (10 ppm) free formaldehyde in the product, in the EU since 2024 (Regulation (EU) 2022/1181; memory).',
      },
      {
        id: 'dmdm-gb-any', markets: ['GB'], quantity: 'max', value: 0.6, source: 'memory', confidence: 'memory',
        note: 'Retained entry, taken as unchanged; not looked up entry by entry.',
      },
      {
        id: 'dmdm-gb-releases-formaldehyde', markets: ['GB'], quantity: 'max', value: 0.6, from: '2026-07-15',
        until: '2027-01-15', onlyIf: 'released-formaldehyde-over-threshold', source: 'gb2026',
        confidence: 'read-secondary',
        note: 'Threshold lowered by an instrument of 2026 as notified; its figure and the wording of the warning were not read.',
      },
    ],
    source: 'cosing5', confidence: 'read', note: 'Only for products with water or that meet water.',
  },
  {
    id: 'sodium-hydroxymethylglycinate', name: 'Sodium Hydroxymethylglycinate', cas: ['70161-44-3'],
    kind: 'preservative', annex: 'V', entry: '51',
    rules: [
      {
        id: 'sodium-hydroxymethylglycinate-eu-any', markets: ['EU', 'NI'], quantity: 'max', value: 0.5,
        source: 'cosing5', confidence: 'read',
      },
      {
        id: 'sodium-hydroxymethylglycinate-eu-raw-formaldehyde', markets: ['EU', 'NI'], basis: 'raw-material',
        quantity: 'max', value: 0.1, asWhat: 'releasable formaldehyde', strict: true, source: 'cosing5',
        confidence: 'read', note: 'Of the mixture as placed on the market: not if 0.1 % or more.',
      },
      {
        id: 'sodium-hydroxymethylglycinate-gb-any', markets: ['GB'], quantity: 'max', value: 0.5, source: 'memory',
        confidence: 'memory', note: 'Retained entry, taken as unchanged; not looked up entry by entry.',
      },
      {
        id: 'sodium-hydroxymethylglycinate-gb-raw-formaldehyde', markets: ['GB'], basis: 'raw-material',
        quantity: 'max', value: 0.1, asWhat: 'releasable formaldehyde', strict: true, source: 'memory',
        confidence: 'memory', note: 'Retained entry, taken as unchanged; not looked up entry by entry.',
      },
    ],
    source: 'cosing5', confidence: 'read', note: 'Only for products with water or that meet water.',
  },
  {
    id: 'ipbc', name: 'Iodopropynyl Butylcarbamate', aliases: ['IPBC', 'Iodopropynyl Butylcarbamate'],
    cas: ['55406-53-6'], kind: 'preservative', annex: 'V', entry: '56',
    rules: [
      {
        id: 'ipbc-eu-rinse-off', markets: ['EU', 'NI'], use: 'rinse-off', quantity: 'max', value: 0.02,
        warning: 'Not to be used for children under 3 years of age', source: 'cosing5', confidence: 'read',
        note: 'Warning only on products, other than bath products, shower gels and shampoo, that might be used for children under 3 years.',
      },
      {
        id: 'ipbc-eu-leave-on', markets: ['EU', 'NI'], use: 'leave-on', quantity: 'max', value: 0.01,
        warning: 'Not to be used for children under 3 years of age', source: 'cosing5', confidence: 'read',
        note: 'Warning only on products that might be used for children under 3 years.',
      },
      {
        id: 'ipbc-eu-deodorant', markets: ['EU', 'NI'], use: 'leave-on', productType: 'deodorant', quantity: 'max',
        value: 0.0075, warning: 'Not to be used for children under 3 years of age', source: 'cosing5',
        confidence: 'read', note: 'Warning only on products that might be used for children under 3 years.',
      },
      {
        id: 'ipbc-eu-oral', markets: ['EU', 'NI'], bodyPart: 'oral', quantity: 'prohibited', source: 'cosing5',
        confidence: 'read',
      },
      {
        id: 'ipbc-eu-lip', markets: ['EU', 'NI'], bodyPart: 'lip', quantity: 'prohibited', source: 'cosing5',
        confidence: 'read',
      },
      {
        id: 'ipbc-eu-body-lotion', markets: ['EU', 'NI'], use: 'leave-on', bodyPart: 'body',
        productType: 'body-lotion', quantity: 'prohibited', source: 'reg1223', confidence: 'read-secondary',
        note: 'Not in body lotion and body cream: products for a large part of the body.',
      },
      {
        id: 'ipbc-eu-leave-on-under-3', markets: ['EU', 'NI'], use: 'leave-on', maxAgeMonths: 36,
        quantity: 'prohibited', source: 'reg1223', confidence: 'read-secondary',
      },
      {
        id: 'ipbc-eu-rinse-off-under-3', markets: ['EU', 'NI'], use: 'rinse-off',
        exceptProductTypes: ['bath-product', 'shower-gel', 'shampoo'], maxAgeMonths: 36, quantity: 'prohibited',
        source: 'reg1223', confidence: 'read-secondary',
      },
      {
        id: 'ipbc-gb-rinse-off', markets: ['GB'], use: 'rinse-off', quantity: 'max', value: 0.02,
        warning: 'Not to be used for children under 3 years of age', source: 'memory', confidence: 'memory',
        note: 'Retained entry, taken as unchanged; not looked up entry by entry.',
      },
      {
        id: 'ipbc-gb-leave-on', markets: ['GB'], use: 'leave-on', quantity: 'max', value: 0.01,
        warning: 'Not to be used for children under 3 years of age', source: 'memory', confidence: 'memory',
        note: 'Retained entry, taken as unchanged; not looked up entry by entry.',
      },
      {
        id: 'ipbc-gb-deodorant', markets: ['GB'], use: 'leave-on', productType: 'deodorant', quantity: 'max',
        value: 0.0075, warning: 'Not to be used for children under 3 years of age', source: 'memory',
        confidence: 'memory', note: 'Retained entry, taken as unchanged; not looked up entry by entry.',
      },
      {
        id: 'ipbc-gb-oral', markets: ['GB'], bodyPart: 'oral', quantity: 'prohibited', source: 'memory',
        confidence: 'memory', note: 'Retained entry, taken as unchanged; not looked up entry by entry.',
      },
      {
        id: 'ipbc-gb-lip', markets: ['GB'], bodyPart: 'lip', quantity: 'prohibited', source: 'memory',
        confidence: 'memory', note: 'Retained entry, taken as unchanged; not looked up entry by entry.',
      },
      {
        id: 'ipbc-gb-body-lotion', markets: ['GB'], use: 'leave-on', bodyPart: 'body', productType: 'body-lotion',
        quantity: 'prohibited', source: 'memory', confidence: 'memory',
        note: 'Retained entry, taken as unchanged; not looked up entry by entry.',
      },
      {
        id: 'ipbc-gb-leave-on-under-3', markets: ['GB'], use: 'leave-on', maxAgeMonths: 36, quantity: 'prohibited',
        source: 'memory', confidence: 'memory',
        note: 'Retained entry, taken as unchanged; not looked up entry by entry.',
      },
      {
        id: 'ipbc-gb-rinse-off-under-3', markets: ['GB'], use: 'rinse-off',
        exceptProductTypes: ['bath-product', 'shower-gel', 'shampoo'], maxAgeMonths: 36, quantity: 'prohibited',
        source: 'memory', confidence: 'memory',
        note: 'Retained entry, taken as unchanged; not looked up entry by entry.',
      },
    ],
    source: 'cosing5', confidence: 'read', note: 'Only for products with water or that meet water.',
  },
  {
    id: 'o-phenylphenol', name: 'o-Phenylphenol', aliases: ['Biphenyl-2-ol'], cas: ['90-43-7'], kind: 'preservative',
    annex: 'V', entry: '7',
    rules: [
      {
        id: 'o-phenylphenol-eu-rinse-off', markets: ['EU', 'NI'], use: 'rinse-off', quantity: 'max', value: 0.2,
        asWhat: 'phenol', source: 'cosing5', confidence: 'read',
      },
      {
        id: 'o-phenylphenol-eu-leave-on', markets: ['EU', 'NI'], use: 'leave-on', quantity: 'max', value: 0.15,
        asWhat: 'phenol', source: 'cosing5', confidence: 'read',
      },
      {
        id: 'o-phenylphenol-gb-rinse-off', markets: ['GB'], use: 'rinse-off', quantity: 'max', value: 0.2,
        asWhat: 'phenol', source: 'memory', confidence: 'memory',
        note: 'Retained entry, taken as unchanged; not looked up entry by entry.',
      },
      {
        id: 'o-phenylphenol-gb-leave-on', markets: ['GB'], use: 'leave-on', quantity: 'max', value: 0.15,
        asWhat: 'phenol', source: 'memory', confidence: 'memory',
        note: 'Retained entry, taken as unchanged; not looked up entry by entry.',
      },
      {
        id: 'o-phenylphenol-eu-amended-2026', markets: ['EU', 'NI'], quantity: 'max', value: null, asWhat: 'phenol',
        from: '2026-05-01', source: 'eu2026_78', confidence: 'read-secondary',
        note: 'Amended by Regulation (EU) 2026/78; detail not read.',
      },
    ],
    source: 'cosing5', confidence: 'read',
    note: 'The EU figures are those before Regulation (EU) 2026/78. Only for products with water or that meet water.',
  },
];
