import { z } from 'zod';
import { findTargetForCoverage, findTargetOnAverage, type TargetFill } from '../core/filling/index.ts';
import { done, problem, type Result, refused } from '../core/problem.ts';
import { defineCalculation } from './define-calculation.ts';
import { asNumber, gramsAboveZero, gramsFromZero } from './measured-fields.ts';
import { netContentsTables } from './net-contents-tables.ts';

const input = z.strictObject({
  nominalGrams: gramsAboveZero('Declared net content in grams'),
  standardDeviationGrams: gramsFromZero('Standard deviation of the fill in grams'),
  basis: z
    .enum(['average', 'minimum'])
    .describe('average: packers’ rules; minimum: a share at or above the label'),
  coverage: z
    .number()
    .min(0.5)
    .lt(1)
    .optional()
    .describe('minimum only: share of packs, 0.5 to below 1, that is to hold at least the label'),
});

function findTarget({
  nominalGrams,
  standardDeviationGrams,
  basis,
  coverage,
}: z.output<typeof input>): Result<TargetFill> {
  if (basis === 'average') {
    return coverage === undefined
      ? findTargetOnAverage(nominalGrams, standardDeviationGrams, netContentsTables)
      : refused(problem('coverage-not-for-average', 'coverage', { found: coverage }));
  }
  return coverage === undefined
    ? refused(problem('field-missing', 'coverage', { allowed: 'number' }))
    : done(findTargetForCoverage(nominalGrams, standardDeviationGrams, coverage));
}

export const targetFillCalculation = defineCalculation({
  name: 'target-fill',
  title: 'What to aim at when filling',
  summary: 'The mean fill to aim at, in grams, for a spread of the fill, and what is given away by it.',
  equation:
    'average: greatest of Qn, Qn - T + 2 s, Qn - 2 T + 3.72 s. minimum: Qn + z s with z the normal quantile of the coverage. giveaway = target - Qn',
  validRange:
    'Fills that spread normally around a steady mean; average: 5 g to 25 kg. No allowance for a wandering mean, tare or drying. z within 1e-9.',
  sources: [
    { text: 'Guidance note to SI 2006/659, Annex C, target quantity', confidence: 'memory' },
    { text: 'Normal quantile, Abramowitz and Stegun 26.2.11 and 26.2.14', confidence: 'computed' },
  ],
  input,
  output: z.strictObject({
    targetGrams: z.number().describe('Mean fill to aim at in grams'),
    decidedBy: z
      .enum(['nominal', 'limit-1', 'limit-2', 'coverage'])
      .describe('Which of the requirements asks for the most'),
    giveawayGrams: z.number().describe('Target less declared content in grams'),
  }),
  example: {
    input: { nominalGrams: 100, standardDeviationGrams: 2.5, basis: 'average' },
    output: { targetGrams: 100.5, decidedBy: 'limit-1', giveawayGrams: 0.5 },
  },
  compute(asked) {
    const target = findTarget(asked);
    if (!target.ok) return target;
    const { targetGrams, decidedBy, giveawayGrams } = target.value;
    return done({ targetGrams: asNumber(targetGrams), decidedBy, giveawayGrams: asNumber(giveawayGrams) });
  },
});
