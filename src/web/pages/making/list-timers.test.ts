import { describe, expect, it } from 'vitest';
import type { Step } from './batch.ts';
import { listTimers, minutesSince, minutesTold, sayClock, timerOf } from './list-timers.ts';

const AT = '2026-11-26T08:00:00Z';
const START = Date.parse(AT);
const begun = (more: object = {}) => ({
  ...{ entryId: 'b1', load: 1, round: 1, minutes: null, at: AT, by: 'Ada' },
  ...more,
});
const step = (more: Partial<Step> = {}): Step =>
  ({
    ...{ kind: 'step', screen: 2, position: 0, stage: 'Melt', stepKind: 'hold', what: 'Hold', caution: '' },
    ...{ leastCelsius: null, mostCelsius: null, minutes: '20', roundMinutes: null, rounds: null },
    ...{ growsPercent: null, leastHours: null, mostHours: null, isHandedOn: false },
    ...{ begun: [begun()], whipped: [], photos: [], done: null, tins: [], air: null },
    ...more,
  }) as Step;
const whipped = (round: number, load = 1) => ({ load, round }) as Step['whipped'][number];

describe('the timer of a step', () => {
  it('ends so many minutes after it began, whatever happened to the tablet meanwhile', () => {
    expect(timerOf(step())).toMatchObject({ begunAt: START, endsAt: START + 20 * 60_000, latestAt: null });
  });

  it('runs without an end while something heats, and ends once it is held', () => {
    const melting = step({ stepKind: 'melt' });
    expect(timerOf(melting)?.endsAt).toBeNull();
    const held = begun({ entryId: 'b2', round: 2, at: '2026-11-26T08:30:00Z' });
    const hot = { ...melting, begun: [begun(), held] };
    expect(timerOf(hot)).toMatchObject({ key: 'b2', endsAt: START + 50 * 60_000 });
  });

  it('is of the round that nobody looked at yet, with the length that was chosen', () => {
    const whip = step({ stepKind: 'whip', minutes: '6', roundMinutes: '2', begun: [begun()] });
    expect(timerOf(whip)?.endsAt).toBe(START + 120_000);
    expect(timerOf({ ...whip, whipped: [whipped(1)] })).toBeUndefined();
    const second = begun({ entryId: 'b2', round: 2, minutes: '1.5' });
    expect(timerOf({ ...whip, begun: [begun(), second], whipped: [whipped(1)] })).toMatchObject({
      key: 'b2',
      endsAt: START + 90_000,
    });
    const next = begun({ entryId: 'b3', load: 2 });
    expect(timerOf({ ...whip, begun: [begun(), next], whipped: [whipped(1)] })?.key).toBe('b3');
  });

  it('has a range where something sets', () => {
    const set = step({ stepKind: 'set', minutes: null, leastHours: '14', mostHours: '26.5' });
    expect(timerOf(set)).toMatchObject({
      endsAt: START + 14 * 3_600_000,
      latestAt: START + 26.5 * 3_600_000,
    });
  });

  it('is none of what is done, or not begun', () => {
    expect(timerOf(step({ begun: [] }))).toBeUndefined();
    expect(timerOf(step({ done: {} as Step['done'] }))).toBeUndefined();
    expect(timerOf(step({ minutes: '0' }))?.endsAt).toBeNull();
  });

  it('stands before those that end later', () => {
    const late = step({ screen: 1, minutes: '40' });
    const open = step({ screen: 0, stepKind: 'melt' });
    expect(listTimers([open, late, step()]).map((timer) => timer.screen)).toEqual([2, 1, 0]);
  });
});

describe('time in digits', () => {
  it('counts down to nought, and hours only where there are some', () => {
    expect(sayClock(20 * 60_000)).toBe('20:00');
    expect(sayClock(61_001)).toBe('1:02');
    expect(sayClock(1)).toBe('0:01');
    expect(sayClock(0)).toBe('0:00');
    expect(sayClock(-5)).toBe('0:00');
    expect(sayClock(3_605_000)).toBe('1:00:05');
    expect(sayClock(26.5 * 3_600_000)).toBe('26:30:00');
  });

  it('says how long a step took by its timer, whatever was typed before that began', () => {
    expect(minutesTold('3', '20')).toBe('3');
    expect(minutesTold(undefined, '20')).toBe('20');
    expect(minutesTold(null, null)).toBeNull();
  });

  it('gives minutes to a tenth and never more than they were', () => {
    expect(minutesSince(0, 20 * 60_000)).toBe('20');
    expect(minutesSince(0, 20 * 60_000 - 1)).toBe('19.9');
    expect(minutesSince(10, 5)).toBe('0');
  });
});
