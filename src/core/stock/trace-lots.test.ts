import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { traceBack, traceLots } from './trace-lots.ts';

const graph = (made: Record<string, string[]>) => new Map(Object.entries(made));
const orders = (had: Record<string, Record<string, number>>) =>
  new Map(Object.entries(had).map(([order, lots]) => [order, new Map(Object.entries(lots))]));

describe('tracing lots', () => {
  const madeFrom = graph({
    'QB-1': ['SHEA-1', 'SUN-1'],
    'OC-1': ['QB-1', 'ORANGE-1'],
    'T-1': ['OC-1', 'TIN-1'],
    'T-2': ['OC-1', 'TIN-2'],
    'LC-1': ['QB-1', 'LAV-1'],
  });
  const question = {
    madeFrom,
    orders: orders({ first: { 'T-1': 3 }, second: { 'T-2': 2, 'T-1': 1 }, other: { 'LC-9': 4 } }),
    onHand: new Map([
      ['T-1', 2],
      ['T-2', 5],
      ['LC-9', 7],
    ]),
  };

  it('follows a lot forward to tins, orders and what is still here', () => {
    const trace = traceLots({ ...question, suspect: 'ORANGE-1' });
    expect(trace.affected).toEqual([
      { lot: 'OC-1', depth: 1 },
      { lot: 'T-1', depth: 2 },
      { lot: 'T-2', depth: 2 },
    ]);
    expect(trace).toMatchObject({ orders: ['first', 'second'], shippedUnits: 6, unitsToBlock: 7 });
  });

  it('counts the units of the suspect itself', () => {
    expect(traceLots({ ...question, suspect: 'T-1' })).toEqual({
      affected: [],
      orders: ['first', 'second'],
      shippedUnits: 4,
      unitsToBlock: 2,
    });
  });

  it('goes back to every lot, nearest first', () => {
    expect(traceBack(madeFrom, 'T-1')).toEqual([
      { lot: 'OC-1', depth: 1 },
      { lot: 'TIN-1', depth: 1 },
      { lot: 'QB-1', depth: 2 },
      { lot: 'ORANGE-1', depth: 2 },
      { lot: 'SHEA-1', depth: 3 },
      { lot: 'SUN-1', depth: 3 },
    ]);
  });

  it('ends where a tub was topped up from itself or from what was made of it', () => {
    const loop = graph({ a: ['b', 'a'], b: ['c'], c: ['a'] });
    expect(traceBack(loop, 'a').map(({ lot }) => lot)).toEqual(['b', 'c']);
    expect(traceLots({ ...question, madeFrom: loop, suspect: 'b' }).affected.map(({ lot }) => lot)).toEqual([
      'a',
      'c',
    ]);
  });

  it('finds nothing for a lot that was never used, and knows no order by an odd name', () => {
    expect(traceLots({ ...question, suspect: 'SHEA-9' })).toEqual({
      affected: [],
      orders: [],
      shippedUnits: 0,
      unitsToBlock: 0,
    });
    expect(traceBack(graph({ a: ['constructor'] }), 'constructor')).toEqual([]);
  });

  it('reads forward and back as one: a lot lies ahead of another as the other lies behind it', () => {
    const name = fc.integer({ min: 0, max: 15 }).map((each) => `L${each}`);
    const making = fc.dictionary(name, fc.array(name, { maxLength: 5 }), { maxKeys: 16 });
    fc.assert(
      fc.property(making, name, (made, start) => {
        const lots = graph(made);
        for (const { lot, depth } of traceLots({ ...question, madeFrom: lots, suspect: start }).affected) {
          expect(traceBack(lots, lot)).toContainEqual({ lot: start, depth });
        }
        for (const { lot, depth } of traceBack(lots, start)) {
          const ahead = traceLots({ ...question, madeFrom: lots, suspect: lot }).affected;
          expect(ahead).toContainEqual({ lot: start, depth });
        }
      }),
    );
  });
});
