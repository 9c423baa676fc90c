/**
 * Consumer exposure by product type: SCCS Notes of Guidance, 12th revision (SCCS/1647/22), Tables 3A and 3B, with the
 * parameters used beside them and how workshop products map to the types (a judgement, not in the Notes).
 */
import type { ReferenceSource, SourcedRow } from '../sourced-row.ts';

export interface ExposureProductType extends SourcedRow {
  readonly label: string;
  readonly use: 'leave-on' | 'rinse-off' | 'oral';
  readonly group: string;
  readonly amountGramsPerDay: number;
  readonly relativeAmountMgPerKgDay?: number;
  readonly retentionFraction: number;
  readonly exposureGramsPerDay: number;
  /** mg of product per kg of body weight and day, after the retention factor. */
  readonly relativeExposureMgPerKgDay: number;
  readonly skinAreaCm2: number;
  readonly applicationsPerDay: number;
  readonly note?: string;
}

/** Which exposure row stands for what a workshop makes. */
export interface ExposureMapping extends SourcedRow {
  readonly makerProduct: string;
  readonly productType: string;
  readonly reason?: string;
  readonly isJudgement: boolean;
}

export interface ExposureParameter extends SourcedRow {
  readonly name: string;
  readonly value: number;
  readonly unit: string;
  readonly note?: string;
}

export interface ExposureFormula extends SourcedRow {
  readonly name: string;
  readonly formula: string;
  readonly note?: string;
}

export interface AggregateExposure extends SourcedRow {
  readonly name: string;
  readonly publishedExposureGramsPerDay: number;
  readonly publishedRelativeExposureMgPerKgDay: number;
  readonly recomputedExposureGramsPerDay: number;
  readonly recomputedRelativeExposureMgPerKgDay: number;
  readonly parts: readonly string[];
  readonly note?: string;
}

