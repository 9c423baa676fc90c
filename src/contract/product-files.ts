import { z } from 'zod';
import * as f from './fields.ts';
import { route } from './route.ts';
import { linkedFile, writtenPaper } from './written-paper.ts';

const longText = z.string().trim().max(8000).default('');

/** Under which headings files may lie. */
export const fileHeading = z.enum([
  'description',
  'composition',
  'physical',
  'microbiology',
  'impurities',
  'use',
  'toxicology',
  'effects',
  'information',
  'part-b',
  'method',
  'claims',
  'animal-testing',
  'notification',
]);
export type FileHeading = z.output<typeof fileHeading>;

export const claim = z.strictObject({
  claim: f.name,
  proof: f.text,
  /** The file that proves it; it lies under `claims`. */
  attachmentId: f.id.nullable().default(null),
});

export const notificationDetails = z.strictObject({
  /** As the person picks it on the portal. */
  category: f.text.default(''),
  contact: f.text.default(''),
  /** Country where it is first placed on the market. */
  placedIn: f.text.default(''),
  nanomaterials: z.enum(['', 'no', 'yes']).default(''),
  cmr: z.enum(['', 'no', 'yes']).default(''),
  formulaAs: z.enum(['exact', 'frame']).default('exact'),
  frame: f.text.default(''),
  /** Numbers that the portals gave. */
  gbReference: f.text.default(''),
  euReference: f.text.default(''),
});

/** What a person writes for the product information file; what the data knows is not typed again. */
export const productFileDetails = z.strictObject({
  description: longText,
  /** What each material does in it, where it is neither fragrance nor colourant. */
  functions: z
    .array(z.strictObject({ materialId: f.id, text: f.text }))
    .max(100)
    .default([]),
  physical: longText,
  stability: longText,
  microbiology: longText,
  /** Whether water can come in while it is used; '': nobody has said. */
  waterInUse: z.enum(['', 'no', 'yes']).default(''),
  impurities: longText,
  packaging: longText,
  normalUse: longText,
  /** Row of the exposure table; '' as the formula's product type says. */
  exposureType: z.string().max(60).default(''),
  otherInformation: longText,
  makingNote: longText,
  gmpStatement: longText,
  animalTesting: longText,
  hasNoClaims: z.boolean().default(false),
  claims: z.array(claim).max(50).default([]),
  notification: notificationDetails.default(notificationDetails.parse({})),
});
export type ProductFileDetails = z.output<typeof productFileDetails>;

export const productFileView = writtenPaper.extend({
  productId: f.id,
  productName: z.string(),
  /** null: nobody has written in it yet. */
  version: z.number().nullable(),
  details: productFileDetails,
  materials: z.array(z.object({ id: f.id, name: z.string(), role: z.string().nullable() })),
  /** Rows of the exposure table to choose from. */
  exposureTypes: z.array(z.object({ id: z.string(), name: z.string() })),
  keptUntil: f.date.nullable(),
});

export const pointOfDeparture = z.strictObject({
  /** Of the substance, as the worksheet calls it. */
  name: f.name,
  milligramsPerKgDay: f.decimal,
  /** `oral`: a part of it enters the body; `systemic`: it is what is in the body already. */
  route: z.enum(['oral', 'systemic']),
  /** How much of an oral dose enters the body; null: the default of the Notes. */
  bioavailabilityPercent: f.percent.nullable().default(null),
  /** How much passes the skin; null: the default of the Notes. */
  absorptionPercent: f.percent.nullable().default(null),
  source: f.name,
  isTakenOut: z.boolean().default(false),
});
export type PointOfDeparture = z.output<typeof pointOfDeparture>;

