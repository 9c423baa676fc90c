import { describe, expect, it } from 'vitest';
import { showAmount } from './show-amount.ts';

describe('showAmount', () => {
  it('gives grams their unit and pieces none', () => {
    expect(showAmount('1412.5', 'g')).toBe('1\u00a0412.5\u00a0g');
    expect(showAmount('14', 'pieces')).toBe('14');
  });
});
