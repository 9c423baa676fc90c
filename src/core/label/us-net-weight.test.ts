import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { exact, GRAMS_PER_OUNCE } from '../quantity/index.ts';
import { sayUsNetWeight } from './us-net-weight.ts';

const said = (grams: string): string => {
  const result = sayUsNetWeight(grams);
  return result.ok ? result.value : (result.problems[0]?.code ?? '');
};

describe('sayUsNetWeight', () => {
  // 21 CFR 701.13 in summaries: "Net Wt. 4 oz (113 g)" and "Net Wt. 20 oz (1 lb 4 oz) 567 g". Those give grams cut to whole
  // ones; 113 g itself is 3.98 oz and 567 g is 20.0003 oz, so that from grams the first must read 3.9.
  it('writes the published form', () => {
    expect(said('567')).toBe('Net Wt. 20 oz (1 lb 4 oz) 567 g');
    expect(said('113')).toBe('Net Wt. 3.9 oz (113 g)');
    expect(said('113.398092500')).toBe('Net Wt. 4 oz (113.3980925 g)');
  });

  it('writes common tins', () => {
    expect(said('35')).toBe('Net Wt. 1.2 oz (35 g)');
    expect(said('80')).toBe('Net Wt. 2.8 oz (80 g)');
    expect(said('8')).toBe('Net Wt. 0.28 oz (8 g)');
  });

  it('changes its form at one ounce, one pound and four pounds, on both sides', () => {
    expect(said('28.349523124')).toBe('Net Wt. 0.99 oz (28.349523124 g)');
    expect(said('28.349523125')).toBe('Net Wt. 1 oz (28.349523125 g)');
    expect(said('453.59236')).toBe('Net Wt. 15.9 oz (453.59236 g)');
    expect(said('453.59237')).toBe('Net Wt. 16 oz (1 lb) 453.59237 g');
    expect(said('1814.36947')).toBe('Net Wt. 63.9 oz (3 lb 15.9 oz) 1814.36947 g');
    expect(said('1814.36948')).toBe('Net Wt. 4 lb (1814.36948 g)');
  });

  it('never says more ounces than there are, nor a tenth less', () => {
    fc.assert(
      fc.property(fc.integer({ min: 300, max: 450_000 }), (milligramTens) => {
        const grams = exact(milligramTens).div(1000).times(1);
        const result = sayUsNetWeight(grams);
        if (!result.ok) return expect(grams.lt('0.2835')).toBe(true);
        const ounces = /^Net Wt\. ([\d.]+) oz/.exec(result.value)?.[1] ?? 'none';
        const claimed = GRAMS_PER_OUNCE.times(ounces);
        expect(claimed.lte(grams)).toBe(true);
        expect(claimed.plus(GRAMS_PER_OUNCE.times('0.1')).gt(grams)).toBe(true);
      }),
    );
  });

  it('refuses nothing, less than nothing, and what rounds down to nothing', () => {
    expect(said('0')).toBe('value-not-above');
    expect(said('-1')).toBe('value-not-above');
    expect(said('0.28')).toBe('net-weight-too-small');
    expect(said('0.29')).toBe('Net Wt. 0.01 oz (0.29 g)');
  });
});
