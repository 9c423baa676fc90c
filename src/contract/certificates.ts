import { z } from 'zod';
import * as f from './fields.ts';
import { ifraCategory } from './formulas.ts';
import { route } from './route.ts';

/** One constituent as the paper prints it: a single figure as typical, or a range; null: not printed. */
const printedConstituent = z.strictObject({
  name: f.name,
  cas: z.string().trim().max(100).nullable().default(null),
  leastPercent: f.percent.nullable().default(null),
  typicalPercent: f.percent.nullable().default(null),
  mostPercent: f.percent.nullable().default(null),
});

const peroxide = z.strictObject({ mmolPerLitre: f.decimal, measuredOn: f.date.nullable().default(null) });

/** How much of it the conformity statement allows in a finished product of one category. */
const ifraStatement = z.strictObject({ category: ifraCategory, edition: f.name, mostPercent: f.percent });

const whatItSays = {
  /** Whether the list is everything in it that has a limit or must be named. */
  isComplete: z.boolean(),
  /** In millimoles of peroxide in a litre. */
  peroxide: peroxide.nullable().default(null),
  ifra: z.array(ifraStatement).max(30).default([]),
  remark: f.text.default(''),
  /** A paper on the same lot that this one is entered instead of: a correction, or a newer print of the same. */
  insteadOf: f.id.nullable().default(null),
};

export const certificateInput = z.strictObject({
  constituents: z.array(printedConstituent).max(200),
  ...whatItSays,
});

/** As it is kept: every range is whole. */
export const certificateDetails = z.strictObject({
  constituents: z.array(
    z.strictObject({
      name: f.name,
      cas: z.string().nullable(),
      leastPercent: f.percent,
      typicalPercent: f.percent,
      mostPercent: f.percent,
    }),
  ),
  ...whatItSays,
});
export type CertificateDetails = z.output<typeof certificateDetails>;

export const lotCertificate = z.object({
  id: f.id,
  reference: z.string(),
  datedOn: f.date.nullable(),
  details: certificateDetails,
  file: z.object({ name: z.string(), bytes: z.number() }).nullable(),
  by: z.string(),
  at: f.instant,
  /** Another paper was entered instead of it. */
  isReplaced: z.boolean(),
});

const onPaper = { paper: z.string() };

/** What counts of all papers on a lot, each figure with the paper that it stands on. */
export const countingFigures = z.object({
  constituents: z.array(
    z.object({
      name: f.name,
      cas: z.string().nullable(),
      leastPercent: f.percent,
      typicalPercent: f.percent,
      mostPercent: f.percent,
      ...onPaper,
    }),
  ),
  isComplete: z.boolean(),
  peroxide: z.object({ mmolPerLitre: f.decimal, measuredOn: f.date.nullable(), ...onPaper }).nullable(),
  ifra: z.array(
    z.object({ category: ifraCategory, edition: z.string(), mostPercent: f.percent, ...onPaper }),
  ),
});

export const letterToSupplier = z.object({
  supplier: z.string(),
  materials: z.array(z.string()),
  /** Plain text, ready to be sent. */
  text: z.string(),
});

export const certificateRoutes = {
  listLotCertificates: route({
    method: 'GET',
    path: '/api/lots/:id/certificates',
    summary: 'What suppliers’ papers say of one lot, the newest first, and what counts of all of them',
    output: z.object({
      sentence: f.saying,
      certificates: z.array(lotCertificate),
      counts: countingFigures.nullable(),
      /** What it means for each formula that the material goes into. */
      means: z.array(f.saying),
    }),
  }),
  saveLotCertificate: route({
    method: 'POST',
    path: '/api/lots/:id/certificates',
    largestBodyMegabytes: 30,
    summary:
      'Enter a paper on a lot; a correction is a new one instead of it, and the earlier stays readable',
    input: z.strictObject({
      stamp: f.stamp,
      reference: f.name,
      datedOn: f.date.nullable(),
      details: certificateInput,
      file: z
        .strictObject({ name: f.name, base64: z.base64().max(28_000_000) })
        .nullable()
        .default(null),
      /** The file of the paper that this one is entered instead of is of this one too. */
      keepsFile: z.boolean().default(false),
    }),
    output: f.createdThing,
  }),
  listFormulaLetters: route({
    method: 'GET',
    path: '/api/revisions/:id/letters',
    summary:
      'Letters to the suppliers of a formula: which papers would answer what is open or only remembered',
    output: z.array(letterToSupplier),
  }),
  getFormulaLetterPdf: route({
    method: 'GET',
    path: '/api/revisions/:id/letter.pdf',
    summary: 'One of these letters, to print',
    query: z.object({ supplier: z.string().max(2000).default('') }),
    output: z.unknown(),
    media: 'application/pdf',
  }),
  listMaterialLetters: route({
    method: 'GET',
    path: '/api/materials/:id/letters',
    summary: 'The letter to the supplier of one material, by the formulas that it goes into',
    output: z.array(letterToSupplier),
  }),
  getMaterialLetterPdf: route({
    method: 'GET',
    path: '/api/materials/:id/letter.pdf',
    summary: 'The same, to print',
    query: z.object({ supplier: z.string().max(2000).default('') }),
    output: z.unknown(),
    media: 'application/pdf',
  }),
  getLotCertificateFile: route({
    method: 'GET',
    path: '/api/lot-certificates/:id/file',
    summary: 'The attached PDF',
    output: z.unknown(),
    media: 'application/pdf',
  }),
};
