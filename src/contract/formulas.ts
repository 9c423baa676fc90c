import { z } from 'zod';
import { originAnswer } from './answers.ts';
import * as f from './fields.ts';
import { route } from './route.ts';
import { material } from './stock.ts';

export const lineInput = z.strictObject({
  stage: f.name,
  itemKind: z.enum(['material', 'formula']),
  itemId: f.id,
  grams: f.gramsAboveZero,
});
export const stepKind = z.enum([
  'melt',
  'hold',
  'cool',
  'mix',
  'cover',
  'set',
  'whip',
  'weigh',
  'cup',
  'other',
]);
export const stepInput = z.strictObject({
  stage: f.name,
  kind: stepKind,
  what: f.name,
  leastCelsius: f.decimal.nullable(),
  mostCelsius: f.decimal.nullable(),
  minutes: f.decimal.nullable(),
  caution: f.text,
  /** Whipping: minutes of one round, after which it is looked at, and how many rounds it usually takes. */
  roundMinutes: f.decimal.nullable().default(null),
  rounds: z.number().int().min(1).max(20).nullable().default(null),
  /** By how much it grows in whipping, as the maker expects, in percent of its volume. */
  growsPercent: f.decimal.nullable().default(null),
  /** Setting: hours until it is firm, at the earliest and at the latest. */
  leastHours: f.decimal.nullable().default(null),
  mostHours: f.decimal.nullable().default(null),
});

/** IFRA product category, such as 5A. */
export const ifraCategory = z.string().regex(/^(1|2|3|4|5A|5B|5C|5D|6|7A|7B|8|9|10A|10B|11A|11B|12)$/);

/** What a product is used for, as law, IFRA and the report ask. */
export const productUse = z.strictObject({
  use: f.use,
  category: ifraCategory,
  /** As the restricted-substances table spells them: body, face, hand ...; body-lotion, face-cream ... */
  bodyPart: z.string().max(40),
  productType: z.string().max(60),
});
export type ProductUse = z.output<typeof productUse>;

export const revisionDetails = z.strictObject({
  ...productUse.shape,
  /** Other uses of the same product: it is judged for each, and the tightest decides. */
  alsoUsedAs: z.array(productUse).max(8).default([]),
  minAgeMonths: z.number().int().min(0).max(1200).nullable(),
  standing: z.enum(['trial', 'for-sale']),
  /** Bases and whipped mixtures: hours until firm, shortest and longest; null where nothing sets. */
  settingHours: z
    .strictObject({ least: z.number().min(0).max(2000), most: z.number().min(0).max(2000) })
    .nullable(),
  /** Months a base is kept before it is looked at again. */
  keepMonths: z.number().int().min(1).max(60).nullable(),
  note: f.text,
  /** Stages in the order of making are read off the lines and steps. */
  lines: z.array(lineInput).max(100),
  steps: z.array(stepInput).max(100),
});
export type RevisionDetails = z.output<typeof revisionDetails>;

export const revisionView = z.object({
  id: f.id,
  formulaId: f.id,
  number: z.number(),
  version: z.number(),
  /** A revision that a batch used is never edited again. */
  isFixed: z.boolean(),
  details: revisionDetails,
  totalGrams: z.string(),
  lines: z.array(lineInput.extend({ itemName: z.string(), percent: z.string() })),
  stages: z.array(z.object({ name: z.string(), percent: z.string(), grams: z.string() })),
});

export const formulaView = z.object({
  id: f.id,
  version: z.number(),
  name: z.string(),
  /** Short letters that open its batch numbers. */
  code: z.string(),
  kind: z.enum(['base', 'mixture']),
  revisions: z.array(
    z.object({ id: f.id, number: z.number(), standing: z.enum(['trial', 'for-sale']), isFixed: z.boolean() }),
  ),
  /** What is made for sale: the newest revision for sale, or a trial where there is nothing else. */
  inForceId: f.id.nullable(),
  /** Where what it goes into is sold; all markets while no product says. */
  soldIn: z.array(f.market),
  latest: revisionView.nullable(),
});

