import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { must } from '../problem.ts';
import { roundToStep } from '../quantity/index.ts';
import { findBatchForUnits, findUnitsFromBatch } from './units-from-batch.ts';

describe('packs from a batch', () => {
  it('fills a pack that the batch just fills: ten of 0.1 g from 1 g', () => {
    const plan = { lossFraction: 0, targetFillGrams: 0.1, retained: 0 };
    expect(must(findUnitsFromBatch(1, plan))).toMatchObject({ units: 10 });
    expect(must(findUnitsFromBatch('0.999999', plan))).toMatchObject({ units: 9 });
  });

  it('refuses to keep back more than is filled, and keeps back all of it', () => {
    const plan = { lossFraction: 0, targetFillGrams: 30 };
    expect(must(findUnitsFromBatch(60, { ...plan, retained: 2 })).units).toBe(0);
    expect(findUnitsFromBatch(60, { ...plan, retained: 3 })).toMatchObject({
      problems: [{ code: 'retained-above-filled', found: 3, allowed: 2 }],
    });
  });

  it('gets back the packs that a batch was sized for, once it is rounded up', () => {
    const cases = fc.tuple(
      fc.integer({ min: 1, max: 500 }),
      fc.integer({ min: 0, max: 20 }).map((percent) => percent / 100),
      fc.integer({ min: 50, max: 5000 }).map((tenths) => tenths / 10),
      fc.integer({ min: 0, max: 3 }),
    );
    fc.assert(
      fc.property(cases, ([units, lossFraction, targetFillGrams, retained]) => {
        const plan = { lossFraction, targetFillGrams, retained };
        const { batchGrams } = findBatchForUnits(units, plan);
        const back = must(findUnitsFromBatch(roundToStep(batchGrams, '0.000001', 'up'), plan));
        expect(back.units).toBe(units);
        expect(back.leftoverGrams.lt('0.00001')).toBe(true);
      }),
    );
  });
});