export const exposureProductTypes: readonly ExposureProductType[] = [
  {
    id: 'shower-gel', label: 'Shower gel', use: 'rinse-off', group: 'bathing', amountGramsPerDay: 18.67,
    relativeAmountMgPerKgDay: 279.2, retentionFraction: 0.01, exposureGramsPerDay: 0.19,
    relativeExposureMgPerKgDay: 2.79, skinAreaCm2: 17500, applicationsPerDay: 1.43, source: 'sccs-nog-12',
    confidence: 'read',
    evidence: {
      skinAreaCm2: { source: 'sccs-nog-memory', confidence: 'memory' },
      applicationsPerDay: { source: 'sccs-nog-memory', confidence: 'memory' },
    },
  },
  {
    id: 'shampoo', label: 'Shampoo', use: 'rinse-off', group: 'hair', amountGramsPerDay: 10.46,
    relativeAmountMgPerKgDay: 150.49, retentionFraction: 0.01, exposureGramsPerDay: 0.11,
    relativeExposureMgPerKgDay: 1.51, skinAreaCm2: 1440, applicationsPerDay: 1, source: 'sccs-nog-12',
    confidence: 'read',
    evidence: {
      skinAreaCm2: { source: 'sccs-nog-memory', confidence: 'memory' },
      applicationsPerDay: { source: 'sccs-nog-memory', confidence: 'memory' },
    },
  },
  {
    id: 'hair-styling', label: 'Hair styling product', use: 'leave-on', group: 'hair', amountGramsPerDay: 4,
    relativeAmountMgPerKgDay: 57.4, retentionFraction: 0.1, exposureGramsPerDay: 0.4,
    relativeExposureMgPerKgDay: 5.74, skinAreaCm2: 1010, applicationsPerDay: 1.14, source: 'sccs-nog-12',
    confidence: 'read',
    evidence: {
      skinAreaCm2: { source: 'sccs-nog-memory', confidence: 'memory' },
      applicationsPerDay: { source: 'sccs-nog-memory', confidence: 'memory' },
    },
  },
  {
    id: 'body-lotion', label: 'Body lotion', use: 'leave-on', group: 'skin-care', amountGramsPerDay: 7.82,
    relativeAmountMgPerKgDay: 123.2, retentionFraction: 1, exposureGramsPerDay: 7.82,
    relativeExposureMgPerKgDay: 123.2, skinAreaCm2: 15670, applicationsPerDay: 2.28, source: 'sccs-nog-12',
    confidence: 'read',
    evidence: {
      skinAreaCm2: { source: 'sccs-nog-memory', confidence: 'memory' },
      applicationsPerDay: { source: 'sccs-nog-memory', confidence: 'memory' },
    },
  },
  {
    id: 'face-cream', label: 'Face cream', use: 'leave-on', group: 'skin-care', amountGramsPerDay: 1.54,
    relativeAmountMgPerKgDay: 24.14, retentionFraction: 1, exposureGramsPerDay: 1.54,
    relativeExposureMgPerKgDay: 24.14, skinAreaCm2: 565, applicationsPerDay: 2.14, source: 'sccs-nog-12',
    confidence: 'read',
    evidence: {
      skinAreaCm2: { source: 'sccs-nog-memory', confidence: 'memory' },
      applicationsPerDay: { source: 'sccs-nog-memory', confidence: 'memory' },
    },
  },
  {
    id: 'hand-cream', label: 'Hand cream', use: 'leave-on', group: 'skin-care', amountGramsPerDay: 2.16,
    relativeAmountMgPerKgDay: 32.7, retentionFraction: 1, exposureGramsPerDay: 2.16, relativeExposureMgPerKgDay: 32.7,
    skinAreaCm2: 860, applicationsPerDay: 2, source: 'sccs-nog-12', confidence: 'read',
    evidence: {
      skinAreaCm2: { source: 'sccs-nog-memory', confidence: 'memory' },
      applicationsPerDay: { source: 'sccs-nog-memory', confidence: 'memory' },
    },
  },
  {
    id: 'liquid-foundation', label: 'Liquid foundation', use: 'leave-on', group: 'make-up', amountGramsPerDay: 0.51,
    relativeAmountMgPerKgDay: 7.9, retentionFraction: 1, exposureGramsPerDay: 0.51, relativeExposureMgPerKgDay: 7.9,
    skinAreaCm2: 565, applicationsPerDay: 1, source: 'sccs-nog-12', confidence: 'read',
    evidence: {
      skinAreaCm2: { source: 'sccs-nog-memory', confidence: 'memory' },
      applicationsPerDay: { source: 'sccs-nog-memory', confidence: 'memory' },
    },
  },
  {
    id: 'lip-product', label: 'Lipstick, lip salve', use: 'leave-on', group: 'make-up', amountGramsPerDay: 0.057,
    relativeAmountMgPerKgDay: 0.9, retentionFraction: 1, exposureGramsPerDay: 0.057, relativeExposureMgPerKgDay: 0.9,
    skinAreaCm2: 4.8, applicationsPerDay: 2,
    note: 'Treat the whole amount as swallowed; use the oral route, not dermal absorption (memory).',
    source: 'sccs-nog-12', confidence: 'read',
    evidence: {
      skinAreaCm2: { source: 'sccs-nog-memory', confidence: 'memory' },
      applicationsPerDay: { source: 'sccs-nog-memory', confidence: 'memory' },
    },
  },
  {
    id: 'deodorant-nonspray', label: 'Deodorant, non-spray', use: 'leave-on', group: 'deodorant',
    amountGramsPerDay: 1.5, relativeAmountMgPerKgDay: 22.08, retentionFraction: 1, exposureGramsPerDay: 1.5,
    relativeExposureMgPerKgDay: 22.08, skinAreaCm2: 200, applicationsPerDay: 2, source: 'sccs-nog-12',
    confidence: 'read',
    evidence: {
      skinAreaCm2: { source: 'sccs-nog-memory', confidence: 'memory' },
      applicationsPerDay: { source: 'sccs-nog-memory', confidence: 'memory' },
    },
  },
  {
    id: 'deodorant-spray', label: 'Deodorant aerosol (ethanol based)', use: 'leave-on', group: 'deodorant',
    amountGramsPerDay: 0.69, relativeAmountMgPerKgDay: 10, retentionFraction: 1, exposureGramsPerDay: 0.69,
    relativeExposureMgPerKgDay: 10, skinAreaCm2: 200, applicationsPerDay: 2, source: 'sccs-nog-12',
    confidence: 'read',
    evidence: {
      skinAreaCm2: { source: 'sccs-nog-memory', confidence: 'memory' },
      applicationsPerDay: { source: 'sccs-nog-memory', confidence: 'memory' },
    },
  },
  {
    id: 'toothpaste-adult', label: 'Toothpaste, adult', use: 'oral', group: 'oral', amountGramsPerDay: 2.75,
    relativeAmountMgPerKgDay: 43.29, retentionFraction: 0.05, exposureGramsPerDay: 0.138,
    relativeExposureMgPerKgDay: 2.16, skinAreaCm2: 216.8, applicationsPerDay: 2, source: 'sccs-nog-12',
    confidence: 'read',
    evidence: {
      skinAreaCm2: { source: 'sccs-nog-memory', confidence: 'memory' },
      applicationsPerDay: { source: 'sccs-nog-memory', confidence: 'memory' },
    },
  },
  {
    id: 'mouthwash', label: 'Mouthwash', use: 'oral', group: 'oral', amountGramsPerDay: 21.62,
    relativeAmountMgPerKgDay: 325.4, retentionFraction: 0.1, exposureGramsPerDay: 2.16,
    relativeExposureMgPerKgDay: 32.54, skinAreaCm2: 216.8, applicationsPerDay: 2, source: 'sccs-nog-12',
    confidence: 'read',
    evidence: {
      skinAreaCm2: { source: 'sccs-nog-memory', confidence: 'memory' },
      applicationsPerDay: { source: 'sccs-nog-memory', confidence: 'memory' },
    },
  },
  {
    id: 'hair-conditioner', label: 'Hair conditioner (rinse-off)', use: 'rinse-off', group: 'hair',
    amountGramsPerDay: 3.92, retentionFraction: 0.01, exposureGramsPerDay: 0.04, relativeExposureMgPerKgDay: 0.67,
    skinAreaCm2: 1440, applicationsPerDay: 0.28, source: 'sccs-nog-12', confidence: 'read',
    evidence: {
      skinAreaCm2: { source: 'sccs-nog-memory', confidence: 'memory' },
      applicationsPerDay: { source: 'sccs-nog-memory', confidence: 'memory' },
    },
  },
  {
    id: 'hand-wash-soap', label: 'Hand wash soap', use: 'rinse-off', group: 'bathing', amountGramsPerDay: 20,
    relativeAmountMgPerKgDay: 333.33, retentionFraction: 0.01, exposureGramsPerDay: 0.2,
    relativeExposureMgPerKgDay: 3.33, skinAreaCm2: 860, applicationsPerDay: 10,
    note: 'From memory; accepted because the sum with the read rows reproduces the published 269 mg/kg bw/day (see the row aggregate-all-products).',
    source: 'sccs-nog-memory', confidence: 'memory',
  },
  {
    id: 'make-up-remover', label: 'Make-up remover', use: 'rinse-off', group: 'make-up', amountGramsPerDay: 5,
    relativeAmountMgPerKgDay: 83.33, retentionFraction: 0.1, exposureGramsPerDay: 0.5,
    relativeExposureMgPerKgDay: 8.33, skinAreaCm2: 565, applicationsPerDay: 1,
    note: 'From memory; accepted because the sum with the read rows reproduces the published 269 mg/kg bw/day (see the row aggregate-all-products).',
    source: 'sccs-nog-memory', confidence: 'memory',
  },
  {
    id: 'eye-shadow', label: 'Eye shadow', use: 'leave-on', group: 'make-up', amountGramsPerDay: 0.02,
    relativeAmountMgPerKgDay: 0.33, retentionFraction: 1, exposureGramsPerDay: 0.02, relativeExposureMgPerKgDay: 0.33,
    skinAreaCm2: 24, applicationsPerDay: 2,
    note: 'From memory; accepted because the sum with the read rows reproduces the published 269 mg/kg bw/day (see the row aggregate-all-products).',
    source: 'sccs-nog-memory', confidence: 'memory',
  },
  {
    id: 'mascara', label: 'Mascara', use: 'leave-on', group: 'make-up', amountGramsPerDay: 0.025,
    relativeAmountMgPerKgDay: 0.42, retentionFraction: 1, exposureGramsPerDay: 0.025,
    relativeExposureMgPerKgDay: 0.42, skinAreaCm2: 1.6, applicationsPerDay: 2,
    note: 'From memory; accepted because the sum with the read rows reproduces the published 269 mg/kg bw/day (see the row aggregate-all-products).',
    source: 'sccs-nog-memory', confidence: 'memory',
  },
  {
    id: 'eyeliner', label: 'Eyeliner', use: 'leave-on', group: 'make-up', amountGramsPerDay: 0.005,
    relativeAmountMgPerKgDay: 0.08, retentionFraction: 1, exposureGramsPerDay: 0.005,
    relativeExposureMgPerKgDay: 0.08, skinAreaCm2: 3.2, applicationsPerDay: 2,
    note: 'From memory; accepted because the sum with the read rows reproduces the published 269 mg/kg bw/day (see the row aggregate-all-products).',
    source: 'sccs-nog-memory', confidence: 'memory',
  },
];

