import { z } from 'zod';
import { done } from '../core/problem.ts';
import { findSmallestWeight } from '../core/weighing/index.ts';
import { defineCalculation } from './define-calculation.ts';
import { asNumber, gramsAboveZero, gramsFromZero } from './measured-fields.ts';

export const smallestWeightCalculation = defineCalculation({
  name: 'smallest-weight',
  title: 'Smallest weight of a scale',
  summary: 'The smallest net weight, in grams, that a scale weighs within a relative tolerance.',
  equation:
    'smallest = 2 max(s, 0.41 d) / r; s repeatability (standard deviation), d readability (displayed step), r relative tolerance',
  validRange:
    'r from a millionth to 1. Covers repeatability and rounding; a scale out of adjustment is off by more. On equality readability is named.',
  sources: [
    { text: 'USP general chapter 41, Balances: 2 s / smallest weight', confidence: 'read' },
    { text: 'USP general chapter 41: floor of 0.41 d', confidence: 'memory' },
  ],
  input: z.strictObject({
    readabilityGrams: gramsAboveZero('Displayed step d in grams'),
    repeatabilityGrams: gramsFromZero('Standard deviation s of ten or more weighings, in grams').default(0),
    relativeTolerance: z.number().min(0.000001).max(1).describe('Tolerance r as a fraction'),
  }),
  output: z.strictObject({
    smallestWeightGrams: z.number().describe('Smallest net weight in grams'),
    decidedBy: z.enum(['readability', 'repeatability']).describe('Which of the two was the greater'),
  }),
  example: {
    input: { readabilityGrams: 0.1, relativeTolerance: 0.02 },
    output: { smallestWeightGrams: 4.1, decidedBy: 'readability' },
  },
  compute({ relativeTolerance, ...scale }) {
    const { smallestWeightGrams, decidedBy } = findSmallestWeight(scale, relativeTolerance);
    return done({ smallestWeightGrams: asNumber(smallestWeightGrams), decidedBy });
  },
});
