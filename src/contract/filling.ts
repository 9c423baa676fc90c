import { z } from 'zod';
import { claim } from './away.ts';
import * as f from './fields.ts';
import { route } from './route.ts';

export const fillWeight = z.object({
  entryId: f.id,
  number: z.number(),
  grossGrams: z.string(),
  tareGrams: z.string(),
  netGrams: z.string(),
  verdict: z.enum(['inside', 'too-light', 'heavy']),
  /** What a tin that is too light lies below; null of any other. */
  lightBy: z.enum(['label', 'limit-1', 'limit-2']).nullable(),
  /** Net less the scale's worst error. */
  surelyGrams: z.string(),
  isStruck: z.boolean(),
  at: f.instant,
  by: z.string(),
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
  tareGrams: z.string().nullable(),
  scale: z.object({ id: f.id, name: z.string(), readabilityGrams: z.string(), worstErrorGrams: z.string() }),
  bulkOnHandGrams: z.string(),
  /** The sample that was planned with the batch. */
  plannedSampleGrams: z.string().nullable(),
  labelsPrinted: z.number(),
  weights: z.array(fillWeight),
  summary: z.object({
    filled: z.number(),
    /** Tins that are too light as they are. */
    tooLight: z.number(),
    stillToFill: z.number(),
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
  sentence: f.saying,
  closing: z
    .object({
      units: z.number(),
      retainedGrams: z.string().nullable(),
      declinedBecause: z.string().nullable(),
      lostGrams: z.string(),
      leftGrams: z.string(),
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
      tareGrams: f.grams.nullable(),
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
      /** The answer to the question that a tin far above its label asks. */
      isContentSure: z.boolean().default(false),
    }),
    output: runView,
  }),
  strikeFill: route({
    method: 'POST',
    path: '/api/filling-runs/:id/strikes',
    summary: 'Strike a weight: the tin was refilled or put aside',
    input: z.strictObject({ stamp: f.stamp, entryId: f.id, reason: f.name }),
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
  getRunCost: route({
    method: 'GET',
    path: '/api/filling-runs/:id/cost',
    summary: 'What the tin really cost, lot by lot',
    output: costView,
  }),
};
