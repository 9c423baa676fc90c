import { z } from 'zod';
import { done, problem, type Result, refused } from '../core/problem.ts';
import { type ClassedScale, findAdditionError } from '../core/weighing/index.ts';
import { defineCalculation } from './define-calculation.ts';
import { accuracyClass, asNumber, gramsAboveZero, gramsFromZero } from './measured-fields.ts';
import { scaleTables } from './scale-tables.ts';

const input = z.strictObject({
  weightGrams: gramsAboveZero('Net mass of the addition in grams'),
  readabilityGrams: gramsAboveZero('Displayed step d in grams'),
  readings: z.literal([1, 2]).default(2).describe('2: tare then gross; 1: one reading on a scale at zero'),
  repeatabilityGrams: gramsFromZero('Standard deviation of repeated weighings in grams').default(0),
  accuracyClass: accuracyClass().optional(),
  verificationIntervalGrams: gramsAboveZero('Verification interval e on the plate, in grams').optional(),
  inService: z.boolean().default(false).describe('true: errors of a scale in use, twice those when verified'),
});

/** Class and interval belong together; errors in service need both. */
function readClass(asked: z.output<typeof input>): Result<ClassedScale | undefined> {
  const { accuracyClass: its, verificationIntervalGrams, inService } = asked;
  if (its !== undefined && verificationIntervalGrams !== undefined) {
    return done({ accuracyClass: its, verificationIntervalGrams });
  }
  if (its === undefined && verificationIntervalGrams === undefined && !inService) return done(undefined);
  const missing = its === undefined ? 'accuracyClass' : 'verificationIntervalGrams';
  return refused(problem('class-and-interval-together', missing, { found: 'nothing' }));
}

export const additionErrorCalculation = defineCalculation({
  name: 'addition-error',
  title: 'How far off one addition may be',
  summary:
    'Standard uncertainty in grams, relative and expanded uncertainty and the worst case of one addition as fractions of it.',
  equation:
    'u = sqrt(n d^2 / 12 + s^2 + m^2 / 3); relative = u / weight; expanded = 2 u / weight (k = 2); worst case = (n d / 2 + greater of m and 2 s) / weight; n readings, d readability, s repeatability, m permissible error of the class at this load',
  validRange:
    'A scale that is level, at zero and adjusted. Without a class the permissible error is not in it, and belowMinimumLoad is null: not known.',
  sources: [
    { text: 'JCGM 100: rectangular distribution of a rounded reading', confidence: 'memory' },
    { text: 'OIML R 76-1 tables 3 and 6: errors and smallest load', confidence: 'read' },
    { text: 'Combination of the parts', confidence: 'computed' },
  ],
  input,
  output: z.strictObject({
    standardUncertaintyGrams: z.number().describe('Standard uncertainty in grams'),
    relativeStandardUncertainty: z.number().describe('The same as a fraction of the weight'),
    relativeExpanded: z.number().describe('Expanded uncertainty, k = 2, as a fraction'),
    worstCaseRelative: z.number().describe('Worst case as a fraction'),
    belowMinimumLoad: z
      .boolean()
      .nullable()
      .describe('Whether the weight lies below the smallest load of the class; null: no class given'),
  }),
  example: {
    input: { weightGrams: 5, readabilityGrams: 0.1, accuracyClass: 'III', verificationIntervalGrams: 0.1 },
    output: {
      standardUncertaintyGrams: 0.05,
      relativeStandardUncertainty: 0.01,
      relativeExpanded: 0.02,
      worstCaseRelative: 0.03,
      belowMinimumLoad: false,
    },
  },
  compute(asked) {
    const classed = readClass(asked);
    if (!classed.ok) return classed;
    const error = findAdditionError(
      { ...asked, ...(classed.value && { classed: classed.value }) },
      scaleTables,
    );
    if (!error.ok) return error;
    const { belowMinimumLoad, ...measured } = error.value;
    return done({
      standardUncertaintyGrams: asNumber(measured.standardUncertaintyGrams),
      relativeStandardUncertainty: asNumber(measured.relativeStandardUncertainty),
      relativeExpanded: asNumber(measured.relativeExpanded),
      worstCaseRelative: asNumber(measured.worstCaseRelative),
      belowMinimumLoad,
    });
  },
});
