import { describe, expect, it } from 'vitest';
import { ringDue } from './rings.ts';

describe('rings of a timer', () => {
  const timer = { endsAt: 1_000_000 };

  it('begin with the end and come again every twenty seconds, six times', () => {
    expect(ringDue(timer, 999_999)).toBe(0);
    expect(ringDue(timer, 1_000_000)).toBe(1);
    expect(ringDue(timer, 1_019_999)).toBe(1);
    expect(ringDue(timer, 1_020_000)).toBe(2);
    expect(ringDue(timer, 1_500_000)).toBe(6);
  });

  it('are due when a tablet wakes late, and not the day after', () => {
    expect(ringDue(timer, 1_000_000 + 3_600_000)).toBe(6);
    expect(ringDue(timer, 1_000_000 + 13 * 3_600_000)).toBe(0);
  });

  it('are none of what has no end', () => {
    expect(ringDue({ endsAt: null }, 9e15)).toBe(0);
  });
});
