import { describe, expect, it } from 'vitest';
import { findLastMeltDay, findLatestStart } from './latest-start.ts';

describe('the latest start of a base', () => {
  it('is the end of the day wanted less the longest setting time', () => {
    expect(findLatestStart('2026-11-28', 36, 'Europe/London')).toBe('2026-11-27T11:59:59.999Z');
  });

  it('is the day itself where nothing sets', () => {
    expect(findLatestStart('2026-11-28', 0, 'Europe/London')).toBe('2026-11-28T23:59:59.999Z');
  });

  it('goes by the day of the workshop, whose clock may change in between', () => {
    // British summer time ends on 25 October 2026 at 01:00 UTC (last Sunday of October, SI 2002/262).
    expect(findLatestStart('2026-10-25', 24, 'Europe/London')).toBe('2026-10-24T23:59:59.999Z');
    expect(findLatestStart('2026-10-24', 24, 'Europe/London')).toBe('2026-10-23T22:59:59.999Z');
  });
});

describe('the last day on which a base is melted in good time', () => {
  it('leaves the longest setting, in whole days, and a day to fill before the day of sending', () => {
    expect(findLastMeltDay('2026-12-07', 36)).toBe('2026-12-04');
    expect(findLastMeltDay('2026-12-07', 24)).toBe('2026-12-05');
    expect(findLastMeltDay('2026-12-07', 24.5)).toBe('2026-12-04');
  });

  it('is the day before where nothing sets', () => {
    expect(findLastMeltDay('2027-01-01', 0)).toBe('2026-12-31');
  });
});
