import { describe, expect, it } from 'vitest';
import { codesOf } from '../../../test/workshop/codes-of.ts';
import { FIVE, openFillingBench } from '../../../test/workshop/filling-bench.ts';

const at = openFillingBench();
const { makeBowl, startRun, fillAll, closeRun } = at;

describe('the cost of a run', () => {
  it('is what its lots cost, with the share of the batch that the run took', async () => {
    const run = await startRun((await makeBowl()).id);
    await fillAll(run.id, ...FIVE);
    await closeRun(run.id, { spoiltLabels: 1 });
    const cost = await at.bench.get('getRunCost', { params: { id: run.id } });
    // The run emptied the bowl, so it bears all 190.8 g that went in. Base: 800 g in, 799 g out, 188.9 g of it used:
    // 188.9 x 520/799 of shea at 30/2000, 188.9 x 280/799 of oil at 8/1000, 1.9 g of scent at 10/50,
    // 5 tins at 16/40, 5 lids at 6/40, 6 labels at 6/60.
    const byHand =
      (188.9 * 520 * 30) / 799 / 2000 + (188.9 * 280 * 8) / 799 / 1000 + 1.9 * 0.2 + 2 + 0.75 + 0.6;
    expect(Number(cost.total)).toBeCloseTo(byHand, 4);
    expect(Number(cost.perTin)).toBeCloseTo(byHand / 5, 4);
    expect(cost).toMatchObject({ isComplete: true, currency: 'GBP' });
    const pennies = cost.rows.map((row) => Math.round(Number(row.shownCost) * 100));
    expect(pennies.reduce((sum, each) => sum + each, 0)).toBe(Math.round(Number(cost.shownTotal) * 100));
  });

  it('names the lot whose price nobody knows, and says that the sum is not all', async () => {
    const { id: unpriced } = await at.bench.get('countAtOpening', {
      body: {
        materialId: at.shop.materials.scent,
        supplierLot: null,
        bestBefore: '2026-12-31',
        grossGrams: '20',
        tareGrams: '10',
      },
    });
    const run = await startRun((await makeBowl()).id);
    await fillAll(run.id, ...FIVE);
    await closeRun(run.id);
    const cost = await at.bench.get('getRunCost', { params: { id: run.id } });
    expect(cost.isComplete).toBe(false);
    expect(cost.rows.filter((row) => row.cost === null).map((row) => row.lotId)).toEqual([unpriced]);
  });

  it('is told when the run is closed', async () => {
    const run = await startRun((await makeBowl()).id);
    expect(codesOf(await at.bench.ask('getRunCost', { params: { id: run.id } }))).toEqual([
      'run-still-filling',
    ]);
  });
});
