import { z } from 'zod';
import * as f from './fields.ts';
import { costView } from './filling.ts';
import { route } from './route.ts';
import { goodsOnTheirWay, lot } from './stock.ts';

export const massBalanceView = z.object({
  receivedGrams: z.string(),
  usedGrams: z.string(),
  onHandGrams: z.string(),
  wasteGrams: z.string(),
  accountedGrams: z.string(),
  unexplainedGrams: z.string(),
  percent: z.number().nullable(),
  verdict: z.enum(['within', 'look']),
});

/** What a trace says of a lot that it reached: there may be hundreds, and each has a page of its own. */
const reachedLot = lot.pick({
  id: true,
  number: true,
  itemKind: true,
  itemName: true,
  unit: true,
  onHand: true,
  status: true,
  cameIn: true,
});
export type ReachedLotView = z.output<typeof reachedLot>;

export const traceView = z.object({
  lot,
  sentence: f.saying,
  /** Every lot it was made of, nearest first, and how much of each is in it: null where nobody can know. */
  madeOf: z.array(z.object({ lot: reachedLot, depth: z.number(), amount: z.string().nullable() })),
  /** Every lot made from it, nearest first. */
  wentInto: z.array(z.object({ lot: reachedLot, depth: z.number() })),
  orders: z.array(
    z.object({
      orderId: f.id,
      number: z.number(),
      customerName: z.string(),
      units: z.number(),
      lotNumber: z.string(),
      sentOn: f.date,
    }),
  ),
  unitsSent: z.number(),
  unitsOnHand: z.number(),
  balance: massBalanceView.nullable(),
  cost: costView.nullable(),
});

const morningLine = z.object({
  key: z.string(),
  title: z.string(),
  state: z.enum(['ready', 'going', 'watch', 'stop']),
  stateWord: f.saying,
  detail: z.array(f.saying),
  /** Where one tap leads. */
  action: z.object({ words: f.saying, to: z.string() }).nullable(),
  level: z.object({ have: z.string(), full: z.string(), unit: f.unit }).nullable(),
});

/** What is to be bought, and what somebody ordered of it already. */
const purchaseLine = morningLine.extend({
  materialId: f.id,
  supplier: z.string(),
  onItsWay: goodsOnTheirWay.nullable(),
});

export const morning = z.object({
  today: f.date,
  now: f.instant,
  sentence: f.saying,
  sendToday: z.array(morningLine),
  makeNext: z.array(morningLine),
  buyThisWeek: z.array(purchaseLine),
  /** Papers that somebody has to see to: reports to be renewed, serious effects to be told. */
  papers: z.array(morningLine),
});
export type MorningLine = z.output<typeof morningLine>;
export type PurchaseLine = z.output<typeof purchaseLine>;

export const traceRoutes = {
  findLots: route({
    method: 'GET',
    path: '/api/lots',
    summary:
      "Lots whose number, supplier's number or name match, or that went out with the order of this number",
    query: z.object({ like: z.string().max(100).default('') }),
    output: z.array(lot),
  }),
  traceLot: route({
    method: 'GET',
    path: '/api/lots/:id/trace',
    summary: 'Forward to orders, back to every lot, with mass balance and cost',
    output: traceView,
  }),
  getMorning: route({
    method: 'GET',
    path: '/api/morning',
    summary: 'Send today, make next, buy this week',
    output: morning,
  }),
  listCalculations: route({
    method: 'GET',
    path: '/api/calc',
    summary: 'The calculation catalogue',
    output: z.array(
      z.object({
        name: z.string(),
        title: z.string(),
        summary: z.string(),
        equation: z.string(),
        validRange: z.string(),
        sources: z.array(z.object({ text: z.string(), confidence: z.string() })),
      }),
    ),
  }),
  calculate: route({
    method: 'POST',
    path: '/api/calc/:name',
    summary: 'Run one calculation of the catalogue',
    input: z.record(z.string(), z.unknown()),
    output: z.unknown(),
  }),
  getHealth: route({
    method: 'GET',
    path: '/api/health',
    summary: 'Is it up, which version',
    output: z.object({ version: z.string(), schema: z.number() }),
  }),
};
