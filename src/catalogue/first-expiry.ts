import { z } from 'zod';
import { done } from '../core/problem.ts';
import { chooseFirstExpiry } from '../core/stock/index.ts';
import { defineCalculation } from './define-calculation.ts';
import { asNumber } from './measured-fields.ts';

const lot = z.strictObject({
  lot: z.string().trim().min(1).max(200).describe('Lot number; each once'),
  quantity: z.number().min(0).describe('How much there is, in grams or pieces: one unit for all'),
  bestBefore: z.iso.date().nullable().describe('Best before, a date; null where it is not known or has none'),
  received: z.iso.date().nullable().describe('Received on, a date; null where it is not known'),
  status: z
    .enum(['released', 'quarantine', 'rejected', 'blocked'])
    .describe('Released, in quarantine, rejected or blocked: only a released lot is used'),
});

export const firstExpiryCalculation = defineCalculation({
  name: 'first-expiry',
  title: 'First expired, first out',
  summary: 'Which lots a need is taken from, in the lots’ own unit, and what is short.',
  equation:
    'Released lots with best before >= use date, by best before, then by receipt; each gives min(what it has, what is still needed)',
  validRange:
    'A lot still counts on its own date. Lots without a date come after those with one. Equal dates: the earlier receipt first, then the order given.',
  sources: [
    {
      text: 'ISO 22716:2007, storage and stock turnover: the oldest released stock is used first',
      confidence: 'memory',
    },
    { text: 'Order by date of expiry: common practice, no source', confidence: 'derived' },
  ],
  input: z.strictObject({
    lots: z.array(lot).max(100_000).describe('Lots of one item'),
    need: z.number().min(0).describe('How much is needed, in the same unit'),
    useDate: z.iso.date().describe('Day of use, a date'),
  }),
  output: z.strictObject({
    issue: z
      .array(z.tuple([z.string(), z.number()]))
      .describe('Lot and quantity, in the order in which they are taken'),
    short: z.number().describe('What no lot can give'),
  }),
  example: {
    input: {
      lots: [
        { lot: 'L1', quantity: 400, bestBefore: '2026-09-30', received: '2025-10-01', status: 'released' },
        { lot: 'L2', quantity: 900, bestBefore: '2026-03-31', received: '2025-11-15', status: 'released' },
        { lot: 'L3', quantity: 500, bestBefore: '2025-12-31', received: '2025-06-01', status: 'released' },
      ],
      need: 1500,
      useDate: '2026-01-10',
    },
    output: {
      issue: [
        ['L2', 900],
        ['L1', 400],
      ],
      short: 200,
    },
  },
  compute({ lots, need, useDate }) {
    const chosen = chooseFirstExpiry(lots, need, useDate);
    if (!chosen.ok) return chosen;
    const issue = chosen.value.issue.map(({ lot, quantity }): [string, number] => [lot, asNumber(quantity)]);
    return done({ issue, short: asNumber(chosen.value.short) });
  },
});
