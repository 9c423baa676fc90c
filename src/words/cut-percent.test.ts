import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { exact } from '../core/quantity/index.ts';
import { cutPercent } from './cut-percent.ts';

describe('a percentage for reading', () => {
  it.each([
    ['43.604', '43.604'],
    ['4.4595', '4.46'],
    ['0.00036', '0.00036'],
    ['0.0135421', '0.0135'],
    ['33.333333333333', '33.333'],
    ['99.9999', '100'],
    ['0', '0'],
    ['1', '1'],
  ])('of %s is cut to the digits that matter: %s', (percent, shown) => {
    expect(cutPercent(percent)).toBe(shown);
  });

  it('keeps as many digits as it takes to stay over, under or on the bound beside it', () => {
    expect(cutPercent('0.150001', ['0.15'])).toBe('0.150001');
    expect(cutPercent('0.1499999', ['0.15'])).toBe('0.1499999');
    expect(cutPercent('0.15', ['0.15'])).toBe('0.15');
    expect(cutPercent('0.15123456', ['0.15'])).toBe('0.151');
    expect(cutPercent('99.9999', ['100'])).toBe('99.9999');
    expect(cutPercent('49.9996', ['38', '50'])).toBe('49.9996');
    expect(cutPercent('20.0004', [null, '20'])).toBe('20.0004');
  });

  it('never stands on another side of its bound than the amount', () => {
    const percents = fc
      .integer({ min: 0, max: 100_000_000 })
      .map((millionths) => exact(millionths).div(1e6).toString());
    fc.assert(
      fc.property(percents, percents, (percent, bound) => {
        const shown = exact(cutPercent(percent, [bound]));
        return shown.cmp(bound) === exact(percent).cmp(bound);
      }),
    );
  });
});
