import { z } from 'zod';
import { done } from '../core/problem.ts';
import { exact } from '../core/quantity/index.ts';
import { findLargestScent, OWN_MOST, type ScentAnswer } from '../core/safety/index.ts';
import { bodyParts, ifraCategories, productTypes } from '../reference/index.ts';
import { day, market, percentOfProduct, substanceFields, use } from './contribution-fields.ts';
import { defineCalculation } from './define-calculation.ts';
import { boundSafetyTables } from './safety-tables.ts';

const idsOf = <Id extends string>(rows: readonly { readonly id: Id }[]) => rows.map(({ id }) => id);
const fraction = z.number().min(0).max(1);

const oil = z.strictObject({
  ...substanceFields,
  share: z
    .union([z.number().min(0), z.tuple([fraction, fraction])])
    .describe('A part of the blend; or [least, most] of the blend as fractions of one'),
  constituents: z
    .record(z.string().trim().min(1), z.number().min(0).max(100))
    .default({})
    .describe('The most of each substance in it, in percent by mass of the oil; counted as natural content'),
});

const deciding = z.string().describe('The limit that the answer hangs on, its kind and where it stands');

export const largestScent = defineCalculation({
  name: 'largest-scent',
  title: 'How much scent a product may have',
  summary:
    'The largest percentage of a blend of oils that keeps every known limit of law and of the IFRA Standards, for given proportions or for proportions within a range each, and the limit that decides.',
  equation:
    'maximise T = sum x_i with, for each limit, sum w_i x_i <= (1 - marginFraction) limit (w_i: content of the substance in oil i, 1 for the oil itself, 1/limit in the phototoxic sum), and least_i T <= x_i <= most_i T',
  validRange:
    'Contents from 0 to 100 %. Exact: a linear program in fractions of whole numbers, rounded down at the twelfth place. Where no known limit binds and no mostPercent is given, there is no percentage: no limit found is not permission. What nobody knows stands in unknown and is never allowed by it.',
  sources: [
    {
      text: 'Limits as in the calculation limits: Regulation (EC) No 1223/2009, IFRA Standards, 49th Amendment',
      confidence: 'read-secondary',
    },
    { text: 'V. Chvatal, Linear Programming, 1983: the simplex method', confidence: 'memory' },
  ],
  input: z.strictObject({
    market,
    use,
    category: z
      .enum(idsOf(ifraCategories))
      .describe('IFRA category: 5A body butter, 5B face balm, 1 lip balm'),
    date: day('Day on which the product is placed on the market'),
    bodyPart: z.enum(idsOf(bodyParts)).optional().describe('Default: what the category implies'),
    productType: z.enum(idsOf(productTypes)).optional().describe('Default: what the category implies'),
    minAgeMonths: z.int().min(0).max(1200).optional().describe('Youngest intended user; default: adults'),
    blend: z.array(oil).min(1).max(40).describe('The oils of the blend'),
    mostPercent: percentOfProduct
      .optional()
      .describe("The assessor's or the workshop's own maximum of the whole blend"),
    marginFraction: z
      .number()
      .min(0)
      .lt(1)
      .default(0)
      .describe('By this fraction every limit is undercut, for what is weighed a little over'),
  }),
  output: z.strictObject({
    verdict: z
      .enum(['found', 'no-limit-found', 'prohibited', 'over-without'])
      .describe('no-limit-found: no known limit binds, which is not permission'),
    percent: z
      .number()
      .optional()
      .describe('Percent by mass of the finished product, of the blend as a whole'),
    shares: z.array(z.number()).describe('Fraction of the blend, in the order of the oils'),
    decidedBy: deciding.nullable().describe('The limit that the answer hangs on; null where none does'),
    relief: z
      .strictObject({
        percent: z.number().describe('Percent by mass of the finished product'),
        decidedBy: deciding,
      })
      .optional()
      .describe('Without that limit: the next percentage, and what decides then'),
    unknown: z
      .array(
        z.strictObject({
          name: z.string().describe('Substance or material'),
          reason: z.string().describe('Why it is not known'),
        }),
      )
      .describe('What no table tells, to be decided elsewhere'),
  }),
  example: {
    input: {
      market: 'EU',
      use: 'leave-on',
      category: '5A',
      date: '2026-11-25',
      blend: [{ name: 'Clove bud oil', share: 1, constituents: { eugenol: 88, 'methyl eugenol': 0.13 } }],
    },
    output: {
      verdict: 'found',
      percent: 0.153846153846,
      shares: [1],
      decidedBy: 'methyl eugenol (law): Methyl Eugenol: Regulation (EC) No 1223/2009, Annex III, entry 102',
      relief: {
        percent: 0.727272727272,
        decidedBy: 'eugenol (ifra): Eugenol: IFRA Standards, 49th Amendment',
      },
      unknown: [],
    },
  },
  compute({ blend, ...input }) {
    const answer = findLargestScent(boundSafetyTables(), {
      ...input,
      blend: blend.map(({ constituents, ...rest }) => ({
        ...rest,
        constituents: Object.entries(constituents).map(([name, percent]) => ({ name, percent })),
      })),
    });
    return answer.ok ? done(told(answer.value)) : answer;
  },
});

function told({ verdict, percent, shares, decidedBy, relief, unknown }: ScentAnswer) {
  return {
    verdict,
    ...(percent !== undefined && { percent: exact(percent).toNumber() }),
    shares: [...shares],
    decidedBy: decidedBy ? tellBound(decidedBy) : null,
    ...(relief && { relief: { percent: relief.percent.toNumber(), decidedBy: tellBound(relief.decidedBy) } }),
    unknown: unknown.map(({ name, reason = '' }) => ({ name, reason })),
  };
}

/** As the calculation limits tells what decided. */
const tellBound = ({ name, told: rule }: NonNullable<ScentAnswer['decidedBy']>): string =>
  name === OWN_MOST ? OWN_MOST : `${name} (${rule.kind}): ${rule.source}`;
