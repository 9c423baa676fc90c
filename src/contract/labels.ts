import { z } from 'zod';
import * as f from './fields.ts';
import { productDetails } from './orders.ts';
import { route } from './route.ts';

/** At once: more than two people fill in a day; beyond it the figure is asked about (common practice, no source). */
export const MOST_LABELS = 200;

/** What anybody can measure on a tin, a jar or a sheet; what fits there is judged when it is laid out. */
const mm = z.number().min(1).max(420);
const smallMm = z.number().min(0).max(420);

export const surface = z.discriminatedUnion('shape', [
  z.strictObject({ shape: z.literal('round'), diameterMm: mm }),
  z.strictObject({
    shape: z.literal('rectangle'),
    widthMm: mm,
    heightMm: mm,
    cornerRadiusMm: smallMm.default(0),
  }),
  z.strictObject({ shape: z.literal('wrap'), circumferenceMm: mm, heightMm: mm, overlapMm: smallMm }),
]);
export type LabelSurface = z.output<typeof surface>;

export const labelLanguage = z.enum(['en', 'fr', 'de', 'it', 'es']);
export type LabelLanguage = z.output<typeof labelLanguage>;

export const artworkWish = z.strictObject({
  attachmentId: f.id,
  /** Behind the words, or with all the words of this label in itself. */
  use: z.enum(['background', 'whole-face']).default('background'),
  bleedMm: z.number().min(0).max(10).default(0),
});

/** Everything that can stand on a label, in the order in which it is set. */
export const printedElement = z.enum([
  'brand',
  'name',
  'function',
  'content',
  'ingredients',
  'precautions',
  'other',
  'durability',
  'opened',
  'batch',
  'origin',
  'responsible',
]);
export type PrintedElement = z.output<typeof printedElement>;

/** Height of lower-case letters. */
const letterMm = z.number().min(0.1).max(20).nullable().default(null);

export const designPiece = z.strictObject({
  /** Names it among the labels of the design: `lid`. */
  id: f.id,
  role: z.enum(['front', 'back', 'whole', 'sticker']),
  surface,
  /** null: what its role asks for. */
  elements: z.array(printedElement).min(1).nullable().default(null),
  /** Of all but the declared content, which has a height of its own; null: as is usual. */
  letters: z.strictObject({ leastMm: letterMm, mostMm: letterMm }).default({ leastMm: null, mostMm: null }),
  code: z.enum(['none', 'in-house', 'digital-link', 'ean-13']).default('none'),
  artwork: artworkWish.nullable().default(null),
  /** The bought sheet that it is printed on; null: plain paper, cut by hand. */
  sheetId: f.id.nullable().default(null),
});
export type DesignPiece = z.output<typeof designPiece>;

export const leafletWish = z.strictObject({
  moves: z.enum(['none', 'precautions', 'ingredients', 'both']),
  pointer: z.enum(['symbol', 'words']),
  surface,
});

/** The enclosed leaflet has this id among the labels of a design. */
export const LEAFLET = 'leaflet';

/** How a product is labelled: which labels it has, where they are stuck, what they carry besides their words. */
export const labelDesignDetails = z.strictObject({
  pieces: z.array(designPiece).min(1).max(6),
  languages: z.array(labelLanguage).min(1).default(['en']),
  leaflet: leafletWish.default({
    moves: 'none',
    pointer: 'symbol',
    surface: { shape: 'rectangle', widthMm: 74, heightMm: 105, cornerRadiusMm: 0 },
  }),
  hasEMark: z.boolean().default(false),
  durabilitySign: z.enum(['words', 'hourglass']).default('words'),
  /** Printed on top of the tins that have none yet. */
  spare: z.number().int().min(0).max(50).default(0),
});
export type LabelDesignDetails = z.output<typeof labelDesignDetails>;

export const sheetGeometry = z.strictObject({
  pageWidthMm: mm,
  pageHeightMm: mm,
  columns: z.number().int().min(1).max(50),
  rows: z.number().int().min(1).max(50),
  leftMm: smallMm,
  topMm: smallMm,
  pitchAcrossMm: smallMm,
  pitchDownMm: smallMm,
  label: z.discriminatedUnion('shape', [
    z.strictObject({ shape: z.literal('round'), diameterMm: mm }),
    z.strictObject({
      shape: z.literal('rectangle'),
      widthMm: mm,
      heightMm: mm,
      cornerRadiusMm: smallMm.default(0),
    }),
  ]),
});

/** A bought sheet of labels, by what a ruler measures, and how far the workshop's printer is off on it. */
export const labelSheetDetails = z.strictObject({
  name: f.name,
  geometry: sheetGeometry,
  offsetMm: z
    .strictObject({ across: z.number().min(-10).max(10), down: z.number().min(-10).max(10) })
    .default({ across: 0, down: 0 }),
  isTakenOut: z.boolean().default(false),
});
export type LabelSheetDetails = z.output<typeof labelSheetDetails>;

