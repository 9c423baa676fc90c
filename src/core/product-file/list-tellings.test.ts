import { describe, expect, it } from 'vitest';
import { listTellings, type TellingRule } from './list-tellings.ts';

const rule = (more: Partial<TellingRule>): TellingRule => ({
  market: 'EU',
  rule: 'Tell the authority.',
  confidence: 'read',
  source: 'invented',
  ...more,
});
const one = (more: Partial<TellingRule>, received: string, today = received) =>
  listTellings([rule(more)], received, today)[0];

describe('listTellings', () => {
  // 20 calendar days after 26 November 2026, counted on a calendar, is 16 December.
  it('counts calendar days after the day it was received', () => {
    expect(one({ days: 20 }, '2026-11-26')?.by).toBe('2026-12-16');
  });

  // 26 November 2026 is a Thursday: 15 business days on are three weeks, Thursday 17 December.
  it('counts business days over weekends', () => {
    expect(one({ businessDays: 15 }, '2026-11-26')?.by).toBe('2026-12-17');
  });

  it('begins on Monday where it came in at a weekend', () => {
    expect(one({ businessDays: 1 }, '2026-11-28')?.by).toBe('2026-11-30');
    expect(one({ businessDays: 1 }, '2026-11-27')?.by).toBe('2026-11-30');
  });

  it('is past the day after the last day, not on it', () => {
    expect(one({ days: 20 }, '2026-11-26', '2026-12-16')?.isPast).toBe(false);
    expect(one({ days: 20 }, '2026-11-26', '2026-12-17')?.isPast).toBe(true);
  });

  it('knows no day where the tables have no number', () => {
    expect(one({}, '2026-11-26', '2036-11-26')).toMatchObject({ by: null, isPast: false });
  });
});
