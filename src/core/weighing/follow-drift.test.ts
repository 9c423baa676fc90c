import { describe, expect, it } from 'vitest';
import { exact } from '../quantity/index.ts';
import { followDrift } from './follow-drift.ts';

const following = { target: 0, standardDeviation: 1, lambda: '0.2', width: 3 };

describe('a drift', () => {
  it('is seen while each single value still lies within three standard deviations', () => {
    const values = Array.from({ length: 12 }, () => '1.5');
    const { outside, averages } = followDrift({ ...following, values });
    // 1.5 (1 - 0.8^n) first exceeds 3 sqrt(0.2 / 1.8) = 1 at n = 5.
    expect(outside[0]).toBe(4);
    expect(averages.at(-1)?.lt('1.5')).toBe(true);
  });

  it('is not seen in what swings about the target, nor in nothing', () => {
    expect(followDrift({ ...following, values: ['2', '-2', '2', '-2'] }).outside).toEqual([]);
    expect(followDrift({ ...following, values: [] }).averages).toEqual([]);
  });

  it('with the whole weight on the newest value is that value, and its limits are those of single values', () => {
    const { averages, upper, lower, outside } = followDrift({
      ...following,
      lambda: 1,
      values: ['3', '3.01'],
    });
    expect(averages.map((each) => each.toFixed())).toEqual(['3', '3.01']);
    expect([upper.eq(3), lower.eq(exact(-3)), outside]).toEqual([true, true, [1]]);
  });
});
