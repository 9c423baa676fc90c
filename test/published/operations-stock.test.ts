import { describe, expect, it } from 'vitest';
import { must } from '../../src/core/problem.ts';
import { balanceMass, chooseFirstExpiry, traceBack, traceLots } from '../../src/core/stock/index.ts';

/** Cases of the project's reference tables, worked examples for operations; each computed by hand there. */

describe('OPS-10, first-expired-first-out issue (own case, by enumeration; tolerance 0)', () => {
  const lots = [
    { lot: 'L1', quantity: 400, bestBefore: '2026-09-30', received: '2025-10-01', status: 'released' },
    { lot: 'L2', quantity: 900, bestBefore: '2026-03-31', received: '2025-11-15', status: 'released' },
    { lot: 'L3', quantity: 500, bestBefore: '2025-12-31', received: '2025-06-01', status: 'released' },
    { lot: 'L4', quantity: 300, bestBefore: '2026-02-28', received: '2025-09-01', status: 'quarantine' },
  ] as const;

  it('passes over what expired and what is not released', () => {
    const { issue, short, passedOver } = must(chooseFirstExpiry(lots, 1100, '2026-01-10'));
    expect(issue.map(({ lot, quantity }) => [lot, quantity.toNumber()])).toEqual([
      ['L2', 900],
      ['L1', 200],
    ]);
    expect(short.toNumber()).toBe(0);
    expect(passedOver).toEqual([
      { lot: 'L3', why: 'expired' },
      { lot: 'L4', why: 'not-released' },
    ]);
  });
});

describe('OPS-31, mass balance of a material lot (own case; tolerance 0.01 absolute)', () => {
  it('accounts for 99.1 percent', () => {
    const balance = must(
      balanceMass({ receivedGrams: 5000, usedGrams: [1240, 980, 1510], onHandGrams: 1190, wasteGrams: 35 }),
    );
    expect(balance.accountedGrams.minus(4955).abs().lte(0.01)).toBe(true);
    expect(balance.percent.minus('99.1').abs().lte(0.01)).toBe(true);
    expect(balance.unexplainedGrams.minus(45).abs().lte(0.01)).toBe(true);
    expect(balance.verdict).toBe('within');
  });
});

describe('OPS-32, forward and backward trace (own case; tolerance 0)', () => {
  const madeFrom = new Map([
    ['B-01', ['SH1', 'MG1', 'LV1']],
    ['B-02', ['SH1', 'SH2', 'MG1', 'LV2']],
    ['P-01', ['B-01']],
    ['P-02', ['B-01', 'B-02']],
    ['P-03', ['B-02']],
  ]);
  // The case names packs without counts; one unit each.
  const orders = new Map(
    Object.entries({ O1: ['P-01'], O2: ['P-02'], O3: ['P-03'], O4: ['P-01', 'P-03'] }).map(
      ([order, packs]) => [order, new Map(packs.map((pack) => [pack, 1]))],
    ),
  );

  it('finds bulk, packs and orders of a suspect oil', () => {
    const trace = traceLots({ madeFrom, orders, onHand: new Map(), suspect: 'LV1' });
    expect(trace.affected).toEqual([
      { lot: 'B-01', depth: 1 },
      { lot: 'P-01', depth: 2 },
      { lot: 'P-02', depth: 2 },
    ]);
    expect(trace.orders).toEqual(['O1', 'O2', 'O4']);
    expect(trace.shippedUnits).toBe(3);
  });

  it('finds every material behind an order', () => {
    const behind = [...(orders.get('O3')?.keys() ?? [])].flatMap((pack) => traceBack(madeFrom, pack));
    const materials = behind.map(({ lot }) => lot).filter((lot) => !madeFrom.has(lot));
    expect([...new Set(materials)].sort()).toEqual(['LV2', 'MG1', 'SH1', 'SH2']);
  });
});
