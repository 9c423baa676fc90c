import { describe, expect, it } from 'vitest';
import { showAmount } from './show-amount.ts';

describe('showAmount', () => {
  it('gives grams their unit and pieces none', () => {
    expect(showAmount('1412.5', 'g')).toBe('1\u00a0412.5\u00a0g');
    expect(showAmount('14', 'pieces')).toBe('14');
  });

  it('cuts the decimals that no scale shows', () => {
    expect(showAmount('107314.1017', 'g')).toBe('107\u00a0314.1\u00a0g');
    expect(showAmount('1.005', 'g')).toBe('1.01\u00a0g');
    expect(showAmount('0.12345', 'g')).toBe('0.1235\u00a0g');
    expect(showAmount('-2.345', 'g')).toBe('\u22122.35\u00a0g');
  });

  it('never lets an amount vanish, and leaves nought and what is no number alone', () => {
    expect(showAmount('0.000001', 'g')).toBe('0.000001\u00a0g');
    expect(showAmount('0', 'g')).toBe('0\u00a0g');
    expect(showAmount('+3.5', 'g')).toBe('3.5\u00a0g');
    expect(showAmount('some', 'g')).toBe('some\u00a0g');
  });
});
