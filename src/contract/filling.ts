import { z } from 'zod';
import { claim } from './away.ts';
import * as f from './fields.ts';
import { route } from './route.ts';
import { airTin, fullCup } from './steps.ts';

/** `mean`: gross less the mean of empty tins. `own`: each tin is weighed empty first. `net`: the scale is tared. */
export const fillWay = z.enum(['mean', 'own', 'net']);

/** What became of a tin that was taken out. `slip`: the weight was wrong, the tin was not. */
export const tinFate = z.enum(['bowl', 'trial', 'binned', 'slip']);

export const fillWeight = z.object({
  entryId: f.id,
  /** Which tin of the run: one that was filled up and weighed again keeps its number. */
  number: z.number(),
  way: fillWay,
  grossGrams: z.string(),
  tareGrams: z.string(),
  netGrams: z.string(),
  verdict: z.enum(['inside', 'too-light', 'heavy']),
  /** What a tin that is too light lies below; null of any other. */
  lightBy: z.enum(['label', 'limit-1', 'limit-2']).nullable(),
  /** Net less its worst error. */
  surelyGrams: z.string(),
  /** Worst error of this net weight: of the scale, and of the tin beside the mean of the empty ones. */
  errorGrams: z.string(),
  /** Up to where it is surely right; '0' unless it is too light. */
  gramsToAdd: z.string(),
  isStruck: z.boolean(),
  fate: tinFate.nullable(),
  /** The weight of the same tin before it was filled up. */
  refillOf: f.id.nullable(),
  /** It was filled up: the later weight counts. */
  isRefilled: z.boolean(),
  /** Questions that were answered with "it is so". */
  sure: z.array(z.string()),
  at: f.instant,
  by: z.string(),
});

/** Taps, so that nobody types with oily hands. */
export const cleaning = z.enum(['washed-dried', 'alcohol', 'heated', 'wiped', 'as-supplied', 'other']);

export const readyContainers = z.strictObject({
  kind: z.literal('containers'),
  method: cleaning,
  remark: f.text.default(''),
});
export const readyArea = z.strictObject({
  kind: z.literal('area'),
  /** Nothing of an earlier product lies on the bench. */
  isClear: z.boolean(),
  /** Why it is filled all the same; '' where it is clear. */
  reason: f.text.default(''),
});
export const readyIssued = z.strictObject({
  kind: z.literal('issued'),
  tins: f.pieces,
  lids: f.pieces.nullable(),
  labels: f.pieces.nullable(),
});
export const readyWord = z.discriminatedUnion('kind', [readyContainers, readyArea, readyIssued]);
export type ReadyWord = z.output<typeof readyWord>;

const signed = { at: f.instant, by: z.string() };

/** What was made ready before the first tin; null: nobody said yet. */
export const runReady = z.object({
  containers: readyContainers.extend(signed).nullable(),
  area: readyArea.extend(signed).nullable(),
  issued: readyIssued.extend(signed).nullable(),
});

/** The other kinds of tin from the same bowl: begun, or planned only. */
export const otherRun = z.object({
  /** null: it is planned and not begun. */
  id: f.id.nullable(),
  number: z.string().nullable(),
  productId: f.id,
  productName: z.string(),
  state: z.enum(['planned', 'filling', 'closed', 'released', 'rejected']),
  wanted: z.number(),
  filled: z.number(),
  /** As many more as the bowl still holds of it; null: what one takes is not known before it begins. */
  bowlHolds: z.number().nullable(),
});

/** Pieces of one part as they were counted when the run was closed. */
export const partCount = z.object({
  part: z.enum(['tin', 'lid', 'label']),
  issued: z.number().nullable(),
  used: z.number(),
  spoilt: z.number(),
  back: z.number().nullable(),
  /** Issued, and neither used nor spoilt nor back; null: not all was counted. */
  missing: z.number().nullable(),
});

/** What stayed behind of the batch, and what does as a rule. */
export const lossView = z.object({
  percent: z.string(),
  grams: z.string(),
  isAbnormal: z.boolean(),
  says: f.saying,
});

