import { z } from 'zod';
import { ORIGIN_FLAGS } from '../core/safety/index.ts';
import * as f from './fields.ts';
import { route } from './route.ts';

export const originAnswer = z.object({
  flag: z.enum(ORIGIN_FLAGS),
  verdict: z.enum(['contains', 'free', 'unknown']),
  /** Those that come from it, or those of which nobody has said. */
  materials: z.array(z.string()),
  /** Those whose name tells of it although their entry does not: then it is not known. */
  byName: z.array(z.string()),
});

/** What people ask of a product, or of the tin in their hand. */
export const productAnswers = z.object({
  productId: f.id,
  productName: z.string(),
  /** On the tin; null where the product is asked for as it is made now. */
  batchNumber: z.string().nullable(),
  origins: z.array(originAnswer),
  /** The ingredient list of each market's label; `missing`: why it cannot be given out yet. */
  ingredients: z.array(
    z.object({
      market: f.market,
      /** Of a batch, what its label says as it was printed; of a product and before any print, what it would say now. */
      text: z.string(),
      missing: f.saying.nullable(),
      /** What was printed for this batch; null: nothing was, or a product is asked for. */
      printed: z
        .object({
          at: f.instant,
          /** `not-kept`: it says something else than now, and its words were not kept. */
          is: z.enum(['same', 'other', 'not-kept']),
          /** The list as it would be now. */
          now: z.string(),
          onlyOnLabel: z.array(z.string()),
          onlyNow: z.array(z.string()),
        })
        .nullable(),
    }),
  ),
});

export const answerRoutes = {
  getProductAnswers: route({
    method: 'GET',
    path: '/api/products/:id/answers',
    summary: 'Has it got nuts in? And the ingredient list, of the product as it is made now',
    output: productAnswers,
  }),
  getRunAnswers: route({
    method: 'GET',
    path: '/api/filling-runs/:id/answers',
    summary: 'The same by the batch number on a tin, from what went into it',
    output: productAnswers,
  }),
};
