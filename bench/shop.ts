import type { z } from 'zod';
import type { ReadingAndWriting } from '../example/bench-hand.ts';
import type { formulas, stock, workshop } from '../src/contract/index.ts';
import { essentialOils } from '../src/reference/index.ts';
import { MELTED, rangeOf, SCENT, WHIPPED } from './full-butter.ts';

/** An invented workshop that makes the butter of 25 lines for sale, written as a maker would on the first day. */
export interface Shop {
  /** Ingredients and packaging by name. */
  readonly materials: ReadonlyMap<string, string>;
  readonly base: string;
  readonly butter: string;
  readonly butterRevision: string;
  readonly product: string;
  readonly smallScale: string;
}

/** Reads and writes, and knows how an empty file becomes a workshop and whose name entries are written in. */
export interface SigningHand extends ReadingAndWriting {
  begin(name: string, firstPerson: string): Promise<z.output<typeof workshop.workshop>>;
  setPerson(id: string): void;
}

type Material = z.input<typeof stock.materialDetails>;
type Revision = z.input<typeof formulas.revisionDetails>;

const inDays = (days: number): string => new Date(Date.now() + days * 86_400_000).toISOString().slice(0, 10);

const ingredient = (name: string, inciEu: string, more: Partial<Material> = {}): Material => ({
  kind: 'ingredient',
  name,
  supplier: 'Bench Supplies',
  inciEu,
  inciUs: inciEu,
  botanical: '',
  cas: [],
  plantPart: null,
  process: null,
  role: null,
  densityGramsPerMl: '0.9',
  origins: [],
  constituents: [],
  constituentsAre: 'complete' as const,
  constituentsPaper: 'invented for the measurement',
  supplierMostPercent: null,
  supplierPaper: '',
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

const oils = essentialOils
  .filter(({ id }) => SCENT.includes(id))
  .map((oil) =>
    ingredient(oil.name, oil.inciEu, {
      botanical: oil.botanical,
      cas: [...oil.cas],
      plantPart: oil.plantPart,
      process: oil.process ?? null,
      role: 'fragrance',
      constituents: oil.constituents.map((one) => ({ ...rangeOf(one), source: 'the oil tables' })),
    }),
  );
const fats = [...MELTED, ...WHIPPED].map((inci) => ingredient(inci, inci));
const packaging = (['tin', 'lid', 'label'] as const).map((kind) =>
  ingredient(kind, '', {
    kind: 'packaging',
    packagingKind: kind,
    origins: null,
    constituentsAre: null,
    constituentsPaper: '',
    densityGramsPerMl: null,
    ...(kind === 'tin' && { brimMl: '66', tareGrams: '11.4' }),
  }),
);

export async function buildShop(hand: SigningHand): Promise<Shop> {
  await openShop(hand);
  const smallScale = await addScales(hand);
  const materials = new Map<string, string>();
  for (const details of [...fats, ...oils, ...packaging])
    materials.set(details.name, (await hand.write('saveMaterial', { details })).id);
  const base = await addFormula(hand, 'Quiet base', 'QB', 'base', baseDetails(materials));
  const butter = await addFormula(hand, 'Twelve oils', 'TO', 'mixture', butterDetails(materials, base.id));
  await hand.write('saveReport', { details: reportOn(materials, base.id, butter.id) });
  await decideUnknowns(hand, base.revision);
  await decideUnknowns(hand, butter.revision);
  const product = await addProduct(hand, materials, butter.id);
  return {
    materials,
    base: base.id,
    butter: butter.id,
    butterRevision: butter.revision,
    product,
    smallScale,
  };
}

async function openShop(hand: SigningHand): Promise<void> {
  const begun = await hand.begin('Bench', 'Ada Quill');
  hand.setPerson(begun.people[0]?.id ?? '');
  const responsible = { name: 'Bench', address: '1 Bench Lane, Benchham BB1 1BB, United Kingdom' };
  await hand.write('changeWorkshop', {
    version: begun.version,
    details: {
      name: 'Bench',
      responsibleGb: responsible,
      responsibleEu: { name: 'Bench Agents', address: '2 Quay, Benchport BT99 9ZZ, Northern Ireland' },
      currency: 'GBP',
      country: 'GB',
      timeZone: 'Europe/London',
      backupFolder: '',
      bowlGrams: '',
    },
  });
}

async function addScales(hand: ReadingAndWriting): Promise<string> {
  const unsaid = { repeatabilityGrams: null, accuracyClass: null, verificationIntervalGrams: null };
  const add = async (name: string, capacityGrams: string, readabilityGrams: string) =>
    (await hand.write('saveScale', { scale: { name, capacityGrams, readabilityGrams, ...unsaid } })).id;
  await add('Bench scale', '5000', '0.1');
  return add('Small scale', '200', '0.001');
}

async function addFormula(
  hand: ReadingAndWriting,
  name: string,
  code: string,
  kind: 'base' | 'mixture',
  details: Revision,
): Promise<{ readonly id: string; readonly revision: string }> {
  const { id } = await hand.write('saveFormula', { name, code, kind });
  const revision = await hand.write('saveRevision', { version: null, details }, { id });
  return { id, revision: revision.id };
}

type Goods = ReadonlyMap<string, string>;
const idOf = (materials: Goods, name: string): string => materials.get(name) ?? '';
const line = (stage: string, itemKind: 'material' | 'formula', itemId: string, grams: string) => ({
  stage,
  itemKind,
  itemId,
  grams,
});
const step = (stage: string, kind: 'melt' | 'set' | 'whip', what: string) => ({
  stage,
  kind,
  what,
  leastCelsius: null,
  mostCelsius: null,
  minutes: null,
  caution: '',
});
const judged = {
  use: 'leave-on',
  category: '5A',
  bodyPart: 'body',
  productType: 'body-lotion',
  minAgeMonths: null,
  standing: 'for-sale',
  note: '',
} as const;

const baseDetails = (materials: Goods): Revision => ({
  ...judged,
  settingHours: { least: 12, most: 24 },
  keepMonths: 6,
  lines: MELTED.map((name, index) => line('Melt', 'material', idOf(materials, name), `${300 + index}`)),
  steps: [step('Melt', 'melt', 'Melt in a water bath'), step('Cool', 'set', 'Cover and let it set')],
});

/** 25 lines: the base, twelve fats and powders, twelve oils at a fiftieth of a percent each. */
const butterDetails = (materials: Goods, base: string): Revision => ({
  ...judged,
  settingHours: null,
  keepMonths: null,
  lines: [
    line('Whip', 'formula', base, '757.6'),
    ...WHIPPED.map((name) => line('Whip', 'material', idOf(materials, name), '20')),
    ...oils.map(({ name }) => line('Scent', 'material', idOf(materials, name), '0.2')),
  ],
  steps: [step('Whip', 'whip', 'Whip until pale')],
});

const reportOn = (materials: Goods, base: string, butter: string) => ({
  reference: 'R-1',
  assessor: 'A. N. Assessor',
  signedOn: inDays(-30),
  reviewBy: inDays(365),
  baseFormulaId: base,
  formulaIds: [butter],
  markets: ['GB' as const, 'NI' as const],
  uses: ['leave-on' as const],
  ranges: [...fats, ...oils].map(({ name }) => ({
    materialId: idOf(materials, name),
    leastPercent: '0',
    mostPercent: '60',
  })),
});

async function decideUnknowns(hand: ReadingAndWriting, id: string): Promise<void> {
  const { open } = await hand.read('checkRevision', { params: { id }, query: { markets: 'GB,NI' } });
  for (const { key } of open)
    await hand.write(
      'decideUnknown',
      { key, verdict: 'accepted', reason: 'Read with the assessor.' },
      { id },
    );
}

async function addProduct(hand: ReadingAndWriting, materials: Goods, formulaId: string): Promise<string> {
  const round = { shape: 'round', width: 60, height: 60 } as const;
  const details = {
    name: 'Twelve oils butter',
    formulaId,
    declaredGrams: '35',
    tinId: idOf(materials, 'tin'),
    lidId: idOf(materials, 'lid'),
    labelId: idOf(materials, 'label'),
    aimGrams: null,
    fillBasis: 'minimum' as const,
    bowlLossPercent: '3',
    retainedGrams: '10',
    markets: ['GB' as const, 'NI' as const],
    functionText: 'Body butter',
    precautions: 'For outward use only. Keep away from eyes.',
    bestBeforeMonths: 12,
    openedMonths: 6,
    price: '9.50',
    faceMm: round,
    backMm: round,
    isWithdrawn: false,
  };
  return (await hand.write('saveProduct', { details })).id;
}

/** One lot of each material: so many grams of an ingredient, so many pieces of packaging. */
export async function receiveAll(
  hand: ReadingAndWriting,
  materials: Goods,
  quantities: { readonly grams: number; readonly pieces: number },
): Promise<void> {
  for (const [name, materialId] of materials) {
    const isPacking = packaging.some((known) => known.name === name);
    await receiveLot(hand, materialId, isPacking ? quantities.pieces : quantities.grams);
  }
}

/** The id of the lot. */
export async function receiveLot(
  hand: ReadingAndWriting,
  materialId: string,
  quantity: number,
): Promise<string> {
  const { id } = await hand.write('receiveGoods', {
    materialId,
    supplierLot: 'S-1',
    bestBefore: inDays(300),
    quantity: String(quantity),
    paid: '12.00',
    accept: true,
  });
  return id;
}
