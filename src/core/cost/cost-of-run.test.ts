import { describe, expect, it } from 'vitest';
import { must } from '../problem.ts';
import { type CostedLot, costOfRun } from './cost-of-run.ts';

const paid = (lot: string, quantity: string, money: string, forQuantity: string): CostedLot => ({
  lot,
  itemName: lot,
  unit: lot.startsWith('TN') ? 'pieces' : 'g',
  quantity,
  source: { kind: 'paid', paid: money, forQuantity },
});
const made = (lot: string, quantity: string, yieldGrams: string, ...from: CostedLot[]): CostedLot => ({
  lot,
  itemName: lot,
  unit: 'g',
  quantity,
  source: { kind: 'made', from, yieldGrams },
});
const unknown = (lot: string, quantity: string): CostedLot => ({
  lot,
  itemName: lot,
  unit: 'g',
  quantity,
  source: { kind: 'unknown' },
});
const shown = (result: ReturnType<typeof costOfRun>) =>
  must(result).rows.map(
    ({ lot, quantity, cost }) => `${lot} ${quantity.toFixed()} ${cost?.toFixed(2) ?? 'unknown'}`,
  );

describe('what the tins of a run cost', () => {
  // 600 g of base from 600 g of fats, 590 g came out; 490 g of it and 10 g of oil made 480 g, of which 240 g were filled.
  const base = made(
    'QB-1',
    '490',
    '590',
    paid('SH-1', '450', '27.40', '2000'),
    paid('SU-1', '150', '6.20', '1000'),
  );
  const bulk = made('OC-1', '240', '480', base, paid('OR-1', '10', '6.75', '50'));
  const tins = paid('TN-1', '6', '38', '100');

  it('goes back to every bought lot, by the share that was used', () => {
    const run = costOfRun({ bulk, packaging: [tins], units: 6 });
    expect(shown(run)).toEqual([
      // 450 x 490/590 x 240/480 g at 27.40 for 2000 g.
      expect.stringMatching(/^SH-1 186\.86\d* 2\.56$/),
      expect.stringMatching(/^SU-1 62\.28\d* 0\.39$/),
      'OR-1 5 0.68',
      'TN-1 6 2.28',
    ]);
    const { total, perTin, isComplete } = must(run);
    expect(total.toFixed(4)).toBe('5.9012');
    expect(perTin?.toFixed(4)).toBe('0.9835');
    expect(isComplete).toBe(true);
  });

  it('costs a batch that is filled in two runs as one', () => {
    const part = (grams: string) =>
      must(costOfRun({ bulk: made('OC-1', grams, '480', base), packaging: [], units: 1 })).total;
    const whole = part('480');
    expect(part('180').plus(part('300')).minus(whole).abs().lte('1e-40')).toBe(true);
  });

  it('names a lot without a price, and says at least', () => {
    const run = must(
      costOfRun({
        bulk: made('OC-1', '100', '100', unknown('FOUND', '60'), paid('OR-1', '40', '1', '10')),
        packaging: [tins],
        units: 0,
      }),
    );
    expect(run).toMatchObject({ isComplete: false, unknownLots: ['FOUND'], perTin: null });
    expect(run.total.toFixed()).toBe('6.28');
  });

  it('puts one lot on one row, and keeps it unknown once it is', () => {
    const twice = made(
      'OC-1',
      '100',
      '100',
      paid('SH-1', '40', '10', '100'),
      paid('SH-1', '60', '10', '100'),
    );
    expect(shown(costOfRun({ bulk: twice, packaging: [], units: 1 }))).toEqual(['SH-1 100 10.00']);
    const mixed = made('OC-1', '100', '100', unknown('SH-1', '40'), paid('SH-1', '60', '10', '100'));
    expect(shown(costOfRun({ bulk: mixed, packaging: [], units: 1 }))).toEqual(['SH-1 100 unknown']);
  });

  it('refuses a yield of nought and a price for nothing', () => {
    const bad = made('OC-1', '1', '0', tins);
    const free = paid('TN-2', '1', '5', '0');
    expect(costOfRun({ bulk: bad, packaging: [free], units: 1 })).toMatchObject({
      problems: [
        { code: 'value-not-above', where: 'OC-1' },
        { code: 'value-not-above', where: 'TN-2' },
      ],
    });
  });
});
