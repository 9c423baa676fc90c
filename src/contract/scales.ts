import { z } from 'zod';
import * as f from './fields.ts';
import { route } from './route.ts';
import { limitBy } from './scale-proof.ts';

/** More readings than anybody takes: a list without end is a mistake (common practice, no source). */
const MOST_READINGS = 50;

export const scaleTest = z.object({
  entryId: f.id,
  at: f.instant,
  by: z.string().nullable(),
  weightGrams: z.string(),
  readings: z.array(z.string()),
  readabilityGrams: z.string(),
  meanGrams: z.string(),
  deviationGrams: z.string(),
  /** The plan counts with it. */
  isUsed: z.boolean(),
});
export type ScaleTest = z.output<typeof scaleTest>;

export const scaleCheck = z.object({
  entryId: f.id,
  at: f.instant,
  on: f.date,
  by: z.string().nullable(),
  weightGrams: z.string(),
  toleranceGrams: z.string(),
  readingGrams: z.string(),
  deviationGrams: z.string(),
  limitGrams: z.string(),
  limitBy,
  isGood: z.boolean(),
});
export type ScaleCheck = z.output<typeof scaleCheck>;

/** One scale with every test and its latest checks; what else is known of it stands in the workshop. */
export const scaleRecord = z.object({
  id: f.id,
  /** The latest first. */
  tests: z.array(scaleTest),
  checks: z.array(scaleCheck),
  /** Nominal masses of weights that suit it. */
  proposedWeights: z.array(z.number()),
});

export const scalesRoutes = {
  getScaleRecord: route({
    method: 'GET',
    path: '/api/scales/:id',
    summary: 'Every test of a scale, and its latest checks',
    output: scaleRecord,
  }),
  recordScaleTest: route({
    method: 'POST',
    path: '/api/scales/:id/tests',
    summary: 'Ten weighings or more of one weight: how well the scale repeats',
    input: z.strictObject({
      stamp: f.stamp,
      weightGrams: f.gramsAboveZero,
      readings: z.array(f.grams).max(MOST_READINGS),
    }),
    output: scaleRecord,
  }),
  recordScaleCheck: route({
    method: 'POST',
    path: '/api/scales/:id/checks',
    summary: 'A check weight put on: whether the scale may be used today',
    input: z.strictObject({
      stamp: f.stamp,
      weightGrams: f.gramsAboveZero,
      toleranceGrams: f.grams,
      readingGrams: f.decimal,
    }),
    output: scaleRecord,
  }),
};
