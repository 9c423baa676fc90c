import { describe, expect, it } from 'vitest';
import { worstOfLimit } from './worst-of-limit.ts';

describe('how far from the tightest limit a weighing stays', () => {
  it('is what is weighed and the error of the scale, of what the limit allows', () => {
    // 3.36 g of which 1.28 times as much is allowed, on a scale that may be 0.04 g out: 3.41 of 4.3008 g.
    const limit = { exactGrams: '3.36', timesAllowed: '1.28', errorGrams: '0.04' };
    expect(worstOfLimit('3.37', limit)?.toDecimalPlaces(4).toString()).toBe('0.7929');
  });

  it('is exactly one on the limit', () => {
    const limit = { exactGrams: '5', timesAllowed: '1.5', errorGrams: '0.02' };
    expect(worstOfLimit('7.48', limit)?.toString()).toBe('1');
  });

  it('is not told where nothing is asked for', () => {
    expect(worstOfLimit('1', { exactGrams: '0', timesAllowed: '2', errorGrams: '0' })).toBeNull();
  });
});
