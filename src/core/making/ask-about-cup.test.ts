import { describe, expect, it } from 'vitest';
import { askAboutCup, type CupReading, isUsualDensity } from './ask-about-cup.ts';

const cup: CupReading = { grossGrams: '155', tareGrams: '45', cupMl: '200', unwhippedGrams: '180' };
const asked = (more: Partial<CupReading>, bowl = '1000') =>
  askAboutCup({ ...cup, ...more }, bowl, 'cups[0]').map(({ code, where }) => `${code} ${where}`);

describe('a full cup', () => {
  it('is taken as it comes where it can be', () => {
    expect(asked({})).toEqual([]);
    expect(asked({ unwhippedGrams: null })).toEqual([]);
  });

  it('is asked about where it weighs more than lies in the bowl, a scale\u2019s error left to it', () => {
    expect(asked({ grossGrams: '147', unwhippedGrams: null }, '100')).toEqual([]);
    expect(asked({ grossGrams: '147.01', unwhippedGrams: null }, '100')).toEqual([
      'cup-heavier-than-bowl cups[0].grossGrams',
    ]);
    expect(asked({}, '0')).toEqual([]);
  });

  it('is asked about where nothing whipped is so light or so heavy', () => {
    // 200 ml: 40 g are 0.2 g/ml, 260 g are 1.3 g/ml.
    expect(asked({ grossGrams: '85' })).toEqual([]);
    expect(asked({ grossGrams: '84.99' })).toEqual(['cup-density-unusual cups[0].grossGrams']);
    expect(asked({ grossGrams: '305', unwhippedGrams: null })).toEqual([]);
    expect(asked({ grossGrams: '305.01', unwhippedGrams: null })).toEqual([
      'cup-density-unusual cups[0].grossGrams',
    ]);
    expect(asked({ unwhippedGrams: '1800' })).toEqual(['cup-density-unusual cups[0].unwhippedGrams']);
  });

  it('may be both at once', () => {
    expect(asked({ grossGrams: '2050', tareGrams: '50', cupMl: '100', unwhippedGrams: null }, '100')).toEqual(
      ['cup-heavier-than-bowl cups[0].grossGrams', 'cup-density-unusual cups[0].grossGrams'],
    );
  });

  it('has a usual density at both borders, also of a third of a gram', () => {
    expect(isUsualDensity('0.6', '3')).toBe(true);
    expect(isUsualDensity('3.9', '3')).toBe(true);
    expect(isUsualDensity('0.599999', '3')).toBe(false);
  });
});
