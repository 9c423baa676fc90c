import { z } from 'zod';
import { costBatch } from '../core/cost/index.ts';
import { done } from '../core/problem.ts';
import { defineCalculation } from './define-calculation.ts';
import { asNumber, gramsAboveZero, gramsFromZero } from './measured-fields.ts';

const money = (meaning: string) => z.number().min(0).max(1e9).describe(`${meaning}, in one currency`);

export const batchCostCalculation = defineCalculation({
  name: 'batch-cost',
  title: 'Cost of a batch',
  summary:
    'What a batch costs, what a good gram of it costs, and what an accident cost, in the caller’s currency.',
  equation:
    'total = sum of grams x price + labour + overhead + packaging; per good gram = total / expected good grams; expected = input x (1 - loss) on the input, input / (1 + loss) on the output; abnormal loss = (expected - good) x per good gram',
  validRange:
    'Divided by the expected output, not by the actual one, so that an accident is not hidden in the price of what is left. Below nothing: more came out than expected.',
  sources: [
    {
      text: 'Process costing with normal and abnormal loss: ACCA F2 study text, chapter 9',
      confidence: 'read',
    },
  ],
  input: z.strictObject({
    additions: z
      .array(
        z.strictObject({
          lot: z.string().trim().min(1).max(200).describe('Lot number'),
          grams: gramsAboveZero('Weighed in, in grams'),
          pricePerGram: money('Price of a gram of this lot, freight included'),
        }),
      )
      .min(1)
      .max(10_000)
      .describe('What was weighed in, lot by lot'),
    labour: money('Labour on the batch').optional(),
    overhead: money('Overhead that falls on the batch').optional(),
    packaging: money('Packaging for the batch').optional(),
    normalLossFraction: z
      .number()
      .min(0)
      .lt(1)
      .default(0)
      .describe('Share that is lost whenever it goes well, 0 to below 1'),
    lossBasis: z
      .enum(['input', 'output'])
      .describe('Whether the loss is a share of the input or of the good output'),
    goodGrams: gramsFromZero('What came out good, in grams; left out: as expected').optional(),
  }),
  output: z.strictObject({
    total: z.number().describe('Cost of the batch'),
    perGoodGram: z.number().describe('Cost of one gram of the expected good output'),
    abnormalLoss: z.number().describe('Money lost beyond the normal loss; below nothing: gained'),
  }),
  example: {
    input: {
      additions: [
        { lot: 'SH-1', grams: 900, pricePerGram: 0.02 },
        { lot: 'OR-1', grams: 100, pricePerGram: 0.13 },
      ],
      labour: 20,
      packaging: 9,
      normalLossFraction: 0.04,
      lossBasis: 'input',
      goodGrams: 900,
    },
    output: { total: 60, perGoodGram: 0.0625, abnormalLoss: 3.75 },
  },
  compute(batch) {
    const cost = costBatch(batch);
    if (!cost.ok) return cost;
    const { total, perGoodGram, abnormalLoss } = cost.value;
    return done({
      total: asNumber(total),
      perGoodGram: asNumber(perGoodGram),
      abnormalLoss: asNumber(abnormalLoss),
    });
  },
});
