import { z } from 'zod';
import * as f from './fields.ts';

/** What a step weighed: anything, or a full cup, whose volume and mass before whipping tell how much air is in it. */
export const stepWeighed = z.strictObject({
  grossGrams: f.gramsAboveZero,
  tareGrams: f.grams,
  cupMl: f.decimal.nullable(),
  /** Net, of the same cup before whipping. */
  unwhippedGrams: f.gramsAboveZero.nullable(),
});
export type StepWeighed = z.output<typeof stepWeighed>;

/** A cup, or a first tin, full to the brim and levelled: what was weighed of it. */
export const fullCup = stepWeighed.extend({
  cupMl: f.decimal,
  /** Whose tin it is; '' of a measuring cup. */
  tinOf: f.text.default(''),
});
export type FullCup = z.output<typeof fullCup>;

/** What whipped butter looks like when the machine stands. */
export const whippedLook = z.enum(['loose', 'soft-peaks', 'firm-peaks', 'stiff', 'grainy', 'melting']);
export type WhippedLook = z.output<typeof whippedLook>;

export const whipRoundInput = z.strictObject({
  load: z.number().int().min(1).max(99),
  round: z.number().int().min(1).max(99),
  minutes: f.minutes.nullable(),
  looked: whippedLook,
  /** `on`: another round; `stop`: this load is whipped. */
  goes: z.enum(['on', 'stop']),
  celsius: f.celsius.nullable(),
  cups: z.array(fullCup).max(20).default([]),
  remark: f.text.default(''),
});

/** Who began it, when; a load and a round of whipping are begun one by one. */
export const stepBegun = z.object({
  entryId: f.id,
  load: z.number(),
  round: z.number(),
  /** How long its timer runs, where that was chosen at the bench. */
  minutes: z.string().nullable(),
  at: f.instant,
  by: z.string(),
});
export type StepBegun = z.output<typeof stepBegun>;

export const whipRound = whipRoundInput.extend({ entryId: f.id, at: f.instant, by: z.string() });
export type WhipRound = z.output<typeof whipRound>;

export const stepPhoto = z.object({
  id: f.id,
  entryId: f.id,
  caption: z.string(),
  at: f.instant,
  by: z.string(),
});
export type StepPhoto = z.output<typeof stepPhoto>;

/** A tin that the butter is meant for, with what this workshop knows of filling it. */
export const airTin = z.object({
  productId: f.id,
  productName: z.string(),
  brimMl: z.string(),
  declaredGrams: z.string(),
  aimGrams: z.string(),
  tareGrams: z.string().nullable(),
  /** Share of the brim volume that stays free under the lid. */
  headspacePercent: z.string(),
  lossPercent: z.string(),
  /** How many of them the batch was planned for; null where it was sized by grams. */
  planned: z.number().nullable(),
  /** How far tins of earlier runs lay from each other within a run; null where none was weighed. */
  spread: z
    .object({
      runs: z.number(),
      tins: z.number(),
      degreesOfFreedom: z.number(),
      standardDeviationGrams: z.number(),
    })
    .nullable(),
});
export type AirTin = z.output<typeof airTin>;

/** What whipping and its cup test are judged by. */
export const stepAir = z.object({
  /** What lies in the bowl by what was weighed. */
  bowlGrams: z.string(),
  /** What the bowl holds; '' where nobody has said. */
  bowlHoldsGrams: z.string(),
  bowlHoldsMl: z.string(),
  /** The smallest step of the scale that the loads are weighed on; null without such a scale. */
  scaleStepGrams: z.string().nullable(),
  /** Density when it was whipped, by cups of earlier batches of this formula; null where none was weighed. */
  earlier: z
    .object({ batches: z.number(), meanGramsPerMl: z.string(), leastGramsPerMl: z.string() })
    .nullable(),
  /** Density before whipping, by cups; null where nobody weighed it. */
  unwhippedGramsPerMl: z.string().nullable(),
});
export type StepAir = z.output<typeof stepAir>;

/** What there was at each weighing of the whole, beside what there should have been. */
export const stageYield = z.object({
  name: z.string(),
  kind: z.enum(['weighed', 'made', 'filled']),
  expectedGrams: z.string(),
  foundGrams: z.string(),
  lossGrams: z.string(),
  lossPercent: z.string(),
});
export type StageYield = z.output<typeof stageYield>;