export const exposureMappings: readonly ExposureMapping[] = [
  {
    id: 'map-whipped-body-butter', makerProduct: 'whipped body butter', productType: 'body-lotion',
    reason: 'leave-on, whole body', isJudgement: true, source: 'table-sum', confidence: 'derived',
  },
  {
    id: 'map-body-oil-massage-oil-body-balm', makerProduct: 'body oil, massage oil, body balm',
    productType: 'body-lotion', reason: 'no own row in the Notes; whole-body leave-on is the cautious choice',
    isJudgement: true, source: 'table-sum', confidence: 'derived',
  },
  {
    id: 'map-hand-balm-cuticle-balm', makerProduct: 'hand balm, cuticle balm', productType: 'hand-cream',
    isJudgement: true, source: 'table-sum', confidence: 'derived',
  },
  {
    id: 'map-face-balm-facial-oil-beard-balm', makerProduct: 'face balm, facial oil, beard balm',
    productType: 'face-cream', isJudgement: true, source: 'table-sum', confidence: 'derived',
  },
  {
    id: 'map-lip-balm', makerProduct: 'lip balm', productType: 'lip-product', reason: 'swallowed', isJudgement: true,
    source: 'table-sum', confidence: 'derived',
  },
  {
    id: 'map-solid-or-cream-deodorant', makerProduct: 'solid or cream deodorant', productType: 'deodorant-nonspray',
    isJudgement: true, source: 'table-sum', confidence: 'derived',
  },
  {
    id: 'map-salt-or-sugar-body-scrub', makerProduct: 'salt or sugar body scrub', productType: 'shower-gel',
    reason: 'rinse-off; no own row; the oil film that stays behind argues for checking a retention factor of 0.10 as well',
    isJudgement: true, source: 'table-sum', confidence: 'derived',
  },
  {
    id: 'map-bar-soap-liquid-soap-body', makerProduct: 'bar soap, liquid soap (body)', productType: 'shower-gel',
    isJudgement: true, source: 'table-sum', confidence: 'derived',
  },
  {
    id: 'map-bar-soap-liquid-soap-hands', makerProduct: 'bar soap, liquid soap (hands)',
    productType: 'hand-wash-soap', isJudgement: true, source: 'table-sum', confidence: 'derived',
  },
  {
    id: 'map-shampoo-bar', makerProduct: 'shampoo bar', productType: 'shampoo', isJudgement: true,
    source: 'table-sum', confidence: 'derived',
  },
  {
    id: 'map-cleansing-balm', makerProduct: 'cleansing balm', productType: 'make-up-remover', isJudgement: true,
    source: 'table-sum', confidence: 'derived',
  },
  {
    id: 'map-bath-salts-bath-bomb', makerProduct: 'bath salts, bath bomb', productType: 'shower-gel',
    reason: 'the Notes give only area and frequency for bath products; no amount', isJudgement: true,
    source: 'table-sum', confidence: 'derived',
  },
];