/** Substance verdict of one market, ready to be drawn as a bar against its limit. */
export const limitVerdict = z.object({
  name: z.string(),
  verdict: z.enum(['within', 'over', 'prohibited', 'unknown', 'no-rule']),
  typicalPercent: z.string(),
  mostPercent: z.string(),
  limitPercent: z.string().nullable(),
  kind: z.enum(['law', 'ifra', 'supplier', 'assessor']).nullable(),
  entry: z.string().nullable(),
  edition: z.string().nullable(),
  source: z.string().nullable(),
  confidence: z.string().nullable(),
  fromMaterials: z.array(z.string()),
  /** The use that decides, in words, where the product has several and they differ. */
  forUse: z.string().nullable(),
  reason: z.string().nullable(),
  /** Where it is not known: the key of the question in `open`, decided or not. */
  question: z.string().nullable(),
  /** What the same rule asks of the lot's certificate besides, each with its question. */
  certificates: z.array(z.object({ reason: z.string(), question: z.string() })),
});

/** `open-again`: a decision is taken back, and nobody has decided anew. */
const decisionVerdict = z.enum(['accepted', 'refused', 'open-again']);

const signedDecision = z.object({
  entryId: f.id,
  verdict: decisionVerdict,
  by: z.string(),
  reason: z.string(),
  at: f.instant,
});

/** Of an earlier revision, where it counts; here it only tells what was thought of the same question. */
export const formerDecision = signedDecision.extend({
  /** The question's key in one market. */
  marketKey: z.string(),
  revision: z.number(),
});

export const openQuestion = z.object({
  /** Stable within the revision: what a decision is about. */
  key: z.string(),
  substance: z.string(),
  /** What is not known, as part of a sentence: "the peroxide value of limonene". */
  what: z.string(),
  markets: z.array(f.market),
  why: f.saying,
  /** Digest of the composition that a decision would be taken upon. */
  upon: z.string(),
  decided: signedDecision.nullable(),
  /** A decision that no longer counts: it was taken upon another composition. */
  lapsed: signedDecision.nullable(),
  /** Decisions that a later one took the place of, or that were taken back; the earliest first. */
  earlier: z.array(signedDecision),
});

/** What only the certificate of a lot raises: decided for every lot with the same figures. */
export const lotQuestion = openQuestion.extend({ material: z.string(), lots: z.array(z.string()) });
export type LotQuestion = z.output<typeof lotQuestion>;

const saleAnswer = z.enum(['yes', 'no', 'decide']);

/** May it be made for sale there, and if not, what stands first in its way. */
const marketAnswer = z.object({
  market: f.market,
  answer: saleAnswer,
  /** What stops it, the first of it; null: nothing does. */
  because: f.saying.nullable(),
  /** What stops it besides. */
  others: z.number(),
  /** Still to be decided by somebody. */
  questions: z.number(),
});

const memoryLine = z.object({
  substance: z.string(),
  says: f.saying,
  /** The paper that would answer; null: nothing to ask for. */
  ask: f.saying.nullable(),
  markets: z.array(f.market),
});

/** What holds even if a remembered figure is wrong, what would change, what is not known (core/safety defines it). */
export const memoryOfCheck = z.object({
  firm: z.array(memoryLine),
  hangs: z.array(memoryLine),
  unknown: z.array(memoryLine),
});

export const revisionCheck = z.object({
  revisionId: f.id,
  /** Of all the markets asked for; `sentence` tells where they differ. */
  answer: saleAnswer,
  sentence: f.saying,
  /** Products that it is filled into, as it is or through another formula, and where they are sold. */
  sold: z.object({ products: z.array(z.string()), markets: z.array(f.market) }),
  /** Of every market that the tables know, whichever were asked for. */
  everywhere: z.array(marketAnswer),
  reasons: z.array(f.saying),
  memory: memoryOfCheck,
  /** The answer with lots on the shelf that have a certificate, those that are next to be used first. */
  shelf: z.array(z.object({ answer: z.enum(['yes', 'no', 'decide']), says: f.saying })),
  markets: z.array(
    z.object({
      market: f.market,
      answer: saleAnswer,
      sentence: f.saying,
      verdicts: z.array(limitVerdict),
      sumOfShares: z.number().nullable(),
      /** What the tables leave out there; empty where they cover the market. */
      notes: z.array(f.saying),
      named: z.array(
        z.object({
          labelName: z.string(),
          percent: z.string(),
          thresholdPercent: z.string(),
          entry: z.string(),
          members: z.array(z.string()),
        }),
      ),
    }),
  ),
  report: z
    .object({
      reference: z.string(),
      reviewBy: f.date,
      isPast: z.boolean(),
      rows: z.array(
        z.object({
          material: z.string(),
          percent: z.string(),
          leastPercent: z.string().nullable(),
          mostPercent: z.string().nullable(),
          verdict: z.enum(['within', 'over', 'under', 'not-covered']),
        }),
      ),
    })
    .nullable(),
  open: z.array(openQuestion),
  /** What lots with a certificate raise and the formula itself does not; empty where lots were not asked for. */
  lotQuestions: z.array(lotQuestion),
  /** Whether microbes can grow in it, as far as the formula tells, and what to be careful of. */
  water: z.object({ says: z.array(f.saying), cautions: z.array(f.saying) }),
  /** "Has it got nuts in?", by what its materials come from. */
  origins: z.array(originAnswer),
});