export const labelSheet = z.object({
  id: f.id,
  version: z.number(),
  details: labelSheetDetails,
  /** After what was last printed on one: where the begun sheet goes on. */
  nextPosition: z.number(),
});

export const labelElement = z.object({
  element: z.string(),
  text: z.string(),
  state: z.enum(['there', 'missing', 'unknown', 'not-needed']),
  reason: f.saying.nullable(),
  source: z.string(),
  /** Whether the market's law asks for it. */
  required: z.boolean(),
  /** How the rule is known; `memory`: check. */
  confidence: z.string(),
  /** Where it must stand; neither: no law gives it a place. */
  onContainer: z.boolean(),
  onPackaging: z.boolean(),
});

/** What is wrong with a label as it is laid out, or should be known of it. */
export const labelNote = z.object({
  problem: z.object({
    code: z.string(),
    where: z.string(),
    found: f.problemValue.optional(),
    allowed: f.problemValue.optional(),
    source: z.string().optional(),
    parameters: z.record(z.string(), f.problemValue).optional(),
  }),
  /** It keeps the label from being printed for sale. */
  isStop: z.boolean(),
  /** The element would fit on a leaflet instead, and the law lets it go there. */
  movesToLeaflet: z.enum(['precautions', 'ingredients']).nullable(),
});

export const pieceView = z.object({
  id: z.string(),
  role: z.enum(['front', 'back', 'whole', 'sticker', 'leaflet']),
  widthMm: z.number(),
  heightMm: z.number(),
  /** At true size; '' where it cannot be drawn. */
  svg: z.string(),
  /** null: not drawn, or no words of ours on it. */
  smallestXHeightMm: z.number().nullable(),
  figureHeightMm: z.number().nullable(),
  moduleMm: z.number().nullable(),
  notes: z.array(labelNote),
});

export const labelView = z.object({
  market: f.market,
  elements: z.array(labelElement),
  /** Empty when the label may be printed for sale. */
  missing: z.array(f.saying),
  /** Least height of the content's figures by law. */
  figureHeightMm: z.number(),
  pieces: z.array(pieceView),
  /** What is wrong with the design as a whole. */
  notes: z.array(labelNote),
});

export const labelDesignView = z.object({
  productId: f.id,
  productName: z.string(),
  markets: z.array(f.market),
  /** null: nobody has designed it yet; its details are front and back as the product has them. */
  version: z.number().nullable(),
  details: labelDesignDetails,
  gtin: z.string(),
  codeDomain: z.string(),
  /** Whether the law leaves the estimated sign to the maker, and why. */
  eMark: z.object({ isChoice: z.boolean(), says: f.saying }),
  /** Its newest filling run, by which a preview can be shown. */
  lastRun: z.object({ id: f.id, number: z.string() }).nullable(),
});

/** What was printed on what; stands with the print. */
export const printedDesign = z.strictObject({
  pieces: z.array(
    z.strictObject({
      id: z.string(),
      role: pieceView.shape.role,
      /** SHA-256 of all that it said, whatever it looked like; lacks in what was printed before this was kept. */
      words: z.string().optional(),
    }),
  ),
  /** The sheet as it was; null: plain paper, cut by hand. */
  sheet: z
    .strictObject({
      id: f.id,
      name: z.string(),
      geometry: sheetGeometry,
      offsetMm: z.strictObject({ across: z.number(), down: z.number() }),
    })
    .nullable(),
  firstPosition: z.number(),
  /** The ingredient list, where what was printed carries it; lacks in what was printed before this was kept. */
  ingredients: z.string().optional(),
});
export type PrintedDesign = z.output<typeof printedDesign>;

export const labelCountRow = z.object({
  pieceId: z.string(),
  role: pieceView.shape.role,
  printed: z.number(),
  /** Tins that carry it: as counted, else as the run was closed. */
  used: z.number(),
  isCounted: z.boolean(),
  spoilt: z.number(),
  left: z.number(),
  remark: z.string(),
  by: z.string().nullable(),
  at: f.instant.nullable(),
  says: f.saying,
  /** It adds up. */
  isSound: z.boolean(),
});

export const labelCounts = z.object({
  runId: f.id,
  number: z.string(),
  /** As the run was closed; null: it is being filled. */
  tins: z.number().nullable(),
  says: f.saying,
  rows: z.array(labelCountRow),
  prints: z.array(
    z.object({
      id: f.id,
      market: f.market,
      copies: z.number(),
      pieces: z.array(pieceView.shape.role),
      sheet: z.string().nullable(),
      firstPosition: z.number(),
      at: f.instant,
      by: z.string(),
    }),
  ),
});

/** One thing that keeps a label from being printed for sale, in all the markets where it does. */
export const labelLack = z.object({
  /** null: the label cannot be worded at all. */
  element: z.string().nullable(),
  says: f.saying,
  markets: z.array(f.market),
});

