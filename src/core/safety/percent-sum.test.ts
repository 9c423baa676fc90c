import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { exact } from '../quantity/index.ts';
import { addPercents, comparePercent, picopercentFrom, readPercent, toPercent } from './percent-sum.ts';

const sumOf = (...percents: (number | string)[]) =>
  addPercents(percents.map((percent) => readPercent(percent)));

describe('sums of percentages', () => {
  it('adds decimals as a person does: 0.1 + 0.2 is 0.3', () => {
    expect(toPercent(sumOf(0.1, 0.2))).toBe(0.3);
    expect(comparePercent(sumOf(0.1, 0.2), picopercentFrom(0.3))).toBe(0);
  });

  it('tells the last picopercent on both sides of a limit', () => {
    const limit = picopercentFrom(0.0002);
    expect(comparePercent(sumOf('0.000199999999'), limit)).toBe(-1);
    expect(comparePercent(sumOf('0.0002'), limit)).toBe(0);
    expect(comparePercent(sumOf('0.000200000001'), limit)).toBe(1);
  });

  it('falls back to exact decimals where a term is finer than a picopercent', () => {
    const limit = picopercentFrom(0.001);
    expect(comparePercent(sumOf('0.00099999999999999999', '0.00000000000000000001'), limit)).toBe(0);
    expect(comparePercent(sumOf('0.00099999999999999999', '0.00000000000000000002'), limit)).toBe(1);
    expect(comparePercent(sumOf('0.00099999999999999998', '0.00000000000000000001'), limit)).toBe(-1);
  });

  it('reads mg/kg as ten-thousandths of a per cent', () => {
    expect(comparePercent(sumOf(0.01), picopercentFrom(100, 'mg-per-kg'))).toBe(0);
  });

  it('agrees with exact decimals for any sum and limit', () => {
    const percent = fc.double({ min: 0, max: 100, noNaN: true });
    fc.assert(
      fc.property(
        fc.array(percent, { minLength: 1, maxLength: 20 }),
        fc.integer({ min: 1, max: 1e6 }),
        (terms, millionths) => {
          const limit = millionths / 1e6;
          const expected = terms.reduce((sum, term) => sum.plus(term), exact(0)).cmp(limit);
          expect(comparePercent(sumOf(...terms), picopercentFrom(limit))).toBe(expected);
        },
      ),
    );
  });

  it('never takes a double for a shorter decimal than its own', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 100, noNaN: true }), (value) => {
        const { pico } = readPercent(value);
        if (!Number.isNaN(pico)) expect(exact(pico).div(1e12).eq(exact(value))).toBe(true);
      }),
    );
  });
});
