import { z } from 'zod';
import { done } from '../core/problem.ts';
import { judgeLimits } from '../core/safety/index.ts';
import { bodyParts, ifraCategories, productTypes } from '../reference/index.ts';
import { day, market, percentOfProduct, substanceFields, use } from './contribution-fields.ts';
import { defineCalculation } from './define-calculation.ts';
import { boundSafetyTables } from './safety-tables.ts';

const idsOf = <Id extends string>(rows: readonly { readonly id: Id }[]) => rows.map(({ id }) => id);

const verdict = z.strictObject({
  name: z.string().describe('The name given; the rule’s where several members are added'),
  percent: z
    .number()
    .describe('Percent by mass of the finished product; for the phototoxic sum percent of the limit'),
  limitPercent: z.number().optional().describe('The limit; allowed itself unless isStrict'),
  limitValue: z.number().optional().describe('A limit that is no share of the product, in limitUnit'),
  limitUnit: z.string().optional().describe('Unit of limitValue'),
  kind: z.enum(['law', 'ifra', 'supplier', 'assessor']).optional().describe('What sort of rule it is'),
  entry: z.string().optional().describe('Entry in the annex, or the Standard'),
  edition: z.string().optional().describe('Amendment of the IFRA Standards'),
  source: z.string().optional().describe('The rule’s own name and where it stands'),
  citation: z.string().optional().describe('Where it stands, without its name'),
  confidence: z.string().optional().describe('How the rule is known: memory means check'),
  ruleId: z.string().optional().describe('The rule’s row in the tables'),
  verdict: z
    .enum(['within', 'over', 'prohibited', 'unknown', 'no-rule'])
    .describe('unknown is never allowed; no-rule: no rule in the tables'),
  reason: z.string().optional().describe('Why it is unknown'),
  isStrict: z.boolean().optional().describe('true: the content must lie below the limit, not at it'),
  force: z.literal('opinion').optional().describe('A scientific opinion, not law'),
  asWhat: z.string().optional().describe('What the figure counts, where it is not the substance itself'),
  warning: z.string().optional().describe('Exact label text that the rule asks for'),
  members: z.array(z.string()).describe('Names given that were counted'),
  numbers: z.array(z.string()).optional().describe('CAS numbers given, where one member was counted'),
  mayBe: z.array(z.string()).optional().describe('Rules that an unknown may fall under'),
  tellApartBy: z.array(z.string()).optional().describe('What would settle it'),
});

export const limits = defineCalculation({
  name: 'limits',
  title: 'Contents against law and IFRA Standards',
  summary:
    'The verdict of law and of the IFRA Standards on each substance of a finished product, in percent by mass, and the sum of shares of phototoxic oils.',
  equation:
    'within when the sum of all members <= limit (< limit where strict); phototoxic oils: sum of content / limit <= 1; the tightest rule decides',
  validRange:
    'Contents from 0 to 100 %, as given: nothing is expanded into constituents. Exact at the limit. A condition that is not told (body part, product type, origin) is taken as the tightest that the category leaves open. A selection of the annexes and of the 49th Amendment: no rule does not mean free. United States: no rule of law is in the tables, which one verdict, unknown, says for all substances; IFRA Standards are judged as everywhere.',
  sources: [
    {
      text: 'Annexes II, III and V of Regulation (EC) No 1223/2009, Commission ingredient database, December 2025',
      confidence: 'read',
    },
    { text: 'Rules of Great Britain taken over from retained law', confidence: 'memory' },
    { text: 'IFRA Standards, 49th Amendment (January 2020)', confidence: 'read-secondary' },
  ],
  input: z.strictObject({
    market,
    use,
    category: z
      .enum(idsOf(ifraCategories))
      .describe('IFRA category: 5A body butter, 5B face balm, 1 lip balm, 9 soap'),
    date: day('Day on which the product is placed on the market'),
    bodyPart: z.enum(idsOf(bodyParts)).optional().describe('Default: what the category implies'),
    productType: z.enum(idsOf(productTypes)).optional().describe('Default: what the category implies'),
    minAgeMonths: z
      .int()
      .min(0)
      .max(1200)
      .optional()
      .describe('Youngest intended user; default: adults, babies in category 5D'),
    contributions: z
      .array(
        z.strictObject({
          ...substanceFields,
          percent: percentOfProduct,
          origin: z
            .enum(['natural', 'added'])
            .optional()
            .describe('natural: brought in by a natural material; not told: the rules for both are taken'),
        }),
      )
      .describe('Substances and natural materials of the finished product'),
  }),
  output: z.strictObject({
    verdicts: z.array(verdict).describe('One row for each substance, or for several that one rule adds'),
    decidedBy: z.string().nullable().describe('The tightest rule that was compared, or null'),
    sumOfShares: z.number().optional().describe('Phototoxic oils, as a fraction of the limit'),
  }),
  example: {
    input: {
      market: 'EU',
      use: 'leave-on',
      category: '5A',
      date: '2026-11-25',
      contributions: [{ name: 'Eugenol', cas: '97-53-0', percent: 0.4, origin: 'natural' }],
    },
    output: {
      verdicts: [
        {
          name: 'Eugenol',
          percent: 0.4,
          limitPercent: 0.64,
          kind: 'ifra',
          entry: 'Eugenol',
          edition: '49',
          source: 'Eugenol: IFRA Standards, 49th Amendment',
          citation: 'IFRA Standards, 49th Amendment',
          confidence: 'read-secondary',
          ruleId: 'eugenol',
          verdict: 'within',
          members: ['Eugenol'],
          numbers: ['97-53-0'],
        },
      ],
      decidedBy: 'Eugenol (ifra): Eugenol: IFRA Standards, 49th Amendment',
    },
  },
  compute(input) {
    const { verdicts, ...answer } = judgeLimits(boundSafetyTables(), input);
    return done({
      ...answer,
      verdicts: verdicts.map(({ members, numbers, mayBe, tellApartBy, ...rest }) => ({
        ...rest,
        members: [...members],
        ...(numbers !== undefined && { numbers: [...numbers] }),
        ...(mayBe !== undefined && { mayBe: [...mayBe] }),
        ...(tellApartBy !== undefined && { tellApartBy: [...tellApartBy] }),
      })),
    });
  },
});