export const reportDetails = z.strictObject({
  reference: f.name,
  assessor: f.name,
  signedOn: f.date,
  reviewBy: f.date,
  /** The base it covers; null where it covers a formula without a base. */
  baseFormulaId: f.id.nullable(),
  /** Scented formulas it covers. */
  formulaIds: z.array(f.id).max(200),
  /** Products that it names; none: every product that is filled from what it covers. */
  productIds: z.array(f.id).max(200).default([]),
  markets: z.array(f.market).min(1),
  uses: z.array(f.use).min(1),
  ranges: z
    .array(z.strictObject({ materialId: f.id, leastPercent: f.percent, mostPercent: f.percent }))
    .max(300),
});

/** Everything that a check of a formula hangs on but its lines: with these a page answers while somebody types. */
export const checkFacts = z.object({
  formula: z.object({ id: f.id, name: z.string(), kind: z.string() }),
  /** The latest revision; its number is the next one's where nothing is written yet. */
  revision: z.object({ id: f.id, number: z.number() }),
  today: f.date,
  sold: z.object({
    products: z.array(z.object({ id: f.id, name: z.string() })),
    markets: z.array(f.market),
    /** How their labels list what scents them; none where there is no product. */
    scentOnLabel: z.array(f.scentOnLabel),
  }),
  /** Of each other formula its lines for sale, and its newest ones, which a trial is tried out with. */
  bases: z.array(
    z.object({
      formulaId: f.id,
      name: z.string(),
      inForce: z.array(lineInput),
      newest: z.array(lineInput),
    }),
  ),
  materials: z.array(material),
  reports: z.array(z.object({ id: f.id, details: reportDetails })),
  /** On the latest revision, the earliest first. */
  decisions: z.array(
    z.object({
      entryId: f.id,
      key: z.string(),
      verdict: decisionVerdict,
      reason: z.string(),
      /** Digests by the key of each market's unknown. */
      upon: z.record(z.string(), z.string()),
      by: z.string(),
      at: f.instant,
    }),
  ),
});

/** How far a line may go, and what breaks beyond. */
const roomBound = z.object({
  /** Of the finished product, rounded to the inside at the twelfth place. */
  percent: z.string(),
  /** For reading: cut to the inside. */
  shownPercent: z.string(),
  /** As much of the line as the recipe then has, the other lines as they are; rounded to the inside. */
  grams: z.string(),
  /** Whether that much itself is still right. */
  isIncluded: z.boolean(),
  says: f.saying,
});
/** Before the printed label is no longer right, before the report no longer covers it, before a limit is broken; null: nothing known. */
const roomSide = z.object({
  label: roomBound.nullable(),
  report: roomBound.nullable(),
  limit: roomBound.nullable(),
});

export const roomToMove = z.object({
  /** What does not hold as it is. */
  broken: z.array(f.saying),
  /** In the order of the formula's lines; the others keep their proportions. */
  lines: z.array(
    z.object({
      name: z.string(),
      percent: z.string(),
      says: z.array(f.saying),
      up: roomSide,
      down: roomSide,
    }),
  ),
});

