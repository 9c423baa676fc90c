import { z } from 'zod';
import * as f from './fields.ts';
import { route } from './route.ts';
import { goodsOnTheirWay } from './stock.ts';

const labelText = z.strictObject({
  /** '': the name is the same in this language. */
  name: f.text.default(''),
  functionText: f.text.default(''),
  precautions: f.text.default(''),
});
/** English stands in the product's own fields. */
const labelTexts = z.partialRecord(z.enum(['fr', 'de', 'it', 'es']), labelText);

export const productDetails = z.strictObject({
  name: f.name,
  formulaId: f.id,
  /** What the label states and law judges. */
  declaredGrams: f.gramsAboveZero,
  tinId: f.id,
  lidId: f.id.nullable(),
  labelId: f.id.nullable(),
  /** What to aim at for each tin; null: the declared content and the scale's error on top. */
  aimGrams: f.gramsAboveZero.nullable(),
  fillBasis: z.enum(['minimum', 'average']),
  /** What is lost in the bowl, as a percent of what is made. */
  bowlLossPercent: f.percent,
  /** Share of the tin's brim volume that stays free under the lid. */
  headspacePercent: f.percent.default('0'),
  retainedGrams: f.grams,
  markets: z.array(f.market).min(1),
  /** European Union: the member states that it is sold in, since each sets the language of the label. */
  saleCountries: z
    .array(z.string().regex(/^[A-Z]{2}$/))
    .max(27)
    .default([]),
  /** How what scents it stands in the list of ingredients; allergens are named besides either way. */
  scentOnLabel: f.scentOnLabel.default('by-name'),
  functionText: f.text,
  precautions: f.text,
  /** The label's words in further languages, in the maker's own wording. */
  texts: labelTexts.default({}),
  /** Article number (GTIN) of this product in this size; '' where it has none. */
  gtin: f.gtin.default(''),
  bestBeforeMonths: z.number().int().min(1).max(120),
  openedMonths: z.number().int().min(1).max(60).nullable(),
  /** Why it needs no period after opening; '' where it may need one. */
  noOpenedPeriod: z.enum(['', 'single-use', 'cannot-be-opened', 'does-not-spoil']).default(''),
  price: f.money.nullable(),
  faceMm: z.strictObject({
    shape: z.enum(['round', 'rectangle']),
    width: z.number().min(10).max(300),
    height: z.number().min(10).max(300),
  }),
  backMm: z.strictObject({
    shape: z.enum(['round', 'rectangle']),
    width: z.number().min(10).max(300),
    height: z.number().min(10).max(300),
  }),
  isWithdrawn: z.boolean(),
});
export type ProductDetails = z.output<typeof productDetails>;

export const product = z.object({
  id: f.id,
  version: z.number(),
  details: productDetails,
  formulaName: z.string(),
});

export const shortItem = z.object({
  itemKind: z.enum(['material', 'formula', 'product']),
  itemId: f.id,
  name: z.string(),
  need: z.string(),
  have: z.string(),
  short: z.string(),
  unit: f.unit,
});

/** Can it go out by then, when at the earliest, what is short. */
export const promise = z.object({
  answer: z.enum(['yes', 'if-ordered', 'no', 'not-for-sale', 'not-known', 'sent', 'cancelled']),
  sentence: f.saying,
  /** Tins that stand there for it, put aside or free: those can be sent. */
  tinsReady: z.number(),
  /** The last day on which what is short can be ordered so that it goes in time. null: nothing need be, or no day is known. */
  orderBy: f.date.nullable(),
  /** What has to be made for it and may not be made for sale, and why, by the check of the newest revision. */
  notForSale: z.array(
    z.object({ formulaId: f.id, name: z.string(), number: z.number(), reasons: z.array(f.saying) }),
  ),
  /** Earliest day on which it can go: at the best and at the longest setting time. null: not before something is bought. */
  earliest: z.object({ from: f.date, to: f.date }).nullable(),
  /** And whether goods of it are on their way. */
  short: z.array(
    shortItem.extend({
      onItsWay: goodsOnTheirWay.nullable(),
      /** All that may be used of it, whoever it is promised to; what there is of it for this order stands in `have`. */
      onShelf: z.string(),
      /** Numbers of the earlier orders that take the rest. */
      promisedTo: z.array(z.number()),
    }),
  ),
  /** In the order in which they begin, each with its day and where it is done. */
  steps: z.array(
    z.object({
      what: f.saying,
      when: f.saying.nullable(),
      action: z.object({ words: f.saying, to: z.string() }).nullable(),
    }),
  ),
});

/** One parcel of an order, and what lies in it; taken back when it did not go after all. */
export const parcelView = z.object({
  id: f.id,
  sentAt: f.instant,
  by: z.string(),
  /** Empty: none was entered, or it was erased. */
  tracking: z.string(),
  isTakenBack: z.boolean(),
  lots: z.array(z.object({ lotId: f.id, lotNumber: z.string(), units: z.number() })),
});

