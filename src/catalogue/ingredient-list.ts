import { z } from 'zod';
import { orderIngredients } from '../core/label/index.ts';
import { done } from '../core/problem.ts';
import { defineCalculation } from './define-calculation.ts';
import { type IngredientMarket, ingredientOrder } from './label-tables.ts';

const ingredientName = z.string().trim().min(1).max(300);

export const ingredientListCalculation = defineCalculation({
  name: 'ingredient-list',
  title: 'Order of the list of ingredients',
  summary:
    'The names given, in an order that the market’s law allows, and the index from which the order is free.',
  equation:
    'Descending by percent by mass; below 1 % (EU, NI, GB), at or below 1 % (US) in any order; named allergens; colourants last in any order',
  validRange:
    'Percent by mass at the time of addition. Names are listed as given; one that stands on several lines is added up and listed once.',
  sources: [
    { text: 'Regulation (EC) No 1223/2009, Article 19(1)(g), EU, NI and GB', confidence: 'read' },
    { text: '21 CFR 701.3(f), US; that exactly 1 % is free', confidence: 'memory' },
  ],
  input: z.strictObject({
    market: z.enum(['EU', 'NI', 'GB', 'US'] satisfies IngredientMarket[]).describe('Market it is sold in'),
    lines: z
      .array(
        z.strictObject({
          name: ingredientName.describe('Name as it is to stand on the label'),
          percent: z.number().gt(0).max(100).describe('Percent by mass'),
          role: z
            .enum(['colourant', 'fragrance'])
            .optional()
            .describe('Colourants are listed last; a fragrance is placed by its percent'),
        }),
      )
      .min(1)
      .max(500)
      .describe('Ingredients with their percentages'),
    named: z.array(ingredientName).max(300).optional().describe('Allergens that are to be named besides'),
  }),
  output: z.strictObject({
    list: z.array(z.string()).describe('Names in a legal order'),
    anyOrderFrom: z
      .number()
      .describe('Index from which the order is free, counted from 0; colourants stay last'),
  }),
  example: {
    input: {
      market: 'EU',
      lines: [
        { name: 'Parfum', percent: 0.6, role: 'fragrance' },
        { name: 'Helianthus Annuus Seed Oil', percent: 28.4 },
        { name: 'CI 77491', percent: 1, role: 'colourant' },
        { name: 'Butyrospermum Parkii Butter', percent: 70 },
      ],
      named: ['Limonene'],
    },
    output: {
      list: ['Butyrospermum Parkii Butter', 'Helianthus Annuus Seed Oil', 'Parfum', 'Limonene', 'CI 77491'],
      anyOrderFrom: 2,
    },
  },
  compute({ market, lines, named = [] }) {
    const ordered = orderIngredients(lines, named, ingredientOrder(market));
    if (!ordered.ok) return ordered;
    return done({ list: [...ordered.value.list], anyOrderFrom: ordered.value.anyOrderFrom });
  },
});
