import { describe, expect, it } from 'vitest';
import type { Addition } from './batch.ts';
import { bandLeft } from './weigh-band.ts';

const addition = (more: Partial<Addition>): Addition =>
  ({
    inGrams: '0',
    leftGrams: '520',
    targetGrams: '520',
    lowGrams: '509.6',
    highGrams: '530.4',
    ...more,
  }) as Addition;

describe('what the scale is to show', () => {
  it('is the band of the line while nothing of it is in', () => {
    expect(bandLeft(addition({}))).toEqual({ targetGrams: '520', lowGrams: '509.6', highGrams: '530.4' });
  });

  it('is what is left of it, both ends less what is in', () => {
    expect(bandLeft(addition({ inGrams: '300', leftGrams: '220' }))).toEqual({
      targetGrams: '220',
      lowGrams: '209.6',
      highGrams: '230.4',
    });
  });

  it('never begins below nothing', () => {
    expect(bandLeft(addition({ inGrams: '515', leftGrams: '5' })).lowGrams).toBe('0');
  });
});