export const orderState = z.enum(['open', 'part-sent', 'sent', 'cancelled']);
export const orderView = z.object({
  id: f.id,
  number: z.number(),
  version: z.number(),
  customerId: f.id.nullable(),
  /** Empty once the customer was erased. */
  customerName: z.string(),
  customerAddress: z.string(),
  placedOn: f.date,
  wantedBy: f.date,
  note: z.string(),
  state: orderState,
  lines: z.array(
    z.object({
      id: f.id,
      productId: f.id,
      productName: z.string(),
      units: z.number(),
      reserved: z.array(z.object({ lotId: f.id, lotNumber: z.string(), units: z.number() })),
      sent: z.array(z.object({ lotId: f.id, lotNumber: z.string(), units: z.number() })),
    }),
  ),
  parcels: z.array(parcelView),
});

export const orderRoutes = {
  listProducts: route({
    method: 'GET',
    path: '/api/products',
    summary: 'What is sold',
    output: z.array(product),
  }),
  saveProduct: route({
    method: 'POST',
    path: '/api/products',
    summary: 'Add a product, or change one (give id and version)',
    input: z.strictObject({
      stamp: f.stamp,
      id: f.id.optional(),
      version: f.version.optional(),
      details: productDetails,
    }),
    output: f.createdThing,
  }),
  listCustomers: route({
    method: 'GET',
    path: '/api/customers',
    summary: 'Who buys',
    output: z.array(
      z.object({
        id: f.id,
        version: z.number(),
        name: z.string(),
        address: z.string(),
        isErased: z.boolean(),
      }),
    ),
  }),
  saveCustomer: route({
    method: 'POST',
    path: '/api/customers',
    summary: 'Add or change a customer',
    input: z.strictObject({
      stamp: f.stamp,
      id: f.id.optional(),
      version: f.version.optional(),
      name: f.name,
      address: f.text,
    }),
    output: f.createdThing,
  }),
  eraseCustomer: route({
    method: 'POST',
    path: '/api/customers/:id/erase',
    summary: 'Erase name and address; orders and the trace keep only a number',
    input: z.strictObject({ stamp: f.stamp }),
    output: f.createdThing,
  }),
  listOrders: route({
    method: 'GET',
    path: '/api/orders',
    summary: 'Orders, the next promised first',
    output: z.array(orderView.extend({ promise })),
  }),
  getOrder: route({
    method: 'GET',
    path: '/api/orders/:id',
    summary: 'One order and the answer to it',
    output: orderView.extend({
      promise,
      /** Labels of tins for it that a newer law asks for more, with the days until which they will do. */
      labelNotes: z.array(f.saying),
    }),
  }),
  /** The answer before the order is entered: the same computation on what was typed. */
  previewPromise: route({
    method: 'POST',
    path: '/api/promise',
    summary: 'Can it go out by then, when at the earliest, what is short',
    input: z.strictObject({
      /** The order that is being changed: it does not compete with itself. */
      orderId: f.id.optional(),
      wantedBy: f.date,
      lines: z
        .array(z.strictObject({ productId: f.id, units: f.piecesAboveZero }))
        .min(1)
        .max(100),
    }),
    output: promise.extend({
      /** Numbers of orders that would be in time without it: it is wanted before them and takes what they need. */
      makesLate: z.array(z.number()),
    }),
  }),
  saveOrder: route({
    method: 'POST',
    path: '/api/orders',
    summary: 'Enter an order, or change one (give id and version)',
    input: z.strictObject({
      stamp: f.stamp,
      id: f.id.optional(),
      version: f.version.optional(),
      customerId: f.id.nullable(),
      placedOn: f.date,
      wantedBy: f.date,
      note: f.text,
      lines: z
        .array(z.strictObject({ productId: f.id, units: f.piecesAboveZero }))
        .min(1)
        .max(100),
    }),
    output: f.createdThing,
  }),
  cancelOrder: route({
    method: 'POST',
    path: '/api/orders/:id/cancel',
    summary: 'Cancel an order; what was put aside for it is free again',
    input: z.strictObject({ stamp: f.stamp, version: f.version, reason: f.name }),
    output: f.createdThing,
  }),
  /** Keeps released tins for the order, first-expired-first-out. */
  reserveOrder: route({
    method: 'POST',
    path: '/api/orders/:id/reserve',
    summary: 'Put released tins aside for this order',
    input: z.strictObject({ stamp: f.stamp }),
    output: orderView,
  }),
  dispatchOrder: route({
    method: 'POST',
    path: '/api/orders/:id/dispatch',
    summary: 'Send what was picked; reserves first what is not reserved yet',
    input: z.strictObject({ stamp: f.stamp, tracking: f.text.default('') }),
    output: z.object({ id: f.id, order: orderView }),
  }),
  saveTracking: route({
    method: 'POST',
    path: '/api/parcels/:id/tracking',
    summary: 'The tracking number of a parcel, once it is known',
    input: z.strictObject({ stamp: f.stamp, tracking: f.text }),
    output: orderView,
  }),
  takeParcelBack: route({
    method: 'POST',
    path: '/api/parcels/:id/take-back',
    summary: 'Not sent after all: the tins stand where they were taken from',
    input: z.strictObject({ stamp: f.stamp }),
    output: orderView,
  }),
  getPickList: route({
    method: 'GET',
    path: '/api/orders/:id/pick-list.pdf',
    summary: 'Pick list by batch',
    output: z.unknown(),
    media: 'application/pdf',
  }),
  getPackingSlip: route({
    method: 'GET',
    path: '/api/orders/:id/packing-slip.pdf',
    summary: 'Packing slip with batch numbers',
    output: z.unknown(),
    media: 'application/pdf',
  }),
};
