import { describe, expect, it } from 'vitest';
import { dayPart, nearDay } from './near-day.ts';

describe('naming a day from this one', () => {
  it.each([
    ['2026-11-26', 'today'],
    ['2026-11-27', 'tomorrow'],
    ['2026-11-28', 'date'],
    ['2026-12-03', 'date'],
    ['2026-11-25', 'date'],
    ['2027-11-27', 'date'],
  ])('calls %s %s on 26 November', (day, near) => {
    expect(nearDay(day, '2026-11-26')).toBe(near);
  });
});

describe('naming the part of a day', () => {
  it.each([
    ['2026-11-27T04:59:59Z', 'night'],
    ['2026-11-27T05:00:00Z', 'morning'],
    ['2026-11-27T11:59:59Z', 'morning'],
    ['2026-11-27T12:00:00Z', 'noon'],
    ['2026-11-27T13:00:00Z', 'afternoon'],
    ['2026-11-27T18:00:00Z', 'evening'],
    ['2026-11-27T22:00:00Z', 'night'],
  ])('calls %s %s', (instant, part) => {
    expect(dayPart(instant, 'Europe/London')).toBe(part);
  });

  it('goes by the clock of the workshop', () => {
    expect(dayPart('2026-11-27T12:00:00Z', 'Europe/Athens')).toBe('afternoon');
  });
});
