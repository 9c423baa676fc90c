import { z } from 'zod';
import { decideBestBefore } from '../core/label/index.ts';
import { defineCalculation } from './define-calculation.ts';
import { DURABILITY_THRESHOLD_MONTHS } from './label-tables.ts';

export const bestBeforeCalculation = defineCalculation({
  name: 'best-before',
  title: 'Best before, or the period after opening',
  summary: 'The date of minimum durability, what decided it, and which mark the label needs.',
  equation:
    'date = the earliest of made + months and the best-before dates of the lots; mark = date where date <= made + 30 months, else period-after-opening',
  validRange:
    'Calendar months: a day that the month does not have falls back to its last. Exactly 30 months takes a date.',
  sources: [{ text: 'Regulation (EC) No 1223/2009, Article 19(1)(c)', confidence: 'read' }],
  input: z.strictObject({
    made: z.iso.date().describe('Made on, a date'),
    months: z.number().int().min(1).max(120).describe('Months that the product is known to keep'),
    lots: z.array(z.iso.date()).max(1000).optional().describe('Best-before dates of the lots that went in'),
    openedMonths: z
      .number()
      .int()
      .min(1)
      .max(120)
      .optional()
      .describe('Months after opening, for the open jar; changes neither date nor mark'),
  }),
  output: z.strictObject({
    date: z.string().describe('Best before, a date'),
    decidedBy: z.string().describe('months, or lots[i] counted from 0'),
    mark: z.enum(['date', 'period-after-opening']).describe('What the label must carry'),
  }),
  example: {
    input: { made: '2026-08-31', months: 18, lots: ['2028-06-30', '2029-01-31'] },
    output: { date: '2028-02-29', decidedBy: 'months', mark: 'date' },
  },
  compute: ({ made, months, lots }) => decideBestBefore({ made, months, lots }, DURABILITY_THRESHOLD_MONTHS),
});
