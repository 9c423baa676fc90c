import { z } from 'zod';
import { done } from '../core/problem.ts';
import { findScaleErrors } from '../core/weighing/index.ts';
import { defineCalculation } from './define-calculation.ts';
import { accuracyClass, asNumber, gramsAboveZero, gramsFromZero } from './measured-fields.ts';
import { scaleTables } from './scale-tables.ts';

export const scaleErrorsCalculation = defineCalculation({
  name: 'scale-errors',
  title: 'Permissible errors of a verified scale',
  summary:
    'The largest permissible error of a scale at a load, when verified and in service, and its smallest load, in grams.',
  equation:
    'initial error = 0.5 e, 1 e or 1.5 e by the load counted in e; in service twice that; smallest load = 10 e to 100 e by class',
  validRange:
    'Verification intervals and loads that the class has; a load just on a band’s end has the lower error. Exact.',
  sources: [
    { text: 'OIML R 76-1 tables 3 and 6', confidence: 'read' },
    { text: 'SI 1995/1907 Schedule 2: errors in service', confidence: 'read' },
  ],
  input: z.strictObject({
    accuracyClass: accuracyClass(),
    verificationIntervalGrams: gramsAboveZero('Verification interval e on the plate, in grams'),
    loadGrams: gramsFromZero('Load in grams'),
  }),
  output: z.strictObject({
    initialGrams: z.number().describe('Largest permissible error when verified, in grams, either way'),
    inServiceGrams: z.number().describe('The same in service'),
    minimumLoadGrams: z.number().describe('Smallest load of the class in grams'),
  }),
  example: {
    input: { accuracyClass: 'III', verificationIntervalGrams: 1, loadGrams: 501 },
    output: { initialGrams: 1, inServiceGrams: 2, minimumLoadGrams: 20 },
  },
  compute({ loadGrams, ...scale }) {
    const errors = findScaleErrors(scale, loadGrams, scaleTables);
    if (!errors.ok) return errors;
    const { initialGrams, inServiceGrams, minimumLoadGrams } = errors.value;
    return done({
      initialGrams: asNumber(initialGrams),
      inServiceGrams: asNumber(inServiceGrams),
      minimumLoadGrams: asNumber(minimumLoadGrams),
    });
  },
});