export const exposureParameters: readonly ExposureParameter[] = [
  {
    id: 'default-adult-body-weight', name: 'default adult body weight', value: 60, unit: 'kg',
    note: 'The relative amounts in Table 3A are survey values and are NOT amount/60: body lotion 7.82 g/day over 60 kg is 130.3, the table says 123.20 mg/kg bw/day. Use the tabulated relative value unless a worked example states amount over 60 kg.',
    source: 'sccs-nog-12', confidence: 'read',
  },
  {
    id: 'default-dermal-absorption-no-data', name: 'default dermal absorption no data', value: 50, unit: 'percent',
    note: 'Since the 9th revision; before that 100 %. 100 % remains the most cautious choice.',
    source: 'sccs-nog-memory', confidence: 'memory',
  },
  {
    id: 'default-dermal-absorption-unfavourable-physchem', name: 'default dermal absorption unfavourable physchem',
    value: 10, unit: 'percent',
    note: 'MW > 500 Da together with logPow <= -1 or >= 4, high topological polar surface, melting point > 200 C ...; the EU TGD rule (10 %, otherwise 100 %) was read in source bfr09.',
    source: 'sccs-nog-memory', confidence: 'memory',
  },
  {
    id: 'oral-bioavailability-default', name: 'oral bioavailability default', value: 50, unit: 'percent',
    note: 'Turns an oral NOAEL into PoDsys when no absorption data exist.', source: 'podsys', confidence: 'read',
  },
  {
    id: 'oral-bioavailability-poor', name: 'oral bioavailability poor', value: 10, unit: 'percent', source: 'podsys',
    confidence: 'read',
  },
  {
    id: 'mos-minimum', name: 'mos minimum', value: 100, unit: 'ratio',
    note: '10 for species differences x 10 for differences between people.', source: 'podsys', confidence: 'read',
  },
  {
    id: 'loael-to-noael-factor', name: 'loael to noael factor', value: 3, unit: 'ratio', source: 'sccs-nog-memory',
    confidence: 'memory',
  },
  {
    id: 'study-28d-to-90d-factor', name: 'study 28d to 90d factor', value: 3, unit: 'ratio',
    source: 'sccs-nog-memory', confidence: 'memory',
  },
  {
    id: 'in-vitro-absorption-value-to-use', name: 'in vitro absorption value to use', value: 1,
    unit: 'standard deviations above the mean', note: 'mean + 2 SD when the study departs from the basic criteria.',
    source: 'sccs-nog-memory', confidence: 'memory',
  },
  {
    id: 'ttc-genotoxic-alert', name: 'ttc genotoxic alert', value: 0.0025, unit: 'microgramsPerKgDay',
    note: '0.15 ug/person/day', source: 'sccs-nog-memory', confidence: 'memory',
  },
  {
    id: 'ttc-cramer-i-sccs', name: 'ttc cramer I sccs', value: 46, unit: 'microgramsPerKgDay',
    note: 'Cosmetics data set accepted by SCCS (Yang et al. 2017).', source: 'sccs-nog-memory', confidence: 'memory',
  },
  {
    id: 'ttc-cramer-ii-iii-sccs', name: 'ttc cramer II III sccs', value: 2.3, unit: 'microgramsPerKgDay',
    note: 'SCCS does not use class II; such substances are treated as class III.', source: 'sccs-nog-memory',
    confidence: 'memory',
  },
  {
    id: 'ttc-cramer-i-munro', name: 'ttc cramer I munro', value: 30, unit: 'microgramsPerKgDay',
    note: '1800 ug/person/day', source: 'rifm-ttc', confidence: 'read',
  },
  {
    id: 'ttc-cramer-ii-munro', name: 'ttc cramer II munro', value: 9, unit: 'microgramsPerKgDay',
    note: '540 ug/person/day', source: 'sccs-nog-memory', confidence: 'memory',
  },
  {
    id: 'ttc-cramer-iii-munro', name: 'ttc cramer III munro', value: 1.5, unit: 'microgramsPerKgDay',
    note: '90 ug/person/day', source: 'sccs-nog-memory', confidence: 'memory',
  },
  {
    id: 'skin-area-to-weight-ratio-child-vs-adult-birth', name: 'skin area to weight ratio child vs adult birth',
    value: 2.3, unit: 'ratio', source: 'sccs-nog-memory', confidence: 'memory',
  },
  {
    id: 'skin-area-to-weight-ratio-child-vs-adult-6-months',
    name: 'skin area to weight ratio child vs adult 6 months', value: 1.8, unit: 'ratio', source: 'sccs-nog-memory',
    confidence: 'memory',
  },
  {
    id: 'skin-area-to-weight-ratio-child-vs-adult-12-months',
    name: 'skin area to weight ratio child vs adult 12 months', value: 1.6, unit: 'ratio', source: 'sccs-nog-memory',
    confidence: 'memory',
  },
  {
    id: 'skin-area-to-weight-ratio-child-vs-adult-5-years', name: 'skin area to weight ratio child vs adult 5 years',
    value: 1.5, unit: 'ratio', source: 'sccs-nog-memory', confidence: 'memory',
  },
  {
    id: 'skin-area-to-weight-ratio-child-vs-adult-10-years',
    name: 'skin area to weight ratio child vs adult 10 years', value: 1.3, unit: 'ratio', source: 'sccs-nog-memory',
    confidence: 'memory',
  },
  {
    id: 'sunscreen-lotion-amount', name: 'sunscreen lotion amount', value: 18, unit: 'gramsPerDay',
    note: 'Whole body; used in the UV-filter opinions; 18 g over 60 kg = 300 mg/kg bw/day.',
    source: 'sccs-nog-memory', confidence: 'memory',
  },
];

