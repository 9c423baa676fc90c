import { z } from 'zod';
import { ORIGIN_FLAGS } from '../core/safety/index.ts';
import * as f from './fields.ts';
import { route } from './route.ts';

export const originFlags = z.enum(ORIGIN_FLAGS);

export const constituent = z.strictObject({
  name: f.name,
  cas: z.string().max(20).nullable(),
  leastPercent: f.percent,
  typicalPercent: f.percent,
  mostPercent: f.percent,
  source: f.text,
  confidence: f.confidence,
});

export const packagingKind = z.enum(['tin', 'lid', 'label', 'box', 'other']);

/** What a maker says of something bought. Ingredient fields are null for packaging and the other way round. */
export const materialDetails = z.strictObject({
  kind: z.enum(['ingredient', 'packaging']),
  name: f.name,
  supplier: f.text,
  /** Label names; '' means not known, and the label says so. */
  inciEu: f.text,
  inciUs: f.text,
  botanical: f.text,
  cas: z.array(z.string().max(20)).max(20),
  plantPart: z.string().max(40).nullable(),
  process: z.string().max(40).nullable(),
  role: z.enum(['colourant', 'fragrance', 'preservative', 'uv-filter']).nullable(),
  /** A nanomaterial, as its paper says: its name on the label has `(nano)` after it. */
  isNano: z.boolean().default(false),
  densityGramsPerMl: f.decimal.nullable(),
  /** null: nobody has said; [] : said to have none of them. */
  origins: z.array(originFlags).nullable(),
  constituents: z.array(constituent).max(200),
  /**
   * Whether those are all that is in it and has a limit or must be named. `complete` and none: there is nothing such in
   * it; null: nobody has said.
   */
  constituentsAre: z.enum(['complete', 'partial']).nullable().default(null),
  /** Which paper says that it is everything, or where the part that is known comes from. */
  constituentsPaper: f.text.default(''),
  /** The most of it that the supplier's paper allows in the finished product; null: no such paper. */
  supplierMostPercent: f.percent.nullable().default(null),
  supplierPaper: f.text.default(''),
  caution: f.text,
  packagingKind: packagingKind.nullable(),
  brimMl: f.decimal.nullable(),
  tareGrams: f.grams.nullable(),
  /** Buy when less than this is left; grams for ingredients, pieces for packaging; null: never ask. */
  reorderBelow: f.decimal.nullable(),
  packSize: f.decimal.nullable(),
  packPrice: f.money.nullable(),
  leadDays: z.number().int().min(0).max(365).nullable(),
});
export type MaterialDetails = z.output<typeof materialDetails>;

export const material = z.object({ id: f.id, version: z.number(), details: materialDetails });

export const lotStatus = z.enum(['quarantine', 'released', 'rejected', 'blocked']);
export const itemKind = z.enum(['material', 'formula', 'product']);

export const lot = z.object({
  id: f.id,
  /** The workshop's own number, unique. */
  number: z.string(),
  itemKind,
  itemId: f.id,
  itemName: z.string(),
  unit: f.unit,
  /** On every place but retained samples. */
  onHand: z.string(),
  /** Where something of it stands, retained samples too. */
  placeIds: z.array(f.id),
  /** Promised to orders already (pieces); '0' for the rest. */
  reserved: z.string(),
  status: lotStatus,
  statusReason: z.string(),
  version: z.number(),
  since: f.date,
  foundAtOpening: z.boolean(),
  supplier: z.string(),
  /** null: not known, and marked so for ever. */
  supplierLot: z.string().nullable(),
  bestBefore: f.date.nullable(),
  /** After this day a base is looked at again. */
  keepUntil: f.date.nullable(),
  isExpired: z.boolean(),
  /** Base or mixture: when it may be firm, shortest and longest. */
  firmFrom: f.instant.nullable(),
  firmTo: f.instant.nullable(),
  paid: z.string().nullable(),
  paidFor: z.string().nullable(),
  /** How much came in, was found or was made. */
  cameIn: z.string(),
  batchId: f.id.nullable(),
  fillingRunId: f.id.nullable(),
});
export type LotView = z.output<typeof lot>;

