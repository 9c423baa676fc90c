import { describe, expect, it } from 'vitest';
import { costBatch, costOfRun } from '../../src/core/cost/index.ts';
import { must } from '../../src/core/problem.ts';
import { exact, GRAMS_PER_OUNCE } from '../../src/core/quantity/index.ts';

describe('OPS-16, normal and abnormal loss (ACCA F2 study text, chapter 9, examples 5.1 and 6.3; tolerance 0.005)', () => {
  // 1 000 kg put in for 20 700, normal loss a tenth of the input; here in grams, so a thousandth of the price.
  const batch = (totalCost: number, outputKilograms: number) =>
    must(
      costBatch({
        additions: [{ lot: 'input', grams: 1_000_000, pricePerGram: exact(totalCost).div(1_000_000) }],
        normalLossFraction: '0.1',
        lossBasis: 'input',
        goodGrams: outputKilograms * 1000,
      }),
    );

  it('divides by the expected output where all goes well: 23.00 a kilogram', () => {
    const { total, perGoodGram, abnormalLoss } = batch(20_700, 900);
    expect(total.toNumber()).toBe(20_700);
    expect(perGoodGram.times(1000).minus('23.00').abs().lte('0.005')).toBe(true);
    expect(abnormalLoss.toNumber()).toBe(0);
  });

  it('shows 100 kg lost by accident as 2 280, and 18 240 in the product', () => {
    // The study text takes the scrap value of the normal loss, 100 kg at 1.80, off the cost first.
    const { total, perGoodGram, abnormalLoss } = batch(20_700 - 180, 800);
    expect(perGoodGram.times(1000).minus('22.8').abs().lte('0.005')).toBe(true);
    expect(abnormalLoss.minus(2280).abs().lte('0.005')).toBe(true);
    expect(total.minus(abnormalLoss).minus(18_240).abs().lte('0.005')).toBe(true);
  });
});

describe('OPS-17, overhead per jar (makers’ forum; recomputed; tolerance 0.001)', () => {
  const perJar = (itemsPerMonth: number) => {
    const overhead = exact(715).times(15).div(itemsPerMonth);
    const { total } = must(
      costBatch({
        additions: [{ lot: 'raw materials', grams: 1, pricePerGram: 35 }],
        labour: exact('8.25').times(2),
        overhead,
        lossBasis: 'input',
      }),
    );
    return total.div(15);
  };

  it('lets each of the fifteen jars bear its own share of the month', () => {
    expect(perJar(50).minus('17.733').abs().lte('0.001')).toBe(true);
    // 35 / 15 + 16.50 / 15 + 715 / 500 = 4.8633
    expect(perJar(500).minus('4.863').abs().lte('0.001')).toBe(true);
  });
});

describe('OPS-18, landed cost an ounce (makers’ forum; recomputed; tolerance 0.0005)', () => {
  const ounce = (paid: string) =>
    must(
      costOfRun({
        bulk: {
          lot: 'shea',
          itemName: 'Shea butter',
          unit: 'g',
          quantity: GRAMS_PER_OUNCE,
          source: { kind: 'paid', paid, forQuantity: GRAMS_PER_OUNCE.times(160) },
        },
        packaging: [],
        units: 1,
      }),
    ).total;

  it('is 0.4093 without freight and 0.4792 with it', () => {
    expect(ounce('65.49').minus('0.4093').abs().lte('0.0005')).toBe(true);
    expect(ounce('76.67').minus('0.4792').abs().lte('0.0005')).toBe(true);
  });
});
