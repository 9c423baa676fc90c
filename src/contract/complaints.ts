import { z } from 'zod';
import { COMPLAINT_KINDS, EFFECTS, SERIOUS_MARKS } from '../core/product-file/index.ts';
import * as f from './fields.ts';
import { route } from './route.ts';

export const complaintKind = z.enum(COMPLAINT_KINDS);
export const effect = z.enum(EFFECTS);
export const seriousMark = z.enum(SERIOUS_MARKS);
export const complaintState = z.enum(['open', 'looked-into', 'closed']);
/** Where it happened: each has its own authority. */
export const happenedIn = z.enum(['GB', 'NI', 'EU', 'US', 'elsewhere']);

/** What was said, without anybody's name: it stays for ever. */
const saidText = z.string().trim().min(1).max(2000);

export const complaintDetails = z.strictObject({
  kind: complaintKind,
  said: saidText,
  effect,
  /** What makes it serious; empty where it is not. */
  marks: z.array(seriousMark).max(6).default([]),
  /** null: not known; then wherever the product is sold. */
  happenedIn: happenedIn.nullable().default(null),
});
export type ComplaintDetails = z.output<typeof complaintDetails>;

/** What it counts as from now on, once somebody has looked into it. */
export const judgedAnew = z.strictObject({ effect, marks: z.array(seriousMark).max(6).default([]) });

export const telling = z.object({
  market: z.enum(['GB', 'NI', 'EU', 'US']),
  says: f.saying,
  by: f.date.nullable(),
  isPast: z.boolean(),
  rule: z.string(),
  source: z.string(),
  confidence: z.string(),
});

export const complaintView = z.object({
  id: f.id,
  productId: f.id,
  productName: z.string(),
  runId: f.id.nullable(),
  /** null: nobody knows it. */
  batchNumber: z.string().nullable(),
  lotId: f.id.nullable(),
  receivedOn: f.date,
  details: complaintDetails,
  /** What it counts as by now. */
  effect,
  marks: z.array(seriousMark),
  state: complaintState,
  at: f.instant,
  by: z.string(),
  sentence: f.saying,
  tellings: z.array(telling),
  words: z.array(
    z.object({
      entryId: f.id,
      state: complaintState,
      said: z.string(),
      judged: judgedAnew.nullable(),
      at: f.instant,
      by: z.string(),
    }),
  ),
});

export const complaintRoutes = {
  listComplaints: route({
    method: 'GET',
    path: '/api/complaints',
    summary: "Customers' words on products, the newest first",
    query: z.object({ product: f.id.optional() }),
    output: z.array(complaintView),
  }),
  getComplaint: route({
    method: 'GET',
    path: '/api/complaints/:id',
    summary: "One customer's word on a product, who has to be told, and what was done since",
    output: complaintView,
  }),
  enterComplaint: route({
    method: 'POST',
    path: '/api/complaints',
    summary: "Enter a customer's word on a product",
    input: z.strictObject({
      stamp: f.stamp,
      productId: f.id,
      /** The filling run whose number stands on the tin; null where it is not known. */
      runId: f.id.nullable().default(null),
      receivedOn: f.date,
      details: complaintDetails,
    }),
    output: complaintView,
  }),
  followComplaint: route({
    method: 'POST',
    path: '/api/complaints/:id/words',
    summary: 'What was found or done about it, and how it stands',
    input: z.strictObject({
      stamp: f.stamp,
      state: complaintState,
      said: saidText,
      judged: judgedAnew.nullable().default(null),
    }),
    output: complaintView,
  }),
};
