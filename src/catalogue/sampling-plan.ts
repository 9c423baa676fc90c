import { z } from 'zod';
import { findSamplingPlan, judgeSample } from '../core/filling/index.ts';
import { done } from '../core/problem.ts';
import { defineCalculation } from './define-calculation.ts';
import { netContentsTables } from './net-contents-tables.ts';

/** One hour of a fast packing line; a workshop's batch has at most 10 000 packs by law (common practice, no source). */
const LARGEST_BATCH = 1_000_000;
const count = z.number().int().min(0).max(LARGEST_BATCH);

export const samplingPlanCalculation = defineCalculation({
  name: 'sampling-plan',
  title: 'Sampling plan of the reference test',
  summary:
    'How many packs of a batch to take and how many of them may be non-standard (below limit 1); with the count found, the verdict.',
  equation:
    'Accept when at most acceptAtMost packs are below limit 1, reject from rejectFrom on; in between, by the double plan, take the second sample and judge both together. Below 100 packs all are weighed and at most 5 % may be below.',
  validRange:
    'Batches of 1 pack and more of one declared quantity, one run, one place; off the line at most 10 000. Destructive from 100 packs. This is the count only: the mean is tested beside it.',
  sources: [
    { text: 'SI 2006/659 Schedule 2: single plan, all weighed below 100', confidence: 'read' },
    { text: 'Directive 76/211/EEC Annex II: double and destructive plan', confidence: 'read' },
  ],
  input: z.strictObject({
    batchSize: z.number().int().min(1).max(LARGEST_BATCH).describe('Packs in the batch'),
    scheme: z.enum(['gb-single', 'eu-double', 'destructive']).describe('Which plan'),
    nonStandard: z
      .union([count, z.array(count).min(1).max(2)])
      .optional()
      .describe('Packs found below limit 1; for the double plan [first sample, second sample alone]'),
  }),
  output: z.strictObject({
    sampleSize: z.number().describe('Packs of the stage that the numbers hold for'),
    acceptAtMost: z.number().describe('Most non-standard packs of that stage'),
    rejectFrom: z.number().describe('Non-standard packs from which the stage rejects'),
    verdict: z
      .enum(['accept', 'reject', 'second-sample'])
      .optional()
      .describe('Of the batch; second-sample: it must be taken to decide'),
    decidedBy: z
      .enum(['all-weighed', 'sample', 'first-sample', 'both-samples'])
      .optional()
      .describe('Which stage decided, or left it open'),
    bothSamples: z
      .strictObject({
        sampleSize: z.number().describe('Packs of both samples'),
        acceptAtMost: z.number().describe('Most non-standard packs of both'),
        rejectFrom: z.number().describe('Non-standard packs of both from which the batch is rejected'),
      })
      .optional()
      .describe('Double plan: both samples together'),
  }),
  example: {
    input: { batchSize: 300, scheme: 'gb-single', nonStandard: 4 },
    output: { sampleSize: 50, acceptAtMost: 3, rejectFrom: 4, verdict: 'reject', decidedBy: 'sample' },
  },
  compute({ batchSize, scheme, nonStandard }) {
    const plan = findSamplingPlan(batchSize, scheme, netContentsTables.countTests);
    if (!plan.ok) return plan;
    const { first, both } = plan.value;
    const bothSamples = both && { bothSamples: both };
    if (nonStandard === undefined) return done({ ...first, ...bothSamples });
    const judged = judgeSample(plan.value, typeof nonStandard === 'number' ? [nonStandard] : nonStandard);
    if (!judged.ok) return judged;
    const { stage, verdict, decidedBy } = judged.value;
    return done({ ...stage, verdict, decidedBy, ...bothSamples });
  },
});