/** What the first tins of a whipped product are judged by. */
export const fillAir = z.object({
  brimMl: z.string(),
  /** Share of the brim volume that stays free under the lid. */
  headspacePercent: z.string(),
  lossPercent: z.string(),
  /** How far tins of earlier runs lay from each other within a run. */
  spread: airTin.shape.spread,
  /** Full cups and tins of this bowl, as whipping and its cup test left it. */
  cups: z.array(fullCup),
});

export const runState = z.enum(['filling', 'closed', 'released', 'rejected']);

export const runView = z.object({
  id: f.id,
  /** The batch number that stands on the tin. */
  number: z.string(),
  batchId: f.id,
  batchNumber: z.string(),
  purpose: z.enum(['sale', 'trial']),
  formulaId: f.id,
  productId: f.id,
  productName: z.string(),
  markets: z.array(f.market),
  state: runState,
  startedAt: f.instant,
  wanted: z.number(),
  declaredGrams: z.string(),
  aimGrams: z.string(),
  fillBasis: z.enum(['minimum', 'average']),
  tolerableErrorGrams: z.string().nullable(),
  limit1Grams: z.string().nullable(),
  limit2Grams: z.string().nullable(),
  way: fillWay,
  tareGrams: z.string().nullable(),
  /** What its empty tin is known to weigh; null: nobody knows. */
  tinGrams: z.string().nullable(),
  /** Empty tins as they were weighed, and how they differ. */
  tares: z.array(z.string()),
  tareSpreadGrams: z.string().nullable(),
  /** Worst error of a net weight by this way. */
  errorGrams: z.string(),
  ready: runReady,
  /** Besides the tin. */
  parts: z.object({ hasLid: z.boolean(), hasLabel: z.boolean() }),
  others: z.array(otherRun),
  scale: z.object({ id: f.id, name: z.string(), readabilityGrams: z.string(), worstErrorGrams: z.string() }),
  bulkOnHandGrams: z.string(),
  /** In the bowl for more tins by now: less what stands in tins that are not booked yet. */
  bowlLeftGrams: z.string(),
  /** The sample that was planned with the batch; null: none was, or it is kept already. */
  plannedSampleGrams: z.string().nullable(),
  /** The run that kept the batch's sample. */
  sampleKeptIn: z.string().nullable(),
  labelsPrinted: z.number(),
  weights: z.array(fillWeight),
  summary: z.object({
    filled: z.number(),
    /** Tins that are too light as they are. */
    tooLight: z.number(),
    stillToFill: z.number(),
    /** Taken out and not put back into the bowl. */
    putAside: z.number(),
    /** As many more as the bowl still holds at the aimed fill. */
    bowlHolds: z.number(),
    /** Tins that count: not those too light to stay, which are filled up or put aside. */
    counting: z.number(),
    /** Mean and what follows are of the tins that count. */
    meanGrams: z.string().nullable(),
    standardDeviationGrams: z.string().nullable(),
    giveawayGrams: z.string().nullable(),
    verdict: z.enum(['accept', 'reject', 'none-yet']),
    decidedBy: z.string().nullable(),
    belowNominal: z.number(),
    belowLimit1: z.number(),
    belowLimit2: z.number(),
  }),
  /** Only while it is filled, by itself, of what was whipped; null: else, or nobody knows what its tin holds. */
  air: fillAir.nullable(),
  sentence: f.saying,
  closing: z
    .object({
      units: z.number(),
      retainedGrams: z.string().nullable(),
      declinedBecause: z.string().nullable(),
      lostGrams: z.string(),
      leftGrams: z.string(),
      /** What went back to the shelf, as a lot that can be filled later; null: nothing. */
      leftLot: z.object({ id: f.id, number: z.string(), bestBefore: f.date.nullable() }).nullable(),
      counts: z.array(partCount),
      loss: lossView.nullable(),
      at: f.instant,
      by: z.string(),
    })
    .nullable(),
  lotId: f.id.nullable(),
  bestBefore: f.date.nullable(),
  /** What a release looks at: each check with its answer. */
  checks: z.array(
    z.object({
      check: z.string(),
      isPassed: z.boolean(),
      /** It stops nothing, and the person who releases should have seen it. */
      isToSee: z.boolean().optional(),
      detail: f.saying,
    }),
  ),
  release: z
    .object({ verdict: z.enum(['released', 'rejected']), by: z.string(), reason: z.string(), at: f.instant })
    .nullable(),
  /** What tablets did while they were away and could not be entered as it came, answered or not. */
  claims: z.array(claim),
});

