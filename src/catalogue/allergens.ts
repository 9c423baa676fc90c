import { z } from 'zod';
import { done, problem, refused } from '../core/problem.ts';
import { nameAllergens } from '../core/safety/index.ts';
import { day, market, percentOfProduct, substanceFields, use } from './contribution-fields.ts';
import { defineCalculation } from './define-calculation.ts';
import { boundSafetyTables } from './safety-tables.ts';

const members = z.array(z.string()).describe('Names given that were counted');
const percent = z.number().describe('Percent by mass of the finished product, all members added');
const threshold = z.number().describe('Percent that must be exceeded');
const entry = z.int().describe('Entry number in Annex III of Regulation (EC) No 1223/2009');

export const allergens = defineCalculation({
  name: 'allergens',
  title: 'Fragrance allergens to be named on the label',
  summary:
    'Which fragrance allergens must be named beside Parfum, by market, use and the day of first supply, from contents in percent of the finished product.',
  equation:
    'named when the sum of all members of an entry > 0.001 % (leave-on) or > 0.01 % (rinse-off), and the entry is required: first unit placed on the market from its first date on, or a unit still made available from its second date on',
  validRange:
    'Contents from 0 to 100 %, as given: nothing is expanded into constituents. Exact at the threshold. Great Britain: the list of 24 with the older scope of CAS numbers. United States: nothing is named, since no federal list is in force; state laws are not covered.',
  sources: [
    {
      text: 'Annex III of Regulation (EC) No 1223/2009 after Regulation (EU) 2023/1545, Commission ingredient database, December 2025',
      confidence: 'read',
    },
    { text: 'Great Britain: list of 24 as kept; several CAS numbers', confidence: 'memory' },
    {
      text: 'United States: no federal list or duty in force; the rule proposed under MoCRA awaited (Unified Agenda, RIN 0910-AI90)',
      confidence: 'read',
    },
    { text: 'Adding of isomers that one entry lists: the usual reading', confidence: 'memory' },
  ],
  input: z.strictObject({
    market,
    firstSupplied: day('Day on which the first unit is placed on the market'),
    lastSupplied: day('Last day on which a unit is made available; default: the first').optional(),
    use,
    contributions: z
      .array(z.strictObject({ ...substanceFields, percent: percentOfProduct }))
      .describe('Substances and natural materials of the finished product'),
  }),
  output: z.strictObject({
    named: z
      .array(
        z.strictObject({
          labelName: z.string().describe('Name to print'),
          percent,
          thresholdPercent: threshold,
          entry,
          members,
          confidence: z.string().describe('How the duty is known: memory means check'),
        }),
      )
      .describe('Entries to be named on the label'),
    notNamed: z
      .array(
        z.strictObject({
          name: z.string().describe('Label name of the entry, or the name given'),
          percent,
          thresholdPercent: threshold.optional(),
          entry: entry.optional(),
          members,
          reason: z
            .enum([
              'not-over-threshold',
              'not-yet-required',
              'not-listed-in-market',
              'no-duty-in-market',
              'no-entry',
            ])
            .describe('Why it need not be named'),
          requiredForPlacingFrom: z.string().optional().describe('First day of the duty'),
        }),
      )
      .describe('Entries and substances that need not be named'),
    unknown: z
      .array(
        z.strictObject({
          name: z.string().describe('The name given'),
          percent,
          numbers: z.array(z.string()).describe('CAS numbers given'),
          reason: z.string().describe('Why it cannot be told: shared-cas, ambiguous-name ...'),
          mayBe: z.array(z.string()).describe('Label names that it may have to carry'),
          tellApartBy: z.array(z.string()).describe('What would settle it'),
        }),
      )
      .describe('Substances of which it cannot be told; never to be taken as free'),
  }),
  example: {
    input: {
      market: 'EU',
      firstSupplied: '2026-11-25',
      use: 'leave-on',
      contributions: [
        { name: 'Linalool', percent: 0.12 },
        { name: 'Geranial', cas: '141-27-5', percent: 0.0006 },
        { name: 'Neral', cas: '106-26-3', percent: 0.0005 },
        { name: 'Coumarin', percent: 0.001 },
      ],
    },
    output: {
      named: [
        {
          labelName: 'Linalool',
          percent: 0.12,
          thresholdPercent: 0.001,
          entry: 84,
          members: ['Linalool'],
          confidence: 'read',
        },
        {
          labelName: 'Citral',
          percent: 0.0011,
          thresholdPercent: 0.001,
          entry: 70,
          members: ['Geranial', 'Neral'],
          confidence: 'read',
        },
      ],
      notNamed: [
        {
          name: 'Coumarin',
          percent: 0.001,
          thresholdPercent: 0.001,
          entry: 77,
          members: ['Coumarin'],
          reason: 'not-over-threshold',
        },
      ],
      unknown: [],
    },
  },
  compute(input) {
    const { firstSupplied, lastSupplied } = input;
    if (lastSupplied !== undefined && lastSupplied < firstSupplied) {
      return refused(
        problem('last-supplied-before-first', 'lastSupplied', {
          found: lastSupplied,
          allowed: firstSupplied,
        }),
      );
    }
    const answer = nameAllergens(boundSafetyTables(), input);
    return done({
      named: answer.named.map(({ numbers: _numbers, ...row }) => ({ ...row, members: [...row.members] })),
      notNamed: answer.notNamed.map(({ numbers: _numbers, ...row }) => ({
        ...row,
        members: [...row.members],
      })),
      unknown: answer.unknown.map((row) => ({
        ...row,
        numbers: [...row.numbers],
        mayBe: [...row.mayBe],
        tellApartBy: [...row.tellApartBy],
      })),
    });
  },
});
