import { describe, expect, it } from 'vitest';
import { batchCostCalculation } from './batch-cost.ts';
import { bestBeforeCalculation } from './best-before.ts';
import { costCalculations } from './cost-calculations.ts';
import type { Calculation } from './define-calculation.ts';
import { firstExpiryCalculation } from './first-expiry.ts';
import { ingredientListCalculation } from './ingredient-list.ts';
import { labelCalculations } from './label-calculations.ts';
import { massBalanceCalculation } from './mass-balance.ts';
import { stockCalculations } from './stock-calculations.ts';
import { traceCalculation } from './trace.ts';

const listed: readonly Calculation[] = [...stockCalculations, ...costCalculations, ...labelCalculations];

function codesOf(calculation: Calculation, input: unknown): string[] {
  const result = calculation.run(input);
  return result.ok ? [] : result.problems.map(({ code, where }) => `${code} at ${where}`);
}
const changed = (calculation: Calculation, changes: object): string[] =>
  codesOf(calculation, { ...(calculation.example.input as object), ...changes });

describe('the calculations of stock, cost and label', () => {
  it('carry the names that other programs call', () => {
    expect(listed.map(({ name }) => name)).toEqual([
      'first-expiry',
      'mass-balance',
      'trace',
      'batch-cost',
      'ingredient-list',
      'best-before',
    ]);
  });

  it.each(listed)('$name answers its example, in its own schema', (calculation) => {
    const result = calculation.run(calculation.example.input);
    expect(result).toEqual({ ok: true, value: calculation.example.output });
    expect(calculation.output.safeParse(calculation.example.output).success).toBe(true);
  });

  it.each(listed)('$name refuses a field that it does not know, and an empty input', (calculation) => {
    expect(changed(calculation, { colour: 'green' })).toEqual(['field-unknown at colour']);
    expect(codesOf(calculation, {})).not.toEqual([]);
    expect(codesOf(calculation, null)).not.toEqual([]);
  });
});

describe('what each refuses', () => {
  it('first-expiry: less than nothing, a day that is none, a status of its own, a lot listed twice', () => {
    const lot = { lot: 'A', quantity: 1, bestBefore: null, received: null, status: 'released' };
    const refused = (changes: object) => changed(firstExpiryCalculation, changes);
    expect(refused({ need: -1 })).toEqual(['value-too-small at need']);
    expect(refused({ useDate: '2026-02-30' })).toEqual(['format-date at useDate']);
    expect(refused({ lots: [{ ...lot, status: 'new' }] })).toEqual(['value-not-one-of at lots[0].status']);
    expect(refused({ lots: [lot, lot] })).toEqual(['lot-listed-twice at lots[1].lot']);
    expect(refused({ lots: [] })).toEqual([]);
  });

  it('mass-balance: nothing received, a use below nothing', () => {
    expect(changed(massBalanceCalculation, { receivedGrams: 0 })).toEqual([
      'value-too-small at receivedGrams',
    ]);
    expect(changed(massBalanceCalculation, { usedGrams: [1, -1] })).toEqual([
      'value-too-small at usedGrams[1]',
    ]);
  });

  it('trace: units below nothing, parts that are no list', () => {
    expect(changed(traceCalculation, { onHand: { 'P-01': -1 } })).toEqual(['value-too-small at onHand.P-01']);
    expect(changed(traceCalculation, { madeFrom: { A: 'B' } })).toEqual(['field-wrong-type at madeFrom.A']);
  });

  it('batch-cost: no additions, a loss of everything, a basis of its own, more out than in', () => {
    const refused = (changes: object) => changed(batchCostCalculation, changes);
    expect(refused({ additions: [] })).toEqual(['value-too-small at additions']);
    expect(refused({ normalLossFraction: 1 })).toEqual(['value-not-below at normalLossFraction']);
    expect(refused({ lossBasis: 'sales' })).toEqual(['value-not-one-of at lossBasis']);
    expect(refused({ goodGrams: 1000.5 })).toEqual(['more-out-than-in at goodGrams']);
    expect(refused({ labour: -1 })).toEqual(['value-too-small at labour']);
  });

  it('ingredient-list: another market, no percentage, a blank name', () => {
    const refused = (changes: object) => changed(ingredientListCalculation, changes);
    expect(refused({ market: 'JP' })).toEqual(['value-not-one-of at market']);
    expect(refused({ lines: [{ name: 'A', percent: 0 }] })).toEqual(['value-not-above at lines[0].percent']);
    expect(refused({ lines: [{ name: 'A', percent: 100.1 }] })).toEqual([
      'value-too-large at lines[0].percent',
    ]);
    expect(refused({ lines: [{ name: ' ', percent: 1 }] })).toEqual(['value-too-small at lines[0].name']);
  });

  it('best-before: months that are not whole, a lot that ended before the making', () => {
    expect(changed(bestBeforeCalculation, { months: 1.5 })).toEqual(['field-wrong-type at months']);
    expect(changed(bestBeforeCalculation, { months: 0 })).toEqual(['value-too-small at months']);
    expect(changed(bestBeforeCalculation, { lots: ['2026-08-30'] })).toEqual([
      'lot-past-when-made at lots[0]',
    ]);
  });
});

describe('where a boundary lies', () => {
  const value = (calculation: Calculation, changes: object) => {
    const result = calculation.run({ ...(calculation.example.input as object), ...changes });
    return result.ok ? result.value : result.problems;
  };

  it('the list of ingredients takes exactly one percent as ordered, and in the US as free', () => {
    const lines = [
      { name: 'B', percent: 1 },
      { name: 'A', percent: 99 },
    ];
    for (const [market, anyOrderFrom] of [
      ['EU', 2],
      ['NI', 2],
      ['GB', 2],
      ['US', 1],
    ] as const) {
      expect(value(ingredientListCalculation, { market, lines, named: [] })).toEqual({
        list: ['A', 'B'],
        anyOrderFrom,
      });
    }
  });

  it('the mark is a date up to and with thirty months', () => {
    const mark = (months: number) => value(bestBeforeCalculation, { made: '2026-11-30', months, lots: [] });
    expect(mark(30)).toEqual({ date: '2029-05-30', decidedBy: 'months', mark: 'date' });
    expect(mark(31)).toMatchObject({ mark: 'period-after-opening' });
  });

  it('the mass balance is within at 98 percent of a mass that a double cannot hold', () => {
    const account = { receivedGrams: 0.3, onHandGrams: 0, wasteGrams: 0 };
    expect(value(massBalanceCalculation, { ...account, usedGrams: [0.294] })).toMatchObject({
      verdict: 'within',
    });
    expect(value(massBalanceCalculation, { ...account, usedGrams: [0.1, 0.2, 0.006] })).toMatchObject({
      verdict: 'within',
      percent: 102,
    });
    expect(value(massBalanceCalculation, { ...account, usedGrams: [0.293999] })).toMatchObject({
      verdict: 'look',
    });
  });

  it('the trace of two thousand batches visits each once, loops and all', () => {
    const madeFrom = Object.fromEntries(
      Array.from({ length: 2000 }, (_, index) => [`B${index}`, [`B${(index + 1) % 2000}`, `M${index % 50}`]]),
    );
    const onHand = Object.fromEntries(Object.keys(madeFrom).map((lot) => [lot, 1]));
    const trace = value(traceCalculation, { madeFrom, onHand, orders: {}, suspect: 'M7' });
    expect(trace).toMatchObject({ orders: [], unitsToBlock: 2000 });
  });
});
