import { inDays, stampBy } from './stamp.ts';
import type { RunningServer } from './start-server.ts';

/**
 * A small workshop built over HTTP, the way a maker would on the first day: one base, one whipped butter in a 60 ml tin,
 * the assessor's report, scales, goods. Invented.
 */
export interface OwnWorkshop {
  readonly person: string;
  readonly materials: Readonly<
    Record<'shea' | 'sunflower' | 'starch' | 'orange' | 'tin' | 'lid' | 'label', string>
  >;
  readonly scales: Readonly<Record<'bench' | 'small', string>>;
  readonly base: string;
  readonly mixture: string;
  readonly mixtureRevision: string;
  readonly product: string;
  readonly customer: string;
}

const ingredient = (name: string, inci: string, more: Record<string, unknown> = {}) => ({
  kind: 'ingredient',
  name,
  supplier: 'Test Supplies',
  inciEu: inci,
  inciUs: inci,
  botanical: '',
  cas: [],
  plantPart: null,
  process: null,
  role: null,
  densityGramsPerMl: '0.9',
  origins: [],
  constituents: [],
  constituentsAre: 'complete',
  constituentsPaper: 'Declaration 1, invented for the test',
  caution: '',
  packagingKind: null,
  brimMl: null,
  tareGrams: null,
  reorderBelow: '100',
  packSize: '1000',
  packPrice: '10',
  leadDays: 3,
  ...more,
});
const packaging = (name: string, packagingKind: string, more: Record<string, unknown> = {}) => ({
  ...ingredient(name, ''),
  kind: 'packaging',
  packagingKind,
  densityGramsPerMl: null,
  origins: null,
  constituentsAre: null,
  constituentsPaper: '',
  reorderBelow: '10',
  packSize: '100',
  packPrice: '30',
  ...more,
});

/** Figures of the tables (src/reference, sweet orange, expressed), cut to what the journey needs. */
const orangeConstituents = [
  {
    name: 'limonene',
    cas: '5989-27-5',
    leastPercent: '92',
    typicalPercent: '94.5',
    mostPercent: '97',
    source: 'invented for the test',
    confidence: 'supplier',
  },
  {
    name: 'linalool',
    cas: '78-70-6',
    leastPercent: '0.1',
    typicalPercent: '0.4',
    mostPercent: '0.7',
    source: 'invented for the test',
    confidence: 'supplier',
  },
];

export async function buildOwnWorkshop(server: RunningServer): Promise<OwnWorkshop> {
  const begun = await server.call('beginWorkshop', {
    body: { with: 'own', name: 'Test Bench', firstPerson: 'Ada Quill' },
  });
  const person = begun.people[0]?.id ?? '';
  const post = async (
    name: Parameters<RunningServer['call']>[0],
    body: object,
    params: Record<string, string> = {},
  ) =>
    ((await server.call(name, { params, body: { stamp: stampBy(person), ...body } })) as { id: string }).id;
  const gb = { name: 'Test Bench', address: '1 Bench Lane, Testham TT1 1TT, United Kingdom' };
  const eu = { name: 'Test Agents', address: '2 Quay, Testport BT99 9ZZ, Northern Ireland' };
  await server.call('changeWorkshop', {
    body: {
      stamp: stampBy(person),
      version: begun.version,
      details: {
        name: 'Test Bench',
        responsibleGb: gb,
        responsibleEu: eu,
        currency: 'GBP',
        country: 'GB',
        timeZone: 'Europe/London',
        backupFolder: '',
        bowlGrams: '',
      },
    },
  });
  const scale = (name: string, capacityGrams: string, readabilityGrams: string) =>
    post('saveScale', {
      scale: {
        name,
        capacityGrams,
        readabilityGrams,
        repeatabilityGrams: null,
        accuracyClass: null,
        verificationIntervalGrams: null,
      },
    });
  const scales = {
    bench: await scale('Bench scale', '5000', '0.1'),
    small: await scale('Small scale', '200', '0.01'),
  };
  const material = (details: object) => post('saveMaterial', { details });
  const materials = {
    shea: await material(ingredient('Shea butter', 'Butyrospermum Parkii Butter')),
    sunflower: await material(ingredient('Sunflower oil', 'Helianthus Annuus Seed Oil')),
    starch: await material(ingredient('Rice starch', 'Oryza Sativa Starch')),
    orange: await material(
      ingredient('Sweet orange oil', 'Citrus Aurantium Dulcis Peel Oil', {
        cas: ['8008-57-9'],
        plantPart: 'peel',
        process: 'expressed',
        role: 'fragrance',
        botanical: 'Citrus sinensis',
        constituents: orangeConstituents,
      }),
    ),
    tin: await material(packaging('60 ml tin', 'tin', { brimMl: '66', tareGrams: '11.4' })),
    lid: await material(packaging('Lid', 'lid')),
    label: await material(packaging('Label pair', 'label')),
  };
  const base = await post('saveFormula', { name: 'Quiet base', code: 'QB', kind: 'base' });
  await server.call('saveRevision', {
    params: { id: base },
    body: { stamp: stampBy(person), version: null, details: baseRevision(materials) },
  });
  const mixture = await post('saveFormula', { name: 'Orange butter', code: 'OB', kind: 'mixture' });
  const revision = await server.call('saveRevision', {
    params: { id: mixture },
    body: { stamp: stampBy(person), version: null, details: mixtureRevision(base, materials.orange) },
  });
  await post('saveReport', { details: report(base, mixture, materials) });
  const product = await post('saveProduct', { details: productOf(mixture, materials) });
  const customer = await post('saveCustomer', { name: 'C. Buyer', address: '5 Any Road, Testham TT2 2TT' });
  return { person, materials, scales, base, mixture, mixtureRevision: revision.id, product, customer };
}