export const productFileRoutes = {
  getProductFile: route({
    method: 'GET',
    path: '/api/products/:id/file',
    summary: 'The product information file: each heading from the data, and what is missing',
    output: productFileView,
  }),
  saveProductFile: route({
    method: 'PUT',
    path: '/api/products/:id/file',
    summary: 'Write in the product information file',
    input: z.strictObject({
      stamp: f.stamp,
      /** null: nobody had written in it yet. */
      version: f.version.nullable(),
      details: productFileDetails,
    }),
    output: f.createdThing,
  }),
  getProductFilePdf: route({
    method: 'GET',
    path: '/api/products/:id/file.pdf',
    summary: 'The product information file as one PDF',
    output: z.unknown(),
    media: 'application/pdf',
  }),
  getProductFileZip: route({
    method: 'GET',
    path: '/api/products/:id/file.zip',
    summary: 'The product information file as a folder: the PDF, files by heading, batch records, data',
    output: z.unknown(),
    media: 'application/zip',
  }),
  fileUnderHeading: route({
    method: 'POST',
    path: '/api/products/:id/attachments',
    largestBodyMegabytes: 30,
    summary: 'Put a PDF or a picture (PNG, JPEG) under a heading of the product information file',
    input: z.strictObject({
      stamp: f.stamp,
      heading: fileHeading,
      name: f.name,
      base64: z.base64().max(28_000_000),
    }),
    output: linkedFile,
  }),
  takeFileOut: route({
    method: 'POST',
    path: '/api/products/:id/attachments/take-out',
    summary: 'A file lies under this heading no more; it stays in the workshop’s file',
    input: z.strictObject({ stamp: f.stamp, heading: fileHeading, attachmentId: f.id }),
    output: f.createdThing,
  }),
  getAttachment: route({
    method: 'GET',
    path: '/api/attachments/:id/file',
    summary: 'An attached file: a PDF, or a picture with its own media type',
    output: z.unknown(),
    media: 'application/pdf',
  }),
  getNotification: route({
    method: 'GET',
    path: '/api/products/:id/notification',
    summary: 'What the notification portals ask for, field by field, to be copied there; nothing is sent',
    query: z.object({ market: z.enum(['GB', 'EU']).default('GB') }),
    output: z.object({
      productId: f.id,
      productName: z.string(),
      sentence: f.saying,
      rule: z.string(),
      source: z.string(),
      fields: z.array(
        z.object({
          key: z.string(),
          label: f.saying,
          text: z.string(),
          /** Why there is nothing to copy. */
          gap: f.saying.nullable(),
        }),
      ),
    }),
  }),
  listPointsOfDeparture: route({
    method: 'GET',
    path: '/api/points-of-departure',
    summary: 'Doses from which margins of safety are reckoned, as typed in',
    output: z.array(z.object({ id: f.id, version: z.number(), details: pointOfDeparture })),
  }),
  savePointOfDeparture: route({
    method: 'POST',
    path: '/api/points-of-departure',
    summary: 'Type a point of departure in, or change one (give id and version)',
    input: z.strictObject({
      stamp: f.stamp,
      id: f.id.optional(),
      version: f.version.optional(),
      details: pointOfDeparture,
    }),
    output: f.createdThing,
  }),
  getWorksheet: route({
    method: 'GET',
    path: '/api/revisions/:id/worksheet',
    summary: 'What is prepared for the assessor: exposure and margin of safety, substance by substance',
    output: writtenPaper,
  }),
  getWorksheetPdf: route({
    method: 'GET',
    path: '/api/revisions/:id/worksheet.pdf',
    summary: 'The same as a PDF',
    output: z.unknown(),
    media: 'application/pdf',
  }),
  getAssessorZip: route({
    method: 'GET',
    path: '/api/revisions/:id/assessor.zip',
    summary: 'A formula or a trial for the assessor, as one file',
    output: z.unknown(),
    media: 'application/zip',
  }),
  getReportChanges: route({
    method: 'GET',
    path: '/api/reports/:id/changes',
    summary: 'All that changed since the report was signed',
    output: writtenPaper,
  }),
  getReportChangesPdf: route({
    method: 'GET',
    path: '/api/reports/:id/changes.pdf',
    summary: 'The same as a PDF, to send to the assessor',
    output: z.unknown(),
    media: 'application/pdf',
  }),
};

export type { Chapter, Gap, Words, WrittenPaper } from './written-paper.ts';
export { chapter, gap, words, writtenPaper } from './written-paper.ts';