export const exposureFormulas: readonly ExposureFormula[] = [
  {
    id: 'formula-sed-percent', name: 'SED_percent', formula: 'SED = E_product_rel * C/100 * DA_p/100',
    note: 'E_product_rel in mg/kg bw/day (after the retention factor), C in % w/w, DA_p in %', source: 'cosobs',
    confidence: 'read',
  },
  {
    id: 'formula-sed-area', name: 'SED_area', formula: 'SED = DA_a * 1e-3 * SSA * F / bw',
    note: 'DA_a in ug/cm2 per application, SSA in cm2, F applications/day, bw in kg; multiply by the retention factor for rinse-off if DA_a was not measured under rinse-off',
    source: 'sccs-nog-memory', confidence: 'memory',
  },
  {
    id: 'formula-mos', name: 'MoS', formula: 'MoS = PoD_sys / SED',
    note: 'pass when MoS >= 100; do not round up to 100', source: 'podsys', confidence: 'read',
  },
  {
    id: 'formula-pod-sys', name: 'PoD_sys', formula: 'PoD_sys = PoD_oral * oral_bioavailability', source: 'podsys',
    confidence: 'read',
  },
  {
    id: 'formula-max-concentration', name: 'max_concentration',
    formula: 'C_max = 100 * PoD_sys / (MoS_min * E_product_rel * DA_p/100)',
    note: 'concentration in % at which MoS equals MoS_min (100); round down, never up', source: 'table-sum',
    confidence: 'derived',
  },
  {
    id: 'formula-combined-mos', name: 'combined_MoS', formula: '1/MoS_total = sum(1/MoS_i)',
    note: 'same PoD and effect; reproduces the published phthalate example', source: 'table-sum',
    confidence: 'derived',
  },
  {
    id: 'formula-ttc-check', name: 'TTC_check', formula: 'SED <= TTC', note: 'pass at equality', source: 'rifm-ttc',
    confidence: 'read',
  },
];