export const costView = z.object({
  /** At least: lots whose price nobody knows are named, never counted as nothing. */
  total: z.string(),
  perTin: z.string().nullable(),
  /** In whole pennies, for reading: the lines as shown add up to it. */
  shownTotal: z.string(),
  isComplete: z.boolean(),
  currency: z.string(),
  rows: z.array(
    z.object({
      lotId: f.id,
      lotNumber: z.string(),
      itemName: z.string(),
      amount: z.string(),
      unit: f.unit,
      cost: z.string().nullable(),
      shownCost: z.string().nullable(),
    }),
  ),
});

/** What to aim at, from this workshop's own spread and scale. */
export const aimAdvice = z.object({
  aimGrams: z.string(),
  decidedBy: z.enum(['nominal', 'limit-1', 'limit-2', 'coverage', 'scale']),
  basis: z.enum(['minimum', 'average']),
  errorGrams: z.string(),
  giveawayGrams: z.string(),
  /** Money for what is given away in one tin, and in all that are wanted; null: a price is not known. */
  giveawayMoney: z.string().nullable(),
  runGiveawayGrams: z.string(),
  runGiveawayMoney: z.string().nullable(),
  currency: z.string(),
  /** One tin in so many is too light at once; null: none, or not known. */
  shortOneIn: z.number().nullable(),
  lower: z
    .object({
      byGrams: z.string(),
      savesGrams: z.string(),
      savesMoney: z.string().nullable(),
      shortOneIn: z.number().nullable(),
    })
    .nullable(),
  /** From which earlier runs the spread is learnt; null: there are too few tins yet. */
  learnt: z
    .object({
      spreadGrams: z.string(),
      tins: z.number(),
      from: z.enum(['product', 'container']),
      runs: z.array(z.object({ id: f.id, number: z.string(), tins: z.number() })),
    })
    .nullable(),
  /** What the product itself says. */
  productAimGrams: z.string().nullable(),
});

