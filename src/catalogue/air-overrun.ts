import { z } from 'zod';
import { findAirOverrun } from '../core/filling/index.ts';
import { done, problem, type Result, refused } from '../core/problem.ts';
import { defineCalculation } from './define-calculation.ts';
import { asNumber, densityGramsPerMl, gramsAboveZero } from './measured-fields.ts';

const input = z.strictObject({
  unwhippedDensityGramsPerMl: densityGramsPerMl('Density before whipping in g/ml').optional(),
  whippedDensityGramsPerMl: densityGramsPerMl('Density after whipping in g/ml').optional(),
  sameVolumeUnwhippedGrams: gramsAboveZero('Net mass of a cup of it before whipping, in grams').optional(),
  sameVolumeWhippedGrams: gramsAboveZero('Net mass of the same cup after whipping, in grams').optional(),
});

const PAIRS = [
  ['unwhippedDensityGramsPerMl', 'whippedDensityGramsPerMl'],
  ['sameVolumeUnwhippedGrams', 'sameVolumeWhippedGrams'],
] as const;

interface Pair {
  readonly unwhipped: number;
  readonly whipped: number;
  readonly where: string;
}

/** Exactly one pair, and all of it. */
function readPair(asked: z.output<typeof input>): Result<Pair> {
  const begun = PAIRS.filter((names) => names.some((name) => asked[name] !== undefined));
  const [names] = begun;
  if (names === undefined || begun.length > 1) {
    return refused(
      problem('one-pair-wanted', 'input', {
        found: Object.keys(asked).join(', ') || 'nothing',
        allowed: PAIRS.map((pair) => pair.join(' and ')).join(', or '),
      }),
    );
  }
  const [unwhipped, whipped] = [asked[names[0]], asked[names[1]]];
  if (unwhipped === undefined || whipped === undefined) {
    const missing = unwhipped === undefined ? names[0] : names[1];
    return refused(problem('field-missing', missing, { allowed: 'number' }));
  }
  return done({ unwhipped, whipped, where: names[1] });
}

export const airOverrunCalculation = defineCalculation({
  name: 'air-overrun',
  title: 'Air whipped into a butter',
  summary:
    'The overrun in percent and the share of air by volume, from two densities in g/ml or from the masses of one and the same cup in grams.',
  equation:
    'overrun % = (unwhipped - whipped) / whipped x 100; air fraction = overrun / (1 + overrun) = (unwhipped - whipped) / unwhipped',
  validRange:
    'Whipped not denser than unwhipped; both at one temperature; without grains of sugar or salt, which take no air.',
  sources: [{ text: 'University of Guelph, ice cream technology, overrun calculations', confidence: 'read' }],
  input,
  output: z.strictObject({
    overrunPercent: z.number().describe('Growth of the volume in percent'),
    airFraction: z.number().describe('Share of the whipped volume that is air, 0 to 1'),
  }),
  example: {
    input: { unwhippedDensityGramsPerMl: 1.1, whippedDensityGramsPerMl: 0.55 },
    output: { overrunPercent: 100, airFraction: 0.5 },
  },
  compute(asked) {
    const pair = readPair(asked);
    if (!pair.ok) return pair;
    const air = findAirOverrun(pair.value.unwhipped, pair.value.whipped, pair.value.where);
    if (!air.ok) return air;
    return done({
      overrunPercent: asNumber(air.value.overrunPercent),
      airFraction: asNumber(air.value.airFraction),
    });
  },
});
