import { z } from 'zod';
import { testBatchWeights } from '../core/filling/index.ts';
import { done } from '../core/problem.ts';
import { defineCalculation } from './define-calculation.ts';
import { asNumber, gramsAboveZero } from './measured-fields.ts';
import { netContentsTables } from './net-contents-tables.ts';

/** Off the packing line a batch has at most 10 000 packs (SI 2006/659). */
const LARGEST_BATCH = 10_000;

export const batchWeightTestCalculation = defineCalculation({
  name: 'batch-weight-test',
  title: 'Test of a batch by its net weights',
  summary:
    'Whether the net weights of a batch, in grams, meet packers’ rules: counts below the limits, mean, standard deviation, verdict.',
  equation:
    'minimum: none below Qn. average: none below Qn - 2 T; below Qn - T at most 5 % and mean >= Qn where fewer than 100 are all weighed; a sample of 50, 80 or 125 with its accepted number and mean >= Qn - k s, k = t(0.995; n - 1) / sqrt(n), from 100 on; or from 100 on all weighed, at most 2.5 % below Qn - T and mean >= Qn. s with divisor n - 1.',
  validRange:
    'All packs below 100; from 100 on the plan’s sample or all packs. average: 5 g to 25 kg. A sample by the minimum way speaks for the packs weighed, not for the others. Exact: a pack or a mean just on its limit is not below it.',
  sources: [
    { text: 'SI 2006/659 Schedule 2; Directive 76/211/EEC Annexes I and II', confidence: 'read' },
    { text: 'UK guidance on packers’ second rule: one in forty', confidence: 'read' },
    {
      text: 'k for the number weighed: Student’s quantile, printed for 20, 30 and 50',
      confidence: 'computed',
    },
  ],
  input: z.strictObject({
    nominalGrams: gramsAboveZero('Declared net content in grams'),
    batchSize: z.number().int().min(1).max(LARGEST_BATCH).describe('Packs in the batch'),
    weightsGrams: z
      .array(gramsAboveZero('Net weight of one pack in grams'))
      .min(1)
      .max(LARGEST_BATCH)
      .describe('Net weights in grams: all packs, or from 100 on the sample'),
    basis: z
      .enum(['average', 'minimum'])
      .default('average')
      .describe('average: packers’ three rules; minimum: no pack below the label'),
  }),
  output: z.strictObject({
    sampleSize: z.number().describe('Packs weighed'),
    meanGrams: z.number().describe('Mean net weight in grams'),
    standardDeviationGrams: z
      .number()
      .nullable()
      .describe('Standard deviation in grams, divisor n - 1; null for a single pack'),
    belowLimit1: z.number().nullable().describe('Packs below limit 1; null where the size has no limits'),
    belowLimit2: z.number().nullable().describe('Packs below limit 2; null where the size has no limits'),
    belowNominal: z.number().describe('Packs below the declared content'),
    verdict: z.enum(['accept', 'reject']).describe('Of the batch'),
    decidedBy: z
      .enum(['below-limit-2', 'below-limit-1', 'mean', 'below-nominal', 'all-rules'])
      .describe('The gravest rule broken; all-rules: none of several is broken'),
    broken: z
      .array(z.enum(['below-limit-2', 'below-limit-1', 'mean', 'below-nominal']))
      .describe('Every rule broken'),
  }),
  example: {
    input: { nominalGrams: 30, batchSize: 4, weightsGrams: [30.4, 27.3, 31.1, 31.2] },
    output: {
      sampleSize: 4,
      meanGrams: 30,
      standardDeviationGrams: 1.834847859269718,
      belowLimit1: 0,
      belowLimit2: 0,
      belowNominal: 1,
      verdict: 'accept',
      decidedBy: 'all-rules',
      broken: [],
    },
  },
  compute(batch) {
    const tested = testBatchWeights(batch, netContentsTables);
    if (!tested.ok) return tested;
    const { spread, belowLimit1, belowLimit2, belowNominal, verdict, decidedBy, broken } = tested.value;
    return done({
      sampleSize: spread.count,
      meanGrams: asNumber(spread.mean),
      standardDeviationGrams: spread.standardDeviation && asNumber(spread.standardDeviation),
      belowLimit1,
      belowLimit2,
      belowNominal,
      verdict,
      decidedBy,
      broken: [...broken],
    });
  },
});
