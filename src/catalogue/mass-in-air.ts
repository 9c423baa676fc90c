import { z } from 'zod';
import { done } from '../core/problem.ts';
import { findMassInAir } from '../core/weighing/index.ts';
import { defineCalculation } from './define-calculation.ts';
import { asNumber, densityGramsPerMl, gramsAboveZero } from './measured-fields.ts';

/** Air lies between 0.0009 g/ml (hot, high up) and 0.0014 g/ml (cold, at sea level): common practice, no source. */
const THIN_AIR = 0.0009;
const DENSE_AIR = 0.0014;

export const massInAirCalculation = defineCalculation({
  name: 'mass-in-air',
  title: 'Mass of what a scale shows, air buoyancy allowed for',
  summary: 'Mass in grams of a sample from what a scale shows in air, and the correction in percent.',
  equation:
    'm = W (1 - a / c) / (1 - a / d); W indication, a density of air, c of the weights, d of the sample',
  validRange:
    'Densities far above the air’s. The net content on a label is the weighed value: this is for turning mass into volume.',
  sources: [{ text: 'Balance operating instructions: air buoyancy', confidence: 'read' }],
  input: z.strictObject({
    indicationGrams: gramsAboveZero('What the scale shows, in grams'),
    sampleDensityGramsPerMl: densityGramsPerMl('Density of the sample'),
    airDensityGramsPerMl: z
      .number()
      .min(THIN_AIR)
      .max(DENSE_AIR)
      .default(0.0012)
      .describe('Density of the air, in g/ml'),
    calibrationDensityGramsPerMl: densityGramsPerMl('Density of the weights, in g/ml').default(8),
  }),
  output: z.strictObject({
    massGrams: z.number().describe('Mass in grams'),
    correctionPercent: z.number().describe('What the mass is above the indication, in percent of it'),
  }),
  example: {
    input: { indicationGrams: 100, sampleDensityGramsPerMl: 8 },
    output: { massGrams: 100, correctionPercent: 0 },
  },
  compute(asked) {
    const mass = findMassInAir(asked);
    return done({
      massGrams: asNumber(mass),
      correctionPercent: asNumber(mass.div(asked.indicationGrams).minus(1).times(100)),
    });
  },
});
