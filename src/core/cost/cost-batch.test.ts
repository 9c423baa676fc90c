import { describe, expect, it } from 'vitest';
import { must } from '../problem.ts';
import { type BatchToCost, costBatch } from './cost-batch.ts';

const additions = [
  { lot: 'SH-1', grams: 900, pricePerGram: '0.0137' },
  { lot: 'OR-1', grams: 100, pricePerGram: '0.135' },
];
const cost = (rest: Partial<BatchToCost> = {}) => must(costBatch({ additions, lossBasis: 'input', ...rest }));

describe('the cost of a batch', () => {
  it('adds lots at their prices, labour, overhead and packaging', () => {
    expect(cost({ labour: 20, overhead: '4.5', packaging: '7.2' }).total.toFixed()).toBe('57.53');
  });

  it('spreads the total over the output that is to be expected', () => {
    expect(cost({ normalLossFraction: '0.2' }).perGoodGram.toFixed()).toBe('0.0322875');
  });

  it('tells a loss on the input from a loss on the output', () => {
    const even = [{ lot: 'A', grams: 1200, pricePerGram: 1 }];
    expect(cost({ additions: even, normalLossFraction: '0.2' }).perGoodGram.toFixed()).toBe('1.25');
    expect(
      cost({ additions: even, normalLossFraction: '0.2', lossBasis: 'output' }).perGoodGram.toFixed(),
    ).toBe('1.2');
  });

  it('shows the accident as money, and a gain as less than nothing', () => {
    const even = [{ lot: 'A', grams: 1000, pricePerGram: 2 }];
    const of = (goodGrams: number) =>
      cost({ additions: even, normalLossFraction: '0.1', goodGrams }).abnormalLoss.toFixed(3);
    expect(of(900)).toBe('0.000');
    expect(of(810)).toBe('200.000');
    expect(of(945)).toBe('-100.000');
  });

  it('keeps the price of a good gram whatever came out', () => {
    expect(cost({ goodGrams: 500 }).perGoodGram.toFixed()).toBe(cost().perGoodGram.toFixed());
    expect(cost().abnormalLoss.toFixed()).toBe('0');
  });

  it('does not change when an addition is split over two lots of one price', () => {
    const split = [
      { lot: 'SH-1', grams: '333.3', pricePerGram: '0.0137' },
      { lot: 'SH-2', grams: '566.7', pricePerGram: '0.0137' },
      { lot: 'OR-1', grams: 100, pricePerGram: '0.135' },
    ];
    expect(cost({ additions: split }).total.toFixed()).toBe(cost().total.toFixed());
  });

  it('refuses nothing put in, money below nought, a loss of everything and more out than in', () => {
    const codes = (rest: Partial<BatchToCost>) => {
      const result = costBatch({ additions, lossBasis: 'input', ...rest });
      return result.ok ? [] : result.problems.map(({ code, where }) => `${code} ${where}`);
    };
    expect(codes({ additions: [] })).toEqual(['mass-zero additions']);
    expect(codes({ labour: -1, packaging: '-0.01' })).toEqual([
      'money-negative labour',
      'money-negative packaging',
    ]);
    expect(codes({ normalLossFraction: 1 })).toEqual(['loss-out-of-range normalLossFraction']);
    expect(codes({ goodGrams: 1000 })).toEqual([]);
    expect(codes({ goodGrams: '1000.001' })).toEqual(['more-out-than-in goodGrams']);
  });
});