const step = (stage: string, kind: string, what: string, more: object = {}) => ({
  stage,
  kind,
  what,
  leastCelsius: null,
  mostCelsius: null,
  minutes: null,
  caution: '',
  ...more,
});
const line = (stage: string, itemKind: string, itemId: string, grams: string) => ({
  stage,
  itemKind,
  itemId,
  grams,
});
const judged = {
  use: 'leave-on',
  category: '5A',
  bodyPart: 'body',
  productType: 'body-lotion',
  minAgeMonths: null,
  standing: 'for-sale',
  note: '',
};

const baseRevision = (m: OwnWorkshop['materials']) => ({
  ...judged,
  settingHours: { least: 12, most: 24 },
  keepMonths: 6,
  lines: [
    line('Melt', 'material', m.shea, '600'),
    line('Cool', 'material', m.sunflower, '350'),
    line('Cool', 'material', m.starch, '50'),
  ],
  steps: [
    step('Melt', 'melt', 'Melt in a water bath', {
      leastCelsius: '70',
      mostCelsius: '75',
      minutes: '20',
      caution: 'Hot fat burns.',
    }),
    step('Cool', 'set', 'Cover and let it set'),
  ],
});
const mixtureRevision = (base: string, orange: string) => ({
  ...judged,
  settingHours: null,
  keepMonths: null,
  lines: [line('Whip', 'formula', base, '990'), line('Whip', 'material', orange, '10')],
  steps: [step('Whip', 'whip', 'Whip until pale', { minutes: '6' })],
});
const report = (base: string, mixture: string, m: OwnWorkshop['materials']) => ({
  reference: 'R-1',
  assessor: 'A. N. Assessor',
  signedOn: inDays(-30),
  reviewBy: inDays(365),
  baseFormulaId: base,
  formulaIds: [mixture],
  markets: ['GB', 'NI'],
  uses: ['leave-on'],
  ranges: [
    { materialId: m.shea, leastPercent: '50', mostPercent: '70' },
    { materialId: m.sunflower, leastPercent: '20', mostPercent: '45' },
    { materialId: m.starch, leastPercent: '0', mostPercent: '10' },
    { materialId: m.orange, leastPercent: '0', mostPercent: '1.5' },
  ],
});
const productOf = (formulaId: string, m: OwnWorkshop['materials']) => ({
  name: 'Orange whipped butter',
  formulaId,
  declaredGrams: '35',
  tinId: m.tin,
  lidId: m.lid,
  labelId: m.label,
  aimGrams: null,
  fillBasis: 'minimum',
  bowlLossPercent: '3',
  retainedGrams: '10',
  markets: ['GB', 'NI'],
  functionText: 'Body butter',
  precautions: 'For outward use only. Keep away from eyes.',
  bestBeforeMonths: 12,
  openedMonths: 6,
  price: '9.50',
  faceMm: { shape: 'round', width: 60, height: 60 },
  backMm: { shape: 'round', width: 60, height: 60 },
  isWithdrawn: false,
});
