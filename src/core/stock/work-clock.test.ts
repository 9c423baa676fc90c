import { describe, expect, it } from 'vitest';
import { WorkClock } from './work-clock.ts';

const clock = new WorkClock('Europe/London', { from: '08:00', to: '18:00' });
const anyHour = new WorkClock('Europe/London', null);
const work = (at: string, minutes: number, on = clock) => {
  const { start, end } = on.work(on.minutesOf(at), minutes);
  return [on.instantOf(start), on.instantOf(end)];
};

describe('the working day', () => {
  it('works on from where it is within the day', () => {
    expect(work('2026-11-26T09:10:00Z', 90)).toEqual(['2026-11-26T09:10:00Z', '2026-11-26T10:40:00Z']);
  });

  it('begins in the morning what is ready at night', () => {
    expect(work('2026-11-26T03:00:00Z', 30)).toEqual(['2026-11-26T08:00:00Z', '2026-11-26T08:30:00Z']);
    expect(work('2026-11-26T18:00:00Z', 30)).toEqual(['2026-11-27T08:00:00Z', '2026-11-27T08:30:00Z']);
  });

  it('goes on the next morning where the day ends, through as many days as it takes', () => {
    expect(work('2026-11-26T17:00:00Z', 60)).toEqual(['2026-11-26T17:00:00Z', '2026-11-26T18:00:00Z']);
    expect(work('2026-11-26T17:00:00Z', 61)).toEqual(['2026-11-26T17:00:00Z', '2026-11-27T08:01:00Z']);
    expect(work('2026-11-26T17:00:00Z', 60 + 600 + 5)[1]).toBe('2026-11-28T08:05:00Z');
  });

  it('keeps the mornings of the workshop when the clocks change', () => {
    // British Summer Time ended on 25 October 2026 at 01:00 UTC.
    expect(work('2026-10-24T17:30:00Z', 10)).toEqual(['2026-10-25T08:00:00Z', '2026-10-25T08:10:00Z']);
    expect(work('2026-10-23T17:30:00Z', 10)).toEqual(['2026-10-24T07:00:00Z', '2026-10-24T07:10:00Z']);
  });

  it('works at any hour where nobody set one', () => {
    expect(work('2026-11-26T23:30:00Z', 60, anyHour)).toEqual([
      '2026-11-26T23:30:00Z',
      '2026-11-27T00:30:00Z',
    ]);
  });

  it('sends the next day what gets ready after work, and today what is ready now', () => {
    const now = clock.minutesOf('2026-11-26T19:00:00Z');
    expect(clock.leavesOn(now, now)).toBe('2026-11-26');
    expect(clock.leavesOn(now + 60, now)).toBe('2026-11-27');
  });

  it('knows no instant for a time that nobody knows', () => {
    expect(clock.instantOf(Number.POSITIVE_INFINITY)).toBeNull();
    expect(clock.work(Number.POSITIVE_INFINITY, 10).end).toBe(Number.POSITIVE_INFINITY);
  });
});
