import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { clockAhead, momentOfEntry, noteClocks, workshopNow } from './clock.ts';

const AT = '2026-11-26T08:05:00.000Z';
const MINUTE = 60_000;
const later = (ms: number): string => new Date(Date.parse(AT) + ms).toISOString();

describe("a tablet whose clock is not the workshop's", () => {
  beforeEach(() => {
    vi.useFakeTimers({ now: Date.parse(AT) });
    clockAhead.write(0);
  });
  afterEach(() => {
    vi.useRealTimers();
    clockAhead.write(0);
  });
  /** The workshop's answer, read on a tablet that is so far ahead. */
  const beAhead = (ms: number) => noteClocks(later(-ms), Date.now());

  it('counts the time of a hold as the workshop does, ahead or behind', () => {
    beAhead(3 * MINUTE);
    expect(workshopNow()).toBe(Date.parse(later(-3 * MINUTE)));
    beAhead(-7 * MINUTE);
    expect(workshopNow()).toBe(Date.parse(later(7 * MINUTE)));
  });

  it("begins a hold at the workshop's time, so that it is over for every tablet at once", () => {
    beAhead(3 * MINUTE);
    expect(momentOfEntry()).toBe(later(-3 * MINUTE));
    beAhead(-60 * MINUTE);
    expect(momentOfEntry()).toBe(later(60 * MINUTE));
  });

  it('leaves the time of a clock that is far behind as it is: that is asked about', () => {
    beAhead(-60 * MINUTE - 1000 * 3);
    expect(momentOfEntry()).toBe(AT);
  });

  it('takes no notice of what whole seconds and the way take, nor of no date', () => {
    beAhead(2000);
    noteClocks(null, Date.now());
    noteClocks('soon', Date.now());
    expect(workshopNow()).toBe(Date.now());
  });
});
