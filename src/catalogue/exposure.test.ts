import { describe, expect, it } from 'vitest';
import { must } from '../core/problem.ts';
import { exposure } from './exposure.ts';

const butter = { productType: 'body-lotion', percent: 1, absorptionPercent: 100 };

describe('the calculation exposure', () => {
  it('judges a margin of exactly 100 and the least step below', () => {
    const verdict = (pointOfDepartureMgPerKgDay: number, bioavailabilityPercent = 100) =>
      must(exposure.run({ ...butter, pointOfDepartureMgPerKgDay, bioavailabilityPercent })).verdict;
    expect(verdict(123.2)).toBe('at-least-100');
    expect(verdict(123.19999999999999)).toBe('below-100');
    expect(verdict(246.4, 50)).toBe('at-least-100');
    expect(verdict(246.39999999999998, 50)).toBe('below-100');
  });

  it('says where its exposure comes from, and from memory where it does', () => {
    expect(must(exposure.run({ ...butter, productType: 'hand-wash-soap' })).basis).toMatch(
      /^Hand wash soap \(hand-wash-soap\): 3\.33 .*from memory, check/,
    );
    const given = { relativeExposureMgPerKgDay: 8, percent: 1, absorptionPercent: 50 };
    expect(must(exposure.run(given))).toEqual({ exposureMgPerKgDay: 0.04, basis: 'given: 8 mg/kg bw/day' });
  });

  it('gives no margin where nothing enters the body, and none where nothing to compare with is known', () => {
    const nothing = { ...butter, absorptionPercent: 0, pointOfDepartureMgPerKgDay: 75 };
    expect(must(exposure.run(nothing))).toMatchObject({ exposureMgPerKgDay: 0, verdict: 'at-least-100' });
    expect(must(exposure.run(nothing))).not.toHaveProperty('marginOfSafety');
    expect(must(exposure.run(butter))).not.toHaveProperty('verdict');
  });

  it('refuses no product, two of them, and one that the table does not have', () => {
    const rest = { percent: 1, absorptionPercent: 100 };
    const codeOf = (input: object) => {
      const answer = exposure.run(input);
      return answer.ok ? [] : answer.problems.map(({ code, where }) => [code, where]);
    };
    expect(codeOf(rest)).toEqual([['exposure-basis-missing', 'productType']]);
    expect(codeOf({ ...butter, relativeExposureMgPerKgDay: 123.2 })).toEqual([
      ['exposure-basis-twice', 'relativeExposureMgPerKgDay'],
    ]);
    expect(codeOf({ ...rest, productType: 'body-butter' })).toEqual([['value-not-one-of', 'productType']]);
    expect(codeOf({ ...rest, relativeExposureMgPerKgDay: 0 })).toEqual([
      ['value-not-above', 'relativeExposureMgPerKgDay'],
    ]);
    expect(codeOf({ ...butter, percent: 100.1 })).toEqual([['value-too-large', 'percent']]);
    expect(codeOf({ ...butter, absorptionPercent: -1 })).toEqual([['value-too-small', 'absorptionPercent']]);
    expect(codeOf({ ...butter, pointOfDepartureMgPerKgDay: 0 })).toEqual([
      ['value-not-above', 'pointOfDepartureMgPerKgDay'],
    ]);
    expect(codeOf({ ...butter, bioavailabilityPercent: 101 })).toEqual([
      ['value-too-large', 'bioavailabilityPercent'],
    ]);
  });
});