export const formulaRoutes = {
  getCheckFacts: route({
    method: 'GET',
    path: '/api/formulas/:id/check-facts',
    summary: 'What the check of a formula hangs on besides its lines',
    output: checkFacts,
  }),
  listFormulas: route({
    method: 'GET',
    path: '/api/formulas',
    summary: 'Bases and mixtures',
    output: z.array(formulaView),
  }),
  getFormula: route({
    method: 'GET',
    path: '/api/formulas/:id',
    summary: 'One formula with its latest revision',
    output: formulaView,
  }),
  saveFormula: route({
    method: 'POST',
    path: '/api/formulas',
    summary: 'Add a formula, or rename one (give id and version)',
    input: z.strictObject({
      stamp: f.stamp,
      id: f.id.optional(),
      version: f.version.optional(),
      name: f.name,
      code: z.string().regex(/^[A-Z]{2,4}$/),
      kind: z.enum(['base', 'mixture']),
    }),
    output: f.createdThing,
  }),
  getRevision: route({
    method: 'GET',
    path: '/api/revisions/:id',
    summary: 'One revision, in grams and percent',
    output: revisionView,
  }),
  /** Saves the draft where the latest revision is one; makes the next revision where it was used already. */
  saveRevision: route({
    method: 'POST',
    path: '/api/formulas/:id/revisions',
    summary: 'Write the formula down, as it was made, in grams',
    input: z.strictObject({ stamp: f.stamp, version: f.version.nullable(), details: revisionDetails }),
    output: revisionView,
  }),
  checkRevision: route({
    method: 'GET',
    path: '/api/revisions/:id/check',
    summary: 'Limits, names on the label, the report, what is unknown',
    /** Left out: where its products are sold; all markets where it has none. */
    query: z.object({ markets: z.string().max(20).optional() }),
    output: revisionCheck,
  }),
  listFormerDecisions: route({
    method: 'GET',
    path: '/api/revisions/:id/former-decisions',
    summary:
      'What was decided on the open questions of earlier revisions, the newest first; each is to be decided again',
    output: z.array(formerDecision),
  }),
  getRoom: route({
    method: 'GET',
    path: '/api/revisions/:id/room',
    summary: 'How far each line may go up and down before label, report or a limit stops it',
    /** As for the check. */
    query: z.object({ markets: z.string().max(20).optional() }),
    output: roomToMove,
  }),
  decideUnknown: route({
    method: 'POST',
    path: '/api/revisions/:id/decisions',
    summary: 'A named person decides an unknown, once for this revision, with a reason',
    input: z.strictObject({
      stamp: f.stamp,
      key: z.string().min(1).max(2000),
      /** `open-again` takes the standing decision back, which `corrects` names. */
      verdict: decisionVerdict,
      reason: f.name,
      /** The question's `upon` as the page showed it: refused where the composition has changed since. */
      upon: z.string().max(64).optional(),
      /** The entry of the standing decision that this one corrects; both stay readable, the latest counts. */
      corrects: f.id.optional(),
    }),
    output: f.createdThing,
  }),
  listReports: route({
    method: 'GET',
    path: '/api/reports',
    summary: "The assessor's reports",
    output: z.array(
      z.object({
        id: f.id,
        version: z.number(),
        details: reportDetails,
        file: z.object({ name: z.string(), bytes: z.number(), sha256: z.string() }).nullable(),
        isPast: z.boolean(),
        /** Its review date is near, and not past. */
        isClose: z.boolean(),
        /** A report that was signed later and counts instead of it, and for what. */
        outweighed: z.array(z.object({ by: z.string(), formula: z.string(), markets: z.array(f.market) })),
      }),
    ),
  }),
  saveReport: route({
    method: 'POST',
    path: '/api/reports',
    summary: "Enter what the assessor's report covers",
    input: z.strictObject({
      stamp: f.stamp,
      id: f.id.optional(),
      version: f.version.optional(),
      details: reportDetails,
    }),
    output: f.createdThing,
  }),
  attachReportFile: route({
    method: 'POST',
    path: '/api/reports/:id/file',
    largestBodyMegabytes: 30,
    summary: "Attach the report's PDF",
    input: z.strictObject({ stamp: f.stamp, name: f.name, base64: z.base64().max(28_000_000) }),
    output: f.createdThing,
  }),
  getReportFile: route({
    method: 'GET',
    path: '/api/reports/:id/file',
    summary: 'The attached PDF',
    output: z.unknown(),
    media: 'application/pdf',
  }),
};
