import { describe, expect, it } from 'vitest';
import { must } from '../problem.ts';
import { decideBestBefore } from './decide-best-before.ts';

const decide = (made: string, months: number, lots?: string[]) =>
  must(decideBestBefore({ made, months, lots }, 30));

describe('best before', () => {
  it('is so many months after making', () => {
    expect(decide('2026-11-26', 12)).toEqual({ date: '2027-11-26', decidedBy: 'months', mark: 'date' });
  });

  it('is no later than the first of its lots ends', () => {
    expect(decide('2026-11-26', 12, ['2028-01-01', '2027-06-30', '2027-09-30'])).toEqual({
      date: '2027-06-30',
      decidedBy: 'lots[1]',
      mark: 'date',
    });
    expect(decide('2026-11-26', 12, ['2027-11-26']).decidedBy).toBe('months');
  });

  it('falls back to the last day of a month that lacks the day', () => {
    expect(decide('2026-08-31', 6).date).toBe('2027-02-28');
    expect(decide('2027-08-31', 6).date).toBe('2028-02-29');
    expect(decide('2026-03-31', 1).date).toBe('2026-04-30');
    expect(decide('2028-02-29', 12).date).toBe('2029-02-28');
    expect(decide('2026-01-30', 1).date).toBe('2026-02-28');
  });

  it('takes a date up to and with thirty months, and the period after opening beyond', () => {
    expect(decide('2026-11-26', 30).mark).toBe('date');
    expect(decide('2026-11-26', 31).mark).toBe('period-after-opening');
    expect(decide('2026-08-31', 30)).toMatchObject({ date: '2029-02-28', mark: 'date' });
  });

  it('takes a date where a lot brings a long durability down to thirty months, and not a day later', () => {
    expect(decide('2026-11-26', 36, ['2029-05-26']).mark).toBe('date');
    expect(decide('2026-11-26', 36, ['2029-05-27']).mark).toBe('period-after-opening');
  });

  it('lets a lot end on the day of making and refuses one that ended before', () => {
    expect(decide('2026-11-26', 12, ['2026-11-26']).date).toBe('2026-11-26');
    expect(
      decideBestBefore({ made: '2026-11-26', months: 12, lots: ['2027-01-01', '2026-11-25'] }, 30),
    ).toMatchObject({
      problems: [
        { code: 'lot-past-when-made', where: 'lots[1]', found: '2026-11-25', allowed: '2026-11-26' },
      ],
    });
  });

  it('refuses months that are not whole or none', () => {
    for (const months of [0, -3, 2.5]) {
      expect(decideBestBefore({ made: '2026-11-26', months }, 30)).toMatchObject({
        problems: [{ code: 'months-not-whole', found: months }],
      });
    }
  });
});
