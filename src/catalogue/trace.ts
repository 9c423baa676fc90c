import { z } from 'zod';
import { done } from '../core/problem.ts';
import { traceLots } from '../core/stock/index.ts';
import { defineCalculation } from './define-calculation.ts';

const name = z.string().min(1).max(200);
const units = z.number().min(0);

export const traceCalculation = defineCalculation({
  name: 'trace',
  title: 'Trace of a suspect lot',
  summary:
    'Which lots and orders a suspect lot went into, over any number of steps, and how many units went out or are here.',
  equation:
    'affected = every lot made, directly or by way of others, from the suspect; units = those of the suspect and of the affected lots',
  validRange:
    'Any graph; loops end, since each lot is visited once. The work grows with the number of makings.',
  sources: [
    { text: 'Reachability in a directed graph, breadth first; own computation', confidence: 'computed' },
  ],
  input: z.strictObject({
    madeFrom: z.record(name, z.array(name)).describe('Each lot made, with the lots that went into it'),
    orders: z
      .record(name, z.record(name, units))
      .describe('Each order, with the units of each lot that it had'),
    onHand: z.record(name, units).describe('Units of each lot that are here'),
    suspect: name.describe('The lot in question'),
  }),
  output: z.strictObject({
    affected: z.array(z.string()).describe('Lots made from it, nearest first; itself left out'),
    orders: z.array(z.string()).describe('Orders that had units of it or of an affected lot'),
    shippedUnits: z.number().describe('Units of them that went out'),
    unitsToBlock: z.number().describe('Units of it and of affected lots that are here'),
  }),
  example: {
    input: {
      madeFrom: { 'B-01': ['SH1', 'LV1'], 'P-01': ['B-01'], 'P-02': ['B-01'], 'P-03': ['B-02'] },
      orders: { O1: { 'P-01': 3 }, O2: { 'P-03': 2 } },
      onHand: { 'P-02': 6, 'P-03': 4 },
      suspect: 'LV1',
    },
    output: { affected: ['B-01', 'P-01', 'P-02'], orders: ['O1'], shippedUnits: 3, unitsToBlock: 6 },
  },
  compute({ madeFrom, orders, onHand, suspect }) {
    const trace = traceLots({
      madeFrom: new Map(Object.entries(madeFrom)),
      orders: new Map(Object.entries(orders).map(([order, lots]) => [order, new Map(Object.entries(lots))])),
      onHand: new Map(Object.entries(onHand)),
      suspect,
    });
    return done({
      affected: trace.affected.map(({ lot }) => lot),
      orders: [...trace.orders],
      shippedUnits: trace.shippedUnits,
      unitsToBlock: trace.unitsToBlock,
    });
  },
});