export const shelfItem = z.object({
  itemKind,
  itemId: f.id,
  name: z.string(),
  group: z.enum(['ingredient', 'packaging', 'base', 'product']),
  packagingKind: packagingKind.nullable(),
  unit: f.unit,
  /** Released and not expired. */
  usable: z.string(),
  onHand: z.string(),
  reserved: z.string(),
  /** Needed by open orders, after finished tins and set base are counted. */
  needed: z.string(),
  reorderBelow: z.string().nullable(),
  /** Largest amount the shelf held of it: what a full tub stands for in the picture. */
  fullMark: z.string(),
  firstEnds: f.date.nullable(),
  lotsWithUnknowns: z.number(),
  state: z.enum(['ready', 'watch', 'stop', 'going']),
  sentence: f.saying,
  lots: z.array(lot),
});

export const movementKind = z.enum([
  'received',
  'counted',
  'used',
  'made',
  'sold',
  'tester',
  'gift',
  'own-use',
  'broken',
  'binned',
  'returned',
  'moved',
]);
/** What a person may book by hand; the rest is booked by the job itself. */
export const handMovementKind = z.enum(['tester', 'gift', 'own-use', 'broken', 'binned', 'moved']);

export const movement = z.object({
  id: f.id,
  lotId: f.id,
  kind: movementKind,
  /** Signed, with unit of the lot. */
  change: z.string(),
  unit: f.unit,
  place: z.string(),
  reason: z.string(),
  at: f.instant,
  recordedAt: f.instant,
  by: z.string(),
  about: z.string(),
});

/** What somebody ordered of a material and has not come in yet. */
export const goodsOnTheirWay = z.object({
  orderedOn: f.date,
  supplier: z.string(),
  expectedOn: f.date.nullable(),
});

const lotFacts = {
  materialId: f.id,
  placeId: f.id.optional(),
  supplierLot: f.text.nullable(),
  bestBefore: f.date.nullable(),
};

