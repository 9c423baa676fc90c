import type { z } from 'zod';
import type { certificates } from '../src/contract/index.ts';
import type { BenchHand } from './bench-hand.ts';
import { type ExampleMaterial, INGREDIENTS, PACKAGING } from './workshop-data.ts';

export type Goods = ReadonlyMap<string, string>;

const NOTHING = {
  supplier: '',
  inciEu: '',
  inciUs: '',
  botanical: '',
  cas: [],
  plantPart: null,
  process: null,
  role: null,
  densityGramsPerMl: null,
  origins: null,
  constituents: [],
  constituentsAre: null,
  constituentsPaper: '',
  supplierMostPercent: null,
  supplierPaper: '',
  caution: '',
  packagingKind: null,
  brimMl: null,
  tareGrams: null,
  reorderBelow: null,
  packSize: null,
  packPrice: null,
  leadDays: null,
};

async function addIngredient(hand: BenchHand, wanted: ExampleMaterial): Promise<string> {
  const [known] = await hand.read('suggestMaterials', { query: { like: wanted.like } });
  if (!known) throw new Error(`the tables know no ${wanted.like}`);
  const { key: _key, like: _like, density, origins, paper, ...said } = wanted;
  const details = {
    ...NOTHING,
    ...known.details,
    ...said,
    // Of the oils no supplier's paper is here: the tables' ranges are part of what is in them, and are said to be part.
    ...(paper !== undefined && { constituentsAre: 'complete' as const, constituentsPaper: paper }),
    kind: 'ingredient' as const,
    densityGramsPerMl: density ?? null,
    origins: [...(origins ?? [])],
  };
  return (await hand.write('saveMaterial', { details })).id;
}

async function addPackaging(hand: BenchHand, wanted: (typeof PACKAGING)[number]): Promise<string> {
  const { key: _key, kind, ...said } = wanted;
  return (
    await hand.write('saveMaterial', {
      details: {
        ...NOTHING,
        ...said,
        kind: 'packaging' as const,
        supplier: 'Tinsmith & Row',
        packagingKind: kind,
      },
    })
  ).id;
}

/** Every material of the workshop, with what the tables say of it. */
export async function addMaterials(hand: BenchHand): Promise<Goods> {
  const goods = new Map<string, string>();
  for (const wanted of INGREDIENTS) goods.set(wanted.key, await addIngredient(hand, wanted));
  for (const wanted of PACKAGING) goods.set(wanted.key, await addPackaging(hand, wanted));
  return goods;
}

export const idOf = (goods: Goods, key: string): string => {
  const id = goods.get(key);
  if (id === undefined) throw new Error(`the example has no ${key}`);
  return id;
};

/** What stood on the shelf on the first day: part-used tubs, some without a number or a date. */
export async function countTheShelf(hand: BenchHand, goods: Goods): Promise<void> {
  const tub = (
    key: string,
    grossGrams: string,
    tareGrams: string,
    supplierLot: string | null,
    bestBefore: string | null,
  ) =>
    hand.write('countAtOpening', {
      materialId: idOf(goods, key),
      supplierLot,
      bestBefore,
      grossGrams,
      tareGrams,
      paid: null,
    });
  await tub('starch', '431', '61', null, null);
  await tub('cocoa', '622.5', '82.5', 'NF-7741', hand.dateIn(210));
  await tub('tocopherol', '118.2', '41.7', 'PS-207', hand.dateIn(320));
  for (const [key, pieces] of [
    ['tin30', 26],
    ['lid30', 26],
    ['label30', 60],
  ] as const) {
    await hand.write('countAtOpening', {
      materialId: idOf(goods, key),
      supplierLot: null,
      bestBefore: null,
      pieces,
      paid: null,
    });
  }
}

interface Certificate {
  readonly reference: string;
  readonly datedOn: null;
  readonly details: z.input<typeof certificates.certificateInput>;
}

