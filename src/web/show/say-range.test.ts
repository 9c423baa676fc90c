import { describe, expect, it } from 'vitest';
import { sayRange } from './say-range.ts';

// 25 November 2026 is a Wednesday; the United Kingdom is on Greenwich time in November (any calendar).
describe('sayRange', () => {
  it('says both days where they differ', () => {
    expect(sayRange('2026-11-25T17:00:00Z', '2026-11-26T09:30:00Z', 'Europe/London')).toBe(
      'Wednesday 25 November, 17:00 to Thursday 26 November, 09:30',
    );
  });

  it('says the day once where both lie on it, by the workshop clock', () => {
    expect(sayRange('2026-11-25T08:00:00Z', '2026-11-25T09:30:00Z', 'Europe/London')).toBe(
      'Wednesday 25 November, 08:00 to 09:30',
    );
    expect(sayRange('2026-11-25T23:30:00Z', '2026-11-26T00:30:00Z', 'Europe/Berlin')).toBe(
      'Thursday 26 November, 00:30 to 01:30',
    );
  });

  it('says one instant where it is no range', () => {
    expect(sayRange('2026-11-25T08:00:10Z', '2026-11-25T08:00:40Z', 'Europe/London')).toBe(
      'Wednesday 25 November, 08:00',
    );
  });
});