export const aggregateExposures: readonly AggregateExposure[] = [
  {
    id: 'aggregate-all-products', name: 'Aggregate exposure, preservative-type use in all product types at once',
    publishedExposureGramsPerDay: 17.4, publishedRelativeExposureMgPerKgDay: 269,
    recomputedExposureGramsPerDay: 17.375, recomputedRelativeExposureMgPerKgDay: 268.82,
    parts: [
      'shower-gel', 'hand-wash-soap', 'shampoo', 'hair-conditioner', 'body-lotion', 'face-cream', 'hand-cream',
      'deodorant-nonspray', 'hair-styling', 'liquid-foundation', 'make-up-remover', 'eye-shadow', 'mascara',
      'lip-product', 'eyeliner', 'toothpaste-adult', 'mouthwash',
    ],
    note: 'Sum of the rows named in parts gives the remembered totals to rounding, which supports both.',
    source: 'sccs-nog-memory', confidence: 'memory',
    evidence: {
      recomputedExposureGramsPerDay: { source: 'table-sum', confidence: 'derived' },
      recomputedRelativeExposureMgPerKgDay: { source: 'table-sum', confidence: 'derived' },
    },
  },
];

export const exposureSources: readonly ReferenceSource[] = [
  {
    id: 'sccs-nog-12',
    title: 'SCCS Notes of Guidance for the Testing of Cosmetic Ingredients and their Safety Evaluation, 12th revision (SCCS/1647/22, 15 May 2023; corrigendum 21 Dec 2023), Tables 3A and 3B',
    where: 'read through a public page that reproduces Table 3A in full and the first row of Table 3B', read: true,
  },
  {
    id: 'sccs-nog-memory', title: 'SCCS Notes of Guidance, 11th/12th revision, from memory',
    where: 'health.ec.europa.eu (SCCS opinions)', read: false,
  },
  {
    id: 'podsys',
    title: "Consultant's explanation of MoS calculation: MoS = PoDsys/SED, oral bioavailability default 50 %, 10 % when poor",
    where: "consultant's page", read: true,
  },
  {
    id: 'cosobs', title: 'Annex I.A.7 of Regulation (EC) 1223/2009 explained: exposure to S = X_S x Q x R',
    where: 'trade journal article', read: true,
  },
  {
    id: 'rifm-ttc',
    title: 'RIFM safety assessment of linalyl isovalerate (Food Chem Toxicol 84:S88, 2015), abstract: TTC 0.03 mg/kg/day for Cramer class I',
    where: 'experts.umn.edu', read: true,
  },
  {
    id: 'table-sum', title: 'Arithmetic on Table 3A/3B values (sum over product types)', where: 'own computation',
    read: true,
  },
];
