import { describe, expect, it } from 'vitest';
import { poolSpread } from './pooled-spread.ts';

describe('spread within groups', () => {
  it('is the root of the pooled variance, by hand: (2 + 8) / (2 + 2) of two groups of three', () => {
    // 1 2 3 lie 1, 0, 1 off their mean squared; 10 12 14 lie 4, 0, 4.
    const found = poolSpread([
      [1, 2, 3],
      [10, 12, 14],
    ]);
    expect(found?.standardDeviation.pow(2).toFixed(12)).toBe('2.500000000000');
    expect(found).toMatchObject({ degreesOfFreedom: 4, groups: 2, count: 6 });
  });

  it('does not count groups of one, however far off they lie', () => {
    expect(poolSpread([[1, 3], [900]])?.standardDeviation.toFixed(6)).toBe(Math.SQRT2.toFixed(6));
    expect(poolSpread([[900], []])).toBeNull();
    expect(poolSpread([])).toBeNull();
  });
});