export const stockRoutes = {
  listMaterials: route({
    method: 'GET',
    path: '/api/materials',
    summary: 'Everything bought',
    output: z.array(material),
  }),
  getMaterial: route({
    method: 'GET',
    path: '/api/materials/:id',
    summary: 'One material',
    output: material,
  }),
  saveMaterial: route({
    method: 'POST',
    path: '/api/materials',
    summary: 'Add a material, or change one (give id and version)',
    input: z.strictObject({
      stamp: f.stamp,
      id: f.id.optional(),
      version: f.version.optional(),
      details: materialDetails,
    }),
    output: f.createdThing,
  }),
  markOrdered: route({
    method: 'POST',
    path: '/api/materials/:id/ordered',
    summary: 'Say that goods of it are ordered: they are on their way until some come in',
    input: z.strictObject({
      stamp: f.stamp,
      orderedOn: f.date,
      supplier: f.text.default(''),
      expectedOn: f.date.nullable().default(null),
    }),
    output: f.createdThing,
  }),
  unmarkOrdered: route({
    method: 'POST',
    path: '/api/materials/:id/not-ordered',
    summary: 'Say that nothing of it is on its way any more',
    input: z.strictObject({ stamp: f.stamp }),
    output: f.createdThing,
  }),
  /** Ready-made facts for a new material: label names, constituents with their ranges and confidence. */
  suggestMaterials: route({
    method: 'GET',
    path: '/api/material-suggestions',
    summary: 'Oils, butters and label names of the tables that match what is typed',
    query: z.object({ like: z.string().max(100) }),
    output: z.array(
      z.object({
        key: z.string(),
        name: z.string(),
        about: z.string(),
        details: materialDetails.partial(),
        /** By the name of a field of `details`: where its value comes from. Constituents carry their own. */
        sources: z.record(z.string(), z.string()),
      }),
    ),
  }),
  getShelf: route({
    method: 'GET',
    path: '/api/shelf',
    summary: 'What stands where, how much, how good',
    output: z.object({ sentence: f.saying, items: z.array(shelfItem) }),
  }),
  getLot: route({
    method: 'GET',
    path: '/api/lots/:id',
    summary: 'One lot with its movements',
    output: z.object({
      lot,
      movements: z.array(movement),
      places: z.array(z.object({ placeId: f.id, name: z.string(), onHand: z.string() })),
    }),
  }),
  countAtOpening: route({
    method: 'POST',
    path: '/api/lots/opening',
    summary: 'Opening count: a tub weighed, or pieces counted, as found on the shelf',
    input: z.strictObject({
      stamp: f.stamp,
      ...lotFacts,
      /** For ingredients: gross and tare. For packaging: pieces. */
      grossGrams: f.grams.optional(),
      tareGrams: f.grams.optional(),
      pieces: f.pieces.optional(),
      paid: f.money.nullable().default(null),
    }),
    output: f.createdThing,
  }),
  receiveGoods: route({
    method: 'POST',
    path: '/api/lots/receive',
    summary: 'New goods: receive and accept in one tap, or hold in quarantine',
    input: z.strictObject({
      stamp: f.stamp,
      ...lotFacts,
      quantity: f.decimal,
      paid: f.money.nullable().default(null),
      supplier: f.text.default(''),
      accept: z.boolean(),
      reason: f.text.default(''),
    }),
    output: f.createdThing,
  }),
  correctLot: route({
    method: 'PUT',
    path: '/api/lots/:id',
    summary: 'Correct what was written about a lot; the first entry stays readable',
    input: z.strictObject({
      stamp: f.stamp,
      version: f.version,
      supplierLot: f.text.nullable(),
      bestBefore: f.date.nullable(),
      paid: f.money.nullable(),
      /** How much came in, where the receipt says it wrong: grams, or pieces. Left out, it stays. */
      quantity: f.decimal.optional(),
      reason: f.name,
    }),
    output: f.createdThing,
  }),
  setLotStatus: route({
    method: 'POST',
    path: '/api/lots/:id/status',
    summary: 'Release, hold, reject or block a lot',
    input: z.strictObject({ stamp: f.stamp, status: lotStatus, reason: f.text }),
    output: f.createdThing,
  }),
  /** A person says that a base is firm: it may be used from now on. */
  sayFirm: route({
    method: 'POST',
    path: '/api/lots/:id/firm',
    summary: 'A person says that the base is firm',
    input: z.strictObject({ stamp: f.stamp, remark: f.text.default('') }),
    output: f.createdThing,
  }),
  countLot: route({
    method: 'POST',
    path: '/api/lots/:id/count',
    summary: 'Weigh a tub or count pieces: the difference is booked with a reason',
    input: z.strictObject({
      stamp: f.stamp,
      placeId: f.id.optional(),
      grossGrams: f.grams.optional(),
      tareGrams: f.grams.optional(),
      pieces: f.pieces.optional(),
      reason: f.name,
      /** The answer to the question that a count above the ledger asks back. */
      isGainSure: z.boolean().default(false),
    }),
    output: z.object({ difference: z.string(), onHand: z.string() }),
  }),
  moveLot: route({
    method: 'POST',
    path: '/api/lots/:id/movements',
    summary: 'Book a tester, a gift, own use, a breakage, waste, or a move to another place',
    input: z.strictObject({
      stamp: f.stamp,
      kind: handMovementKind,
      quantity: f.decimal,
      fromPlaceId: f.id.optional(),
      toPlaceId: f.id.optional(),
      reason: f.text,
    }),
    output: z.object({ onHand: z.string() }),
  }),
};
