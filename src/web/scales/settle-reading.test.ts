import { describe, expect, it } from 'vitest';
import type { ScaleReading } from './reading.ts';
import { isRestless, NOTHING_READ, type SettlesBy, settleReading } from './settle-reading.ts';

const read = (grams: string | null, isStable = true): ScaleReading => ({
  grams,
  isStable,
  trouble: null,
  told: null,
});
const follow = (readings: readonly ScaleReading[], by: SettlesBy) =>
  readings.reduce((before, each, index) => settleReading(before, each, index * 1000, by), NOTHING_READ);

describe('a scale that tells one reading after another', () => {
  it('stands where it says so', () => {
    expect(follow([read('5', false), read('5.1')], 'mark')).toMatchObject({
      reading: { grams: '5.1', isStable: true },
      movingSince: null,
    });
  });

  it('stands after three equal readings, where it marks nothing', () => {
    expect(follow([read('5'), read('5')], 'equal').reading?.isStable).toBe(false);
    expect(follow([read('5'), read('5'), read('5')], 'equal').reading?.isStable).toBe(true);
    expect(follow([read('5'), read('5'), read('5'), read('5.1')], 'equal').reading?.isStable).toBe(false);
  });

  it('moves since the first reading that moved, and is restless after eight seconds of it', () => {
    const moving = follow(
      Array.from({ length: 9 }, (_, index) => read(String(index), false)),
      'mark',
    );
    expect(moving.movingSince).toBe(0);
    expect([isRestless(moving, 7999), isRestless(moving, 8000)]).toEqual([false, true]);
  });

  it('of a row of dashes neither stands nor moves', () => {
    const lost = follow([read('5', false), read(null, false)], 'mark');
    expect(lost).toMatchObject({ reading: { grams: null, isStable: false }, movingSince: null });
    expect(isRestless(lost, 1e9)).toBe(false);
  });
});
