import { z } from 'zod';
import { findBatchForUnits, findUnitsFromBatch, type UnitsFromBatch } from '../core/filling/index.ts';
import { done, problem, type Result, refused } from '../core/problem.ts';
import { defineCalculation } from './define-calculation.ts';
import { asNumber, gramsAboveZero } from './measured-fields.ts';

const MOST_UNITS = 1_000_000;

const input = z.strictObject({
  batchGrams: gramsAboveZero('Mass of the batch in grams; this or units').optional(),
  units: z
    .number()
    .int()
    .min(1)
    .max(MOST_UNITS)
    .optional()
    .describe('Packs for sale wanted; this or batchGrams'),
  lossFraction: z
    .number()
    .min(0)
    .max(0.999)
    .describe('Share of the batch that stays in bowl and spoon, 0 to 0.999'),
  targetFillGrams: gramsAboveZero('Fill aimed at in grams'),
  retained: z.number().int().min(0).max(MOST_UNITS).default(0).describe('Filled packs kept, not for sale'),
});

function findUnits({ batchGrams, units, ...plan }: z.output<typeof input>): Result<UnitsFromBatch> {
  if ((batchGrams === undefined) === (units === undefined)) {
    const found = batchGrams === undefined ? 'nothing' : 'both';
    return refused(problem('batch-or-units', 'input', { found }));
  }
  return batchGrams === undefined
    ? done(findBatchForUnits(units ?? 0, plan))
    : findUnitsFromBatch(batchGrams, plan);
}

export const unitsFromBatchCalculation = defineCalculation({
  name: 'units-from-batch',
  title: 'Packs from a batch, batch for packs',
  summary:
    'How many packs for sale a batch in grams fills and what is left over; or the batch in grams that so many packs need.',
  equation:
    'filled = whole part of batch x (1 - loss) / fill; units = filled - retained. batch = (units + retained) x fill / (1 - loss)',
  validRange:
    'Loss as a share of the batch made: divided by 1 - loss, not multiplied by 1 + loss. The batch for packs is not rounded: round it up.',
  sources: [{ text: 'Common practice, own computation', confidence: 'computed' }],
  input,
  output: z.strictObject({
    units: z.number().describe('Packs for sale, retained ones left out'),
    leftoverGrams: z.number().describe('Left over after the last whole pack, in grams'),
    batchGrams: z.number().describe('Mass of the batch in grams'),
    filled: z.number().describe('Packs filled, retained ones counted'),
  }),
  example: {
    input: { batchGrams: 5000, lossFraction: 0.03, targetFillGrams: 96.5, retained: 1 },
    output: { units: 49, leftoverGrams: 25, batchGrams: 5000, filled: 50 },
  },
  compute(asked) {
    const found = findUnits(asked);
    if (!found.ok) return found;
    const { units, filled, leftoverGrams, batchGrams } = found.value;
    return done({ units, leftoverGrams: asNumber(leftoverGrams), batchGrams: asNumber(batchGrams), filled });
  },
});
