import { describe, expect, it } from 'vitest';
import { judgeMarginOfSafety } from './judge-margin-of-safety.ts';

const judge = (pointOfDeparture: string | number, exposure: string | number, bioavailability = 100) => {
  const { marginOfSafety, isEnough } = judgeMarginOfSafety({
    pointOfDepartureMgPerKgDay: pointOfDeparture,
    exposureMgPerKgDay: exposure,
    bioavailabilityPercent: bioavailability,
    minimum: 100,
  });
  return [marginOfSafety?.toNumber() ?? null, isEnough];
};

describe('the margin of safety', () => {
  it('is the point of departure over the exposure', () => {
    expect(judge(75, 0.125)).toEqual([600, true]);
    expect(judge(75, 0.125, 50)).toEqual([300, true]);
  });

  it('is enough at exactly a hundred, and not the least step below', () => {
    expect(judge(12.32, 0.1232)).toEqual([100, true]);
    expect(judge('12.319999999999999', 0.1232)[1]).toBe(false);
    expect(judge(12.32, '0.123200000000000001')[1]).toBe(false);
    expect(judge(24.64, 0.1232, 50)).toEqual([100, true]);
    expect(judge('24.6399999999999999', 0.1232, 50)[1]).toBe(false);
  });

  it('is exact where the quotient of doubles falls short of a hundred', () => {
    expect(0.7 / 0.007).toBeLessThan(100);
    expect(judge(0.7, 0.007)).toEqual([100, true]);
    expect(judge('0.6999999999999999999999', 0.007)[1]).toBe(false);
  });

  it('has no finite figure where nothing enters, which is enough', () => {
    expect(judge(75, 0)).toEqual([null, true]);
  });

  it('is nothing where nothing of the dose enters', () => {
    expect(judge(75, 0.1, 0)).toEqual([0, false]);
  });
});
