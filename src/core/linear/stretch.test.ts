import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Fraction, fractionOf, isWithin, overlapOf, type Stretch, stretchAbove } from './index.ts';

const above = (slope: number, constant: number, orAt = false) =>
  stretchAbove({ slope: fractionOf(slope), constant: fractionOf(constant) }, orAt);
const shown = (stretch: Stretch | undefined) =>
  stretch && [stretch.from && `${stretch.from.at.near}`, stretch.to && `${stretch.to.at.near}`];

describe('a stretch of numbers', () => {
  it('is where a straight line is above nought', () => {
    expect(shown(above(2, -6))).toEqual(['3', undefined]);
    expect(shown(above(-2, 6))).toEqual([undefined, '3']);
    expect(isWithin(fractionOf(3), above(2, -6) ?? {})).toBe(false);
    expect(isWithin(fractionOf(3), above(2, -6, true) ?? {})).toBe(true);
  });

  it('is everything or nothing of a line that is level', () => {
    expect(above(0, 1)).toEqual({});
    expect(above(0, 0)).toBeUndefined();
    expect(above(0, 0, true)).toEqual({});
    expect(above(0, -1, true)).toBeUndefined();
  });

  it('overlaps in a single number only where both have it', () => {
    expect(shown(overlapOf(above(1, -3, true), above(-1, 3, true)))).toEqual(['3', '3']);
    expect(overlapOf(above(1, -3, true), above(-1, 3))).toBeUndefined();
    expect(overlapOf(above(1, -4), above(-1, 3))).toBeUndefined();
    expect(overlapOf(undefined, {})).toBeUndefined();
  });

  it('has what both have and nothing else', () => {
    const line = fc.tuple(fc.integer({ min: -3, max: 3 }), fc.integer({ min: -9, max: 9 }), fc.boolean());
    fc.assert(
      fc.property(line, line, fc.integer({ min: -20, max: 20 }), (one, other, halves) => {
        const value = fractionOf(halves / 2);
        const has = (stretch: Stretch | undefined, at: Fraction) =>
          stretch !== undefined && isWithin(at, stretch);
        const holds = ([slope, constant, orAt]: typeof one) => {
          const height = (slope * halves) / 2 + constant;
          return height > 0 || (orAt && height === 0);
        };
        expect(has(above(...one), value)).toBe(holds(one));
        expect(has(overlapOf(above(...one), above(...other)), value)).toBe(holds(one) && holds(other));
      }),
    );
  });

  it('rounds up where it is to be no less', () => {
    const third = fractionOf(1).over(fractionOf(3));
    expect(third.roundedUp(4).toFixed()).toBe('0.3334');
    expect(third.roundedDown(4).toFixed()).toBe('0.3333');
    expect(fractionOf('0.25').roundedUp(4).toFixed()).toBe('0.25');
  });
});