export const fillingRoutes = {
  listRuns: route({
    method: 'GET',
    path: '/api/filling-runs',
    summary: 'Filling runs, the newest first',
    output: z.array(runView),
  }),
  startRun: route({
    method: 'POST',
    path: '/api/filling-runs',
    summary: 'Fill one batch, or part of it, into one product',
    input: z.strictObject({
      stamp: f.stamp,
      batchId: f.id,
      productId: f.id,
      wanted: f.piecesAboveZero,
      scaleId: f.id,
      /** null: as the tare tells. Given or known it is a mean, nought is a tared scale, else each tin is its own. */
      way: fillWay.nullable().default(null),
      tareGrams: f.grams.nullable(),
      /** Empty tins weighed one by one: their mean is taken off, and their spread counted. */
      tares: z.array(f.gramsAboveZero).max(100).default([]),
      /** Questions about them that were answered with "it is so". */
      sure: z.array(f.name).max(10).default([]),
      /** null: as the product says, else as the spread of earlier runs and the scale ask. */
      aimGrams: f.gramsAboveZero.nullable().default(null),
    }),
    output: runView,
  }),
  getRun: route({
    method: 'GET',
    path: '/api/filling-runs/:id',
    summary: 'One filling run, its weights and verdict',
    output: runView,
  }),
  recordFill: route({
    method: 'POST',
    path: '/api/filling-runs/:id/weights',
    summary: 'One tin weighed: gross with its tare',
    input: z.strictObject({
      stamp: f.stamp,
      grossGrams: f.gramsAboveZero,
      tareGrams: f.grams.nullable(),
      /** The tin was too light, was filled up and is weighed again: both weights stand, this one counts. */
      refillOf: f.id.nullable().default(null),
      /** Questions that were asked about this weight, and answered with "it is so". */
      sure: z.array(f.name).max(10).default([]),
    }),
    output: runView,
  }),
  changeFillWay: route({
    method: 'POST',
    path: '/api/filling-runs/:id/ways',
    summary: 'Weigh the tins in another way from now on; each weight keeps how it was weighed',
    input: z.strictObject({
      stamp: f.stamp,
      way: fillWay,
      tareGrams: f.grams.nullable().default(null),
      tares: z.array(f.gramsAboveZero).max(100).default([]),
      /** Questions about them that were answered with "it is so". */
      sure: z.array(f.name).max(10).default([]),
      aimGrams: f.gramsAboveZero.nullable().default(null),
    }),
    output: runView,
  }),
  prepareRun: route({
    method: 'POST',
    path: '/api/filling-runs/:id/ready',
    summary: 'Before the first tin: containers cleaned, area cleared, pieces counted out',
    input: z.strictObject({ stamp: f.stamp, word: readyWord }),
    output: runView,
  }),
  strikeFill: route({
    method: 'POST',
    path: '/api/filling-runs/:id/strikes',
    summary: 'Strike a weight, and say what became of the tin',
    input: z.strictObject({
      stamp: f.stamp,
      entryId: f.id,
      reason: f.name,
      /** null: nobody said; what was in it counts as back in the bowl. */
      fate: tinFate.nullable().default(null),
    }),
    output: runView,
  }),
  closeRun: route({
    method: 'POST',
    path: '/api/filling-runs/:id/close',
    summary: 'Filling is over: count tins, keep the sample, weigh what is left in the bowl',
    input: z.strictObject({
      stamp: f.stamp,
      retained: z.discriminatedUnion('keep', [
        z.strictObject({ keep: z.literal(true), grams: f.gramsAboveZero }),
        z.strictObject({ keep: z.literal(false), reason: f.name }),
      ]),
      /** Weighed, what still lies in the bowl and is kept for another run. */
      leftGrams: f.grams,
      spoiltTins: f.pieces.default(0),
      spoiltLids: f.pieces.default(0),
      spoiltLabels: f.pieces.default(0),
      /** Counted, what goes back to its place; null: not counted. */
      backTins: f.pieces.nullable().default(null),
      backLids: f.pieces.nullable().default(null),
      backLabels: f.pieces.nullable().default(null),
      /** Questions that were asked before it is closed for good, and answered with "it is so". */
      sure: z.array(f.name).max(10).default([]),
    }),
    output: runView,
  }),
  releaseRun: route({
    method: 'POST',
    path: '/api/filling-runs/:id/release',
    summary: 'A named person releases or rejects the filling run after the checks',
    input: z.strictObject({ stamp: f.stamp, verdict: z.enum(['released', 'rejected']), reason: f.text }),
    output: runView,
  }),
  adviseAim: route({
    method: 'GET',
    path: '/api/batches/:id/aim',
    summary: 'What to aim at when this batch is filled into a product on a scale, and what that gives away',
    query: z.object({
      productId: f.id,
      scaleId: f.id,
      wanted: z.coerce.number().int().min(1).max(1_000_000).default(1),
      /** Of the empty tin; '': as it is known. */
      tareGrams: z.string().max(20).default(''),
      /** Worst error of a net weight where it is known already; '': as the scale has it. */
      errorGrams: z.string().max(20).default(''),
      /** How far a tin may be above the mean of the empty ones, where the error of the scale is not known yet. */
      allowanceGrams: z.string().max(20).default(''),
      tareSpreadGrams: z.string().max(20).default(''),
    }),
    output: aimAdvice,
  }),
  getRunCost: route({
    method: 'GET',
    path: '/api/filling-runs/:id/cost',
    summary: 'What the tin really cost, lot by lot',
    output: costView,
  }),
};
