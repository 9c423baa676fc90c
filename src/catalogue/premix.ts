import { z } from 'zod';
import { done } from '../core/problem.ts';
import { findPremix } from '../core/weighing/index.ts';
import { defineCalculation } from './define-calculation.ts';
import { asNumber, gramsAboveZero } from './measured-fields.ts';

export const premixCalculation = defineCalculation({
  name: 'premix',
  title: 'Premix of a dose too small to weigh',
  summary:
    'How much of a substance and of a carrier to mix, in grams, so that a portion that can be weighed holds a small dose.',
  equation:
    'factor = smallest weighable / dose; premix = portion x factor; carrier = premix - smallest weighable',
  validRange:
    'Dose at most the smallest weighable, portion at least it. The portion brings portion - dose of the carrier with it: leave that out of the carrier’s own line.',
  sources: [{ text: 'Aliquot method of pharmacy calculation', confidence: 'memory' }],
  input: z.strictObject({
    doseGrams: gramsAboveZero('What the batch needs of the substance, in grams'),
    smallestWeighableGrams: gramsAboveZero('Least that the scale weighs within the tolerance, in grams'),
    portionGrams: gramsAboveZero('Premix that is to go into the batch, in grams').optional(),
  }),
  output: z.strictObject({
    factor: z.number().describe('How many times the dose is thinned: smallest weighable / dose'),
    premixTotalGrams: z.number().describe('Premix to make, in grams'),
    carrierGrams: z.number().describe('Carrier in it, in grams; the rest is the smallest weighable amount'),
    portionGrams: z.number().describe('Premix that holds the dose, in grams'),
  }),
  example: {
    input: { doseGrams: 0.41, smallestWeighableGrams: 4.1 },
    output: { factor: 10, premixTotalGrams: 41, carrierGrams: 36.9, portionGrams: 4.1 },
  },
  compute({ portionGrams, ...wish }) {
    const premix = findPremix({ ...wish, ...(portionGrams !== undefined && { portionGrams }) });
    if (!premix.ok) return premix;
    return done({
      factor: asNumber(premix.value.factor),
      premixTotalGrams: asNumber(premix.value.premixTotalGrams),
      carrierGrams: asNumber(premix.value.carrierGrams),
      portionGrams: asNumber(premix.value.portionGrams),
    });
  },
});
