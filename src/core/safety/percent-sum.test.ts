import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { divideBy } from '../formula/whole-ratio.ts';
import { exact, Quotient } from '../quantity/index.ts';
import {
  addPercents,
  comparePercent,
  compareSums,
  picopercentFrom,
  readPercent,
  toFraction,
  toPercent,
} from './percent-sum.ts';

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

  it('reads plain text as the decimal that it says, however long', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 999 }), fc.stringMatching(/^\d{1,14}$/), (whole, places) => {
        const text = `${whole}.${places}`;
        const { pico } = readPercent(text);
        if (places.length <= 12) expect(pico).toBe(exact(text).times(1e12).toNumber());
        else if (!Number.isNaN(pico)) expect(exact(pico).div(1e12).eq(text)).toBe(true);
      }),
    );
  });

  it('compares quotients that have no end with a limit as whole numbers do', () => {
    const divided = (numerator: bigint, denominator: bigint) =>
      new Quotient(numerator, denominator, (parts) => exact(String(parts)).div(String(denominator)));
    const part = fc.bigInt({ min: 0n, max: 10n ** 16n });
    fc.assert(
      fc.property(part, part, fc.bigInt({ min: 1n, max: 10n ** 18n }), (one, other, denominator) => {
        const both = readPercent(divided(one + other, denominator));
        const sum = addPercents([one, other].map((parts) => readPercent(divided(parts, denominator))));
        const limit = Math.round(toPercent(both) * 1e12);
        const difference = (one + other) * 10n ** 12n - BigInt(limit) * denominator;
        const expected = difference > 0n ? 1 : difference < 0n ? -1 : 0;
        expect(comparePercent(both, limit)).toBe(expected);
        expect(comparePercent(sum, limit)).toBe(expected);
      }),
    );
  });

  const limitMillionths = fc.integer({ min: 1, max: 1e6 });
  /** As a formula divides its shares: `count` parts that come to `millionths` / 1e6 percent together, or miss it by one part. */
  const equalParts = (millionths: number, count: number, off: bigint) => {
    const scale = 7n;
    const whole = 1_000_000n * BigInt(count) * scale;
    const part = new Quotient(BigInt(millionths) * scale, whole, divideBy(whole));
    const last = new Quotient(BigInt(millionths) * scale + off, whole, divideBy(whole));
    return addPercents(
      [...Array.from({ length: count - 1 }, () => part), last].map((one) => readPercent(one)),
    );
  };

  it('knows equal parts that come to the limit exactly, and one part to either side, however they are divided', () => {
    fc.assert(
      fc.property(limitMillionths, fc.integer({ min: 2, max: 60 }), (millionths, count) => {
        const limit = picopercentFrom(millionths / 1e6);
        for (const [off, side] of [
          [0n, 0],
          [1n, 1],
          [-1n, -1],
        ] as const) {
          expect(comparePercent(equalParts(millionths, count, off), limit)).toBe(side);
          expect(compareSums(equalParts(millionths, count, off), readPercent(millionths / 1e6))).toBe(side);
        }
      }),
    );
  });

  it('keeps a quotient that comes out even as whole picopercent', () => {
    const third = new Quotient(1n, 3n, (parts) => exact(String(parts)).div(3));
    const quarter = new Quotient(1n, 4n, (parts) => exact(String(parts)).div(4));
    expect(readPercent(quarter).pico).toBe(25e10);
    expect(readPercent(third).pico).toBeNaN();
    expect(toFraction(readPercent(third))).toMatchObject({ numerator: 1n, denominator: 3n });
  });

  it('compares two sums on both sides of the last place', () => {
    expect(compareSums(sumOf('0.1', '0.2'), sumOf('0.3'))).toBe(0);
    expect(compareSums(sumOf('0.299999999999'), sumOf('0.3'))).toBe(-1);
    expect(compareSums(sumOf('0.30000000000000000001'), sumOf('0.3'))).toBe(1);
    expect(compareSums(sumOf('0.3'), sumOf('0.30000000000000000001'))).toBe(-1);
    expect(compareSums(sumOf('12'), sumOf('3'))).toBe(1);
  });
});
