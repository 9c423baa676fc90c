import { describe, expect, it } from 'vitest';
import type { ScaleReading } from './reading.ts';
import {
  isRestless,
  NOTHING_READ,
  offeredGrams,
  type SettlesBy,
  type Settling,
  settleReading,
  silentForMs,
} from './settle-reading.ts';

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

/** A reading each second, from the first second on. */
const always = (...grams: string[]) =>
  follow(
    grams.map((each) => read(each)),
    'mark',
  );

describe('what a scale told', () => {
  it('speaks no longer for what lies on it, once one that tells all the time has told nothing for four seconds', () => {
    const scale = always('520', '520', '520', '520');
    expect([silentForMs(scale, 7000), silentForMs(scale, 7001)]).toEqual([null, 4001]);
    expect([offeredGrams(scale, 7000), offeredGrams(scale, 7001)]).toEqual(['520', null]);
    const awake = settleReading(scale, read('520'), 60_000, 'mark');
    expect(offeredGrams(awake, 60_000)).toBe('520');
  });

  it('speaks for two minutes, where it tells when it is asked to', () => {
    // Printed in three lines at once, which is no telling all the time.
    const printed = [0, 5, 10].reduce<Settling>(
      (before, atMs) => settleReading(before, read('520'), atMs, 'mark'),
      NOTHING_READ,
    );
    expect([offeredGrams(printed, 120_010), offeredGrams(printed, 120_011)]).toEqual(['520', null]);
  });

  it('speaks as long, where it tells only what is new to it, for however long something is poured', () => {
    const poured = always('100', '200', '300', '400', '500', '519', '520');
    expect(offeredGrams(poured, 60_000)).toBe('520');
  });

  it('is nothing before it told anything', () => {
    expect(silentForMs(NOTHING_READ, 1e9)).toBeNull();
    expect(offeredGrams(NOTHING_READ, 1e9)).toBeNull();
  });
});

describe('a reading that was taken', () => {
  const taken = { ...always('520', '520', '520', '520'), takenGrams: '520' };
  const then = (before: Settling, atMs: number, each: ScaleReading) =>
    settleReading(before, each, atMs, 'mark');

  it('is not offered again while the same lies on the scale, nor after the scale slept', () => {
    expect(offeredGrams(then(taken, 4000, read('520')), 4000)).toBeNull();
    expect(offeredGrams(then(taken, 90_000, read('520')), 90_000)).toBeNull();
  });

  it('is offered again once it moved, be it the same weight', () => {
    const lifted = then(then(taken, 4000, read('0')), 5000, read('520'));
    expect(offeredGrams(lifted, 5000)).toBe('520');
    const shaken = then(then(taken, 4000, read('520', false)), 5000, read('520'));
    expect(offeredGrams(shaken, 5000)).toBe('520');
  });

  it('is offered again by one that is asked to tell, when it is asked anew', () => {
    const printed = { ...always('520'), takenGrams: '520' };
    expect(offeredGrams(then(printed, 20, read('520')), 20)).toBeNull();
    expect(offeredGrams(then(printed, 2001, read('520')), 2001)).toBe('520');
  });
});
