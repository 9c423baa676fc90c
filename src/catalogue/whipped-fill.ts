import { z } from 'zod';
import { findLargestOverrun, findWhippedFill } from '../core/filling/index.ts';
import { done, problem, refused } from '../core/problem.ts';
import { defineCalculation } from './define-calculation.ts';
import { asNumber, densityGramsPerMl, gramsAboveZero } from './measured-fields.ts';

/** A hundred times its volume is air, not a butter (common practice, no source). */
const LARGEST_OVERRUN_PERCENT = 10_000;
const LARGEST_CONTAINER_ML = 1_000_000;

export const whippedFillCalculation = defineCalculation({
  name: 'whipped-fill',
  title: 'Fill of a container with a whipped butter',
  summary:
    'The grams of whipped butter that fill a container at an overrun; or, for declared grams, the largest overrun at which they still fill it.',
  equation:
    'V = container x (1 - headspace); density = 1 / ((1 - sum w)(1 + O) / rho + sum(w / rho_i)); fill = V x density; largest overrun: the same solved for O with fill = declared',
  validRange:
    'Container volume measured to the brim; inclusions (grains, petals) keep their volume and take no air, their shares add up to less than 1. The densities’ temperature must be that of filling.',
  sources: [
    { text: 'University of Guelph, ice cream technology, overrun calculations', confidence: 'read' },
    { text: 'Volumes of base and inclusions added', confidence: 'computed' },
  ],
  input: z.strictObject({
    containerMl: z.number().min(0.001).max(LARGEST_CONTAINER_ML).describe('Measured brim volume in ml'),
    headspaceFraction: z
      .number()
      .min(0)
      .lt(1)
      .default(0)
      .describe('Share of the brim volume that stays empty, 0 to below 1'),
    unwhippedDensityGramsPerMl: densityGramsPerMl(
      'Density of the base before whipping, without inclusions, in g/ml',
    ),
    overrunPercent: z
      .number()
      .min(0)
      .max(LARGEST_OVERRUN_PERCENT)
      .optional()
      .describe('Overrun of the base without inclusions, in percent; this or declaredGrams'),
    declaredGrams: gramsAboveZero('Declared net content in grams; this or overrunPercent').optional(),
    inclusions: z
      .array(
        z.strictObject({
          massFraction: z.number().min(0).lt(1).describe('Share of the finished mass, 0 to below 1'),
          densityGramsPerMl: densityGramsPerMl('Density of the inclusion itself in g/ml'),
        }),
      )
      .max(20)
      .default([])
      .describe('What is folded in and takes no air'),
  }),
  output: z.strictObject({
    fillGrams: z.number().describe('Mass that fills the container in grams'),
    whippedDensityGramsPerMl: z.number().describe('Density of the fill, inclusions and all, in g/ml'),
    largestOverrunPercent: z
      .number()
      .optional()
      .describe('With declaredGrams: the largest overrun at which the container still holds them'),
  }),
  example: {
    input: { containerMl: 100, unwhippedDensityGramsPerMl: 0.9, overrunPercent: 50 },
    output: { fillGrams: 60, whippedDensityGramsPerMl: 0.6 },
  },
  compute({ overrunPercent, declaredGrams, ...container }) {
    if (overrunPercent !== undefined && declaredGrams !== undefined) {
      return refused(problem('overrun-or-declared', 'declaredGrams', { found: declaredGrams }));
    }
    if (declaredGrams !== undefined) {
      const largest = findLargestOverrun(container, declaredGrams);
      if (!largest.ok) return largest;
      return done({
        fillGrams: asNumber(largest.value.fillGrams),
        whippedDensityGramsPerMl: asNumber(largest.value.whippedDensityGramsPerMl),
        largestOverrunPercent: asNumber(largest.value.largestOverrunPercent),
      });
    }
    if (overrunPercent === undefined) {
      return refused(problem('overrun-or-declared', 'overrunPercent', { found: 'nothing' }));
    }
    const fill = findWhippedFill(container, overrunPercent);
    if (!fill.ok) return fill;
    return done({
      fillGrams: asNumber(fill.value.fillGrams),
      whippedDensityGramsPerMl: asNumber(fill.value.whippedDensityGramsPerMl),
    });
  },
});
