import { describe, expect, it } from 'vitest';
import { findMadeLotDates } from './made-lot.ts';

const made = { at: '2026-11-26T15:30:00Z', on: '2026-11-26' };
const base = { settingHours: { least: 12, most: 24.5 }, keepMonths: 6 };

describe('the dates of what was made', () => {
  it('gives a base its setting range and its keep-until date', () => {
    expect(findMadeLotDates('base', base, made, [{ best_before: null }])).toEqual({
      best_before: null,
      keep_until: '2027-05-26',
      firm_from: '2026-11-27T03:30:00Z',
      firm_to: '2026-11-27T16:00:00Z',
    });
  });

  it('keeps nothing longer than the first of its lots to end', () => {
    const lots = [{ best_before: '2027-09-01' }, { best_before: '2027-02-01' }, { best_before: null }];
    expect(findMadeLotDates('base', base, made, lots)).toMatchObject({
      best_before: '2027-02-01',
      keep_until: '2027-02-01',
    });
  });

  it('gives a mixture that does not set the end of its lots alone', () => {
    const plain = { settingHours: null, keepMonths: null };
    expect(findMadeLotDates('mixture', plain, made, [{ best_before: '2027-02-01' }])).toEqual({
      best_before: '2027-02-01',
      keep_until: null,
      firm_from: null,
      firm_to: null,
    });
  });

  it('falls back to the last day of a short month', () => {
    const onThe31st = { at: '2026-08-31T08:00:00Z', on: '2026-08-31' };
    expect(findMadeLotDates('base', base, onThe31st, []).keep_until).toBe('2027-02-28');
  });
});
