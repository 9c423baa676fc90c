import { z } from 'zod';
import { findFigureHeightMm, findTolerableError } from '../core/filling/index.ts';
import { done } from '../core/problem.ts';
import { defineCalculation } from './define-calculation.ts';
import { asNumber, gramsAboveZero } from './measured-fields.ts';
import { netContentsTables } from './net-contents-tables.ts';

export const tolerableErrorCalculation = defineCalculation({
  name: 'tolerable-error',
  title: 'Tolerable negative error of a pack',
  summary:
    'The tolerable negative error of a declared quantity in g or ml, its two limits, the largest measuring error and the height of the figures.',
  equation:
    'T = p Qn / 100 or a fixed value by the band of the declared quantity Qn, rounded up to 0.1 (up-0.1: percentages only; r87: to a whole one above 1000); limit 1 = Qn - T; limit 2 = Qn - 2 T; largest measuring error = T / 5',
  validRange:
    '5 to 25 000 g or ml. Outside of it there is no tolerable error: the content must be at least what is declared. Exact.',
  sources: [
    { text: 'Directive 76/211/EEC Annex I, SI 2006/659: errors and rounding up to 0.1', confidence: 'read' },
    {
      text: 'National Trade Measurement Regulations 2009 (Australia), reg 4.34: rounding of OIML R 87',
      confidence: 'read',
    },
    { text: 'NI 2011/331 Schedule 2: measuring error at most a fifth', confidence: 'read' },
    { text: 'Directive 76/211/EEC Annex I 3.1: heights of the figures', confidence: 'read' },
  ],
  input: z.strictObject({
    nominal: gramsAboveZero('Declared quantity, in the unit given'),
    unit: z.enum(['g', 'ml']).describe('Unit of all quantities, in and out'),
    rounding: z
      .enum(['up-0.1', 'r87'])
      .default('up-0.1')
      .describe('up-0.1: Great Britain, Northern Ireland, European Union; r87: OIML R 87'),
  }),
  output: z.strictObject({
    tolerableError: z.number().describe('Tolerable negative error, in the unit given'),
    limit1: z.number().describe('Declared quantity less one error'),
    limit2: z.number().describe('Declared quantity less two errors'),
    largestMeasuringError: z.number().describe('A fifth of the error'),
    figureHeightMm: z.number().describe('Least height of the figures on the label, in millimetres'),
  }),
  example: {
    input: { nominal: 30, unit: 'g' },
    output: {
      tolerableError: 2.7,
      limit1: 27.3,
      limit2: 24.6,
      largestMeasuringError: 0.54,
      figureHeightMm: 2,
    },
  },
  compute({ nominal, rounding }) {
    const error = findTolerableError(nominal, rounding, netContentsTables);
    if (!error.ok) return error;
    const height = findFigureHeightMm(nominal, netContentsTables.figureHeights);
    if (!height.ok) return height;
    return done({
      tolerableError: asNumber(error.value.tolerableError),
      limit1: asNumber(error.value.limit1),
      limit2: asNumber(error.value.limit2),
      largestMeasuringError: asNumber(error.value.largestMeasuringError),
      figureHeightMm: height.value,
    });
  },
});
