/**
 * Packs from a batch and batch for packs: an own case worked out by hand (no publication), tolerance 0.01 g.
 * 5000 g with 3 % lost fill 50 tins of 96.5 g and leave 25 g; 62 tins of 51.2 g with 4 % lost need 3306.67 g.
 */
import { expect, it } from 'vitest';
import { unitsFromBatchCalculation } from '../../src/catalogue/units-from-batch.ts';
import { must } from '../../src/core/problem.ts';

it('fills 50 tins from 5000 g, one of them kept back, and leaves 25 g', () => {
  const asked = { batchGrams: 5000, lossFraction: 0.03, targetFillGrams: 96.5, retained: 1 };
  expect(must(unitsFromBatchCalculation.run(asked))).toEqual({
    units: 49,
    filled: 50,
    leftoverGrams: 25,
    batchGrams: 5000,
  });
});

it('needs 3306.67 g for 60 tins and two kept back: divided by 1 - loss', () => {
  const asked = { units: 60, retained: 2, targetFillGrams: 51.2, lossFraction: 0.04 };
  const { batchGrams } = must(unitsFromBatchCalculation.run(asked));
  expect(Math.abs(batchGrams - 3306.67)).toBeLessThan(0.01);
});