interface Delivery {
  readonly key: string;
  readonly quantity: string;
  readonly paid: string;
  readonly lot: string;
  readonly endsIn: number | null;
}

const DELIVERIES: readonly Delivery[] = [
  { key: 'shea', quantity: '2000', paid: '29.90', lot: 'NF-8102', endsIn: 380 },
  { key: 'kokum', quantity: '1000', paid: '26.10', lot: 'NF-8077', endsIn: 300 },
  { key: 'coconut', quantity: '1000', paid: '10.80', lot: 'NF-8090', endsIn: 400 },
  { key: 'sunflower', quantity: '1000', paid: '7.10', lot: 'PS-311', endsIn: 95 },
  { key: 'sunflower', quantity: '1000', paid: '6.90', lot: 'PS-326', endsIn: 260 },
  { key: 'beeswax', quantity: '500', paid: '12.60', lot: 'PS-298', endsIn: null },
  { key: 'orange', quantity: '50', paid: '7.25', lot: 'SS-22A', endsIn: 62 },
  { key: 'orange', quantity: '50', paid: '7.25', lot: 'SS-24C', endsIn: 240 },
  { key: 'cedar', quantity: '50', paid: '9.60', lot: 'SS-19F', endsIn: 500 },
  { key: 'lavender', quantity: '50', paid: '12.90', lot: 'SS-23B', endsIn: 340 },
  { key: 'peppermint', quantity: '50', paid: '8.70', lot: 'SS-21D', endsIn: 310 },
  { key: 'tin60', quantity: '50', paid: '21.00', lot: 'TR-60-118', endsIn: null },
  { key: 'lid60', quantity: '60', paid: '9.20', lot: 'TR-L6-118', endsIn: null },
  { key: 'label60', quantity: '80', paid: '8.40', lot: 'TR-P6-07', endsIn: null },
];

/** Two lots came with a paper of their own, invented like everything here; one of them is for another IFRA category. */
const CERTIFICATES: Readonly<Record<string, Certificate>> = {
  'SS-23B': {
    reference: 'SS-23B/26',
    datedOn: null,
    details: {
      constituents: [
        { name: 'Linalool', cas: '78-70-6', typicalPercent: '31.4' },
        { name: 'Geraniol', cas: '106-24-1', typicalPercent: '0.3' },
      ],
      isComplete: false,
      peroxide: { mmolPerLitre: '3.8' },
      ifra: [
        { category: '5A', edition: '51', mostPercent: '20' },
        { category: '5C', edition: '51', mostPercent: '20' },
      ],
    },
  },
  'SS-24C': {
    reference: 'SS-24C/26',
    datedOn: null,
    details: {
      constituents: [{ name: 'Limonene', cas: '5989-27-5', leastPercent: '93.8', mostPercent: '95.1' }],
      isComplete: false,
      peroxide: { mmolPerLitre: '6.2' },
      ifra: [{ category: '4', edition: '51', mostPercent: '30' }],
    },
  },
};

/** Goods bought since, received and accepted; one tub still waits in quarantine. */
export async function takeGoodsIn(hand: BenchHand, goods: Goods): Promise<void> {
  for (const { key, quantity, paid, lot, endsIn } of DELIVERIES) {
    const { id } = await hand.write('receiveGoods', {
      materialId: idOf(goods, key),
      supplierLot: lot,
      bestBefore: endsIn === null ? null : hand.dateIn(endsIn),
      quantity,
      paid,
      supplier: '',
      accept: true,
      reason: '',
    });
    const certificate = CERTIFICATES[lot];
    if (certificate) await hand.write('saveLotCertificate', certificate, { id });
  }
}

export async function holdOneTub(hand: BenchHand, goods: Goods): Promise<void> {
  await hand.write('receiveGoods', {
    materialId: idOf(goods, 'cocoa'),
    supplierLot: 'NF-8140',
    bestBefore: hand.dateIn(330),
    quantity: '1000',
    paid: '19.90',
    supplier: '',
    accept: false,
    reason: 'Certificate not here yet',
  });
}
