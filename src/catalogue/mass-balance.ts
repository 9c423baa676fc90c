import { z } from 'zod';
import { done } from '../core/problem.ts';
import { balanceMass } from '../core/stock/index.ts';
import { defineCalculation } from './define-calculation.ts';
import { asNumber, gramsAboveZero, gramsFromZero } from './measured-fields.ts';

export const massBalanceCalculation = defineCalculation({
  name: 'mass-balance',
  title: 'Mass balance of a lot',
  summary: 'How much of a lot is accounted for, in grams and percent of what was received.',
  equation:
    'accounted = sum of used + on hand + waste; unexplained = received - accounted; percent = 100 x accounted / received',
  validRange:
    'Within from 98 to 102 %, both included, judged as 98 x received <= 100 x accounted <= 102 x received. Below nothing unexplained: more was found than came in.',
  sources: [{ text: '98 to 102 % as a border: common practice, no source', confidence: 'derived' }],
  input: z.strictObject({
    receivedGrams: gramsAboveZero('Received or made, in grams'),
    usedGrams: z.array(gramsFromZero('One use, in grams')).max(100_000).describe('Each use, in grams'),
    onHandGrams: gramsFromZero('Still here, in grams'),
    wasteGrams: gramsFromZero('Thrown away or spilt, in grams'),
  }),
  output: z.strictObject({
    accountedGrams: z.number().describe('Accounted for, in grams'),
    unexplainedGrams: z.number().describe('Received less accounted for, in grams'),
    percent: z.number().describe('Accounted for, in percent of what was received'),
    verdict: z.enum(['within', 'look']).describe('Within 98 to 102 %, or to be looked at'),
  }),
  example: {
    input: { receivedGrams: 5000, usedGrams: [1240, 980, 1510], onHandGrams: 1190, wasteGrams: 35 },
    output: { accountedGrams: 4955, unexplainedGrams: 45, percent: 99.1, verdict: 'within' },
  },
  compute(account) {
    const balance = balanceMass(account);
    if (!balance.ok) return balance;
    const { accountedGrams, unexplainedGrams, percent, verdict } = balance.value;
    return done({
      accountedGrams: asNumber(accountedGrams),
      unexplainedGrams: asNumber(unexplainedGrams),
      percent: asNumber(percent),
      verdict,
    });
  },
});
