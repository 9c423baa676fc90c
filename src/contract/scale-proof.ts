import { z } from 'zod';
import * as f from './fields.ts';

/** What decides how far a check may be off: its class, what it repeats within, or the step that it shows. */
export const limitBy = z.enum(['class', 'repeatability', 'readability']);

/** How a scale has proved itself, as every page that weighs needs to know it. */
export const scaleProof = {
  /** What the plan counts with, and since when: the later word of test and typed one. null: not known. */
  repeatability: z
    .object({ grams: z.string(), from: z.enum(['measured', 'typed']), since: f.instant.nullable() })
    .nullable(),
  /** The daily check; null: nobody has said which weight it is checked with. */
  check: z
    .object({
      /** None today that was good. */
      isDue: z.boolean(),
      /** The last one was not good: it weighs nothing until one is. */
      isHeld: z.boolean(),
      lastAt: f.instant.nullable(),
      isGood: z.boolean().nullable(),
      weightGrams: z.string(),
      toleranceGrams: z.string(),
      /** How far the reading may lie from the weight, either way; null: its class does not cover that load. */
      limitGrams: z.string().nullable(),
      limitBy: limitBy.nullable(),
      /** The weight may be off by more than a third of what the scale may. */
      isWeightRough: z.boolean(),
    })
    .nullable(),
} as const;
