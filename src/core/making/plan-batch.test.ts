import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type FormulaLine, percentFromGrams } from '../formula/index.ts';
import { must } from '../problem.ts';
import { exact, sumOf } from '../quantity/index.ts';
import type { LotToUse } from '../stock/index.ts';
import { planBatch } from './plan-batch.ts';

const line = (key: string, id: string, grams: string): FormulaLine => ({
  key,
  stage: 'melt',
  item: id === 'quiet' ? { kind: 'base', formulaId: id } : { kind: 'material', id },
  grams,
});
const lot = (name: string, quantity: string, bestBefore: string | null = '2027-01-31'): LotToUse => ({
  lot: name,
  quantity,
  bestBefore,
  received: '2026-01-01',
  status: 'released',
});
const plan = (lines: FormulaLine[], batchGrams: string, lots: Record<string, LotToUse[]>) =>
  planBatch({
    formula: must(percentFromGrams(lines)),
    batchGrams,
    lotsOf: new Map(Object.entries(lots)),
    useDate: '2026-11-26',
  });
const takes = (result: ReturnType<typeof plan>) =>
  must(result).lines.map((each) =>
    each.takes.map(({ lot: name, quantity }) => `${name} ${quantity.toFixed()}`),
  );

describe('planning a batch from its lots', () => {
  const lines = [line('1', 'quiet', '490'), line('2', 'orange', '10')];

  it('takes each line from its lots, the nearest date first', () => {
    const result = plan(lines, '1000', {
      'base:quiet': [lot('QB-2', '2000', '2027-03-31'), lot('QB-1', '300')],
      'material:orange': [lot('OR-1', '50')],
    });
    expect(takes(result)).toEqual([['QB-1 300', 'QB-2 680'], ['OR-1 20']]);
    expect(must(result).short).toEqual([]);
  });

  it('gives the same lot to two lines only once', () => {
    const twice = [line('1', 'shea', '50'), line('2', 'wax', '10'), line('3', 'shea', '40')];
    const result = plan(twice, '100', {
      'material:shea': [lot('S-1', '60'), lot('S-2', '100', '2027-06-30')],
      'material:wax': [lot('W-1', '10')],
    });
    expect(takes(result)).toEqual([['S-1 50'], ['W-1 10'], ['S-1 10', 'S-2 30']]);
  });

  it('says what an item lacks over all its lines', () => {
    const twice = [line('1', 'shea', '50'), line('2', 'shea', '50')];
    const [short] = must(plan(twice, '100', { 'material:shea': [lot('S-1', '60')] })).short;
    expect([short?.needGrams, short?.haveGrams, short?.shortGrams].map(Number)).toEqual([100, 60, 40]);
    expect(short?.item).toEqual({ kind: 'material', id: 'shea' });
  });

  it('is short of everything where there are no lots', () => {
    expect(must(plan(lines, '1000', {})).short.map(({ shortGrams }) => shortGrams.toFixed())).toEqual([
      '980',
      '20',
    ]);
  });

  it('takes and lacks the batch together, and no lot gives more than it has', () => {
    const grams = fc.integer({ min: 1, max: 900_000_000 }).map((each) => exact(each).div(1e6).toFixed());
    fc.assert(
      fc.property(
        fc.array(grams, { minLength: 1, maxLength: 8 }),
        grams,
        grams,
        grams,
        (typed, batch, one, two) => {
          const shea = typed.map((each, index) => line(String(index), 'shea', each));
          const stock = { 'material:shea': [lot('S-1', one), lot('S-2', two)] };
          const { lines: planned, short } = must(plan(shea, batch, stock));
          const issues = planned.flatMap((each) => each.takes);
          const taken = (name: string) =>
            sumOf(issues.filter((each) => each.lot === name).map((each) => each.quantity));
          expect(taken('S-1').lte(one) && taken('S-2').lte(two)).toBe(true);
          expect(
            taken('S-1')
              .plus(taken('S-2'))
              .plus(short[0]?.shortGrams ?? 0)
              .eq(batch),
          ).toBe(true);
        },
      ),
    );
  });

  it('passes on what is wrong with the batch or a lot', () => {
    expect(plan(lines, '0', {})).toMatchObject({ problems: [{ code: 'mass-zero' }] });
    const twice = { 'base:quiet': [lot('QB-1', '1'), lot('QB-1', '1')] };
    expect(plan(lines, '1', twice)).toMatchObject({ problems: [{ code: 'lot-listed-twice' }] });
  });
});