export const labelRoutes = {
  getRunLabel: route({
    method: 'GET',
    path: '/api/filling-runs/:id/label',
    summary: 'The label, element by element, and each piece of it at true size',
    query: z.object({ market: f.market }),
    output: labelView,
  }),
  printRunLabels: route({
    method: 'POST',
    path: '/api/filling-runs/:id/label-prints',
    summary: 'Write down that labels are printed; the answer is the number of the print',
    input: z.strictObject({
      stamp: f.stamp,
      market: f.market,
      copies: z.number().int().min(1).max(MOST_LABELS).default(1),
      /** By their ids; none named: all that are stuck on. */
      pieces: z.array(f.id).max(7).default([]),
      /** null: plain paper, cut by hand. */
      sheetId: f.id.nullable().default(null),
      firstPosition: z.number().int().min(1).max(2500).default(1),
    }),
    output: f.createdThing,
  }),
  getLabelPrintPdf: route({
    method: 'GET',
    path: '/api/label-prints/:id/label.pdf',
    summary: 'The labels of one print as a PDF at true size',
    output: z.unknown(),
    media: 'application/pdf',
  }),
  getLabelCounts: route({
    method: 'GET',
    path: '/api/filling-runs/:id/label-counts',
    summary: 'Labels of a run: printed, on tins, spoilt, left over, and whether that adds up',
    output: labelCounts,
  }),
  countLabels: route({
    method: 'POST',
    path: '/api/filling-runs/:id/label-counts',
    summary: 'Count the labels of one kind: on tins and spoilt; the last count stands',
    input: z.strictObject({
      stamp: f.stamp,
      pieceId: f.id,
      used: f.pieces,
      spoilt: f.pieces,
      remark: f.text.default(''),
    }),
    output: labelCounts,
  }),
  listLabelLacks: route({
    method: 'POST',
    path: '/api/label-lacks',
    summary: 'What the label of a product, as it is or as it is typed, would lack; nothing is written',
    input: z.strictObject({
      details: productDetails,
      /** null: not saved yet. */
      productId: f.id.nullable().default(null),
      /** By what was made of it; null: by the formula that is in force. */
      batchId: f.id.nullable().default(null),
    }),
    output: z.array(labelLack),
  }),
  listLabelDesigns: route({
    method: 'GET',
    path: '/api/label-designs',
    summary: 'Every product that is sold, with its labels',
    output: z.array(
      z.object({
        productId: f.id,
        productName: z.string(),
        /** false: front and back as the product has them. */
        isDesigned: z.boolean(),
        pieces: z.array(pieceView.shape.role),
        hasLeaflet: z.boolean(),
      }),
    ),
  }),
  getLabelDesign: route({
    method: 'GET',
    path: '/api/products/:id/label-design',
    summary: 'Which labels a product has, and where they are stuck',
    output: labelDesignView,
  }),
  saveLabelDesign: route({
    method: 'PUT',
    path: '/api/products/:id/label-design',
    summary: 'Say which labels a product has',
    input: z.strictObject({
      stamp: f.stamp,
      /** null: nobody had designed it yet. */
      version: f.version.nullable(),
      details: labelDesignDetails,
    }),
    output: f.createdThing,
  }),
  previewLabel: route({
    method: 'POST',
    path: '/api/products/:id/label-preview',
    summary: 'How a design would look in one market, with its notes; nothing is written',
    input: z.strictObject({
      market: f.market,
      details: labelDesignDetails,
      /** With batch and date of this run; null: with examples of both. */
      runId: f.id.nullable().default(null),
    }),
    output: labelView,
  }),
  attachLabelArtwork: route({
    method: 'POST',
    path: '/api/products/:id/label-artwork',
    largestBodyMegabytes: 15,
    summary: 'Put a picture, PNG or JPEG, with the labels of a product',
    input: z.strictObject({ stamp: f.stamp, name: f.name, base64: z.base64().max(14_000_000) }),
    output: f.createdThing.extend({ name: z.string(), bytes: z.number(), sha256: z.string() }),
  }),
  listLabelSheets: route({
    method: 'GET',
    path: '/api/label-sheets',
    summary: 'Bought sheets of labels, as they were measured',
    output: z.array(labelSheet),
  }),
  saveLabelSheet: route({
    method: 'POST',
    path: '/api/label-sheets',
    summary: 'Enter a sheet of labels, or change one (give id and version)',
    input: z.strictObject({
      stamp: f.stamp,
      id: f.id.optional(),
      version: f.version.optional(),
      details: labelSheetDetails,
    }),
    output: f.createdThing,
  }),
  getSheetTrialPdf: route({
    method: 'GET',
    path: '/api/label-sheets/:id/trial.pdf',
    summary: 'The outlines of a sheet, to be printed on plain paper and held against it',
    output: z.unknown(),
    media: 'application/pdf',
  }),
};
