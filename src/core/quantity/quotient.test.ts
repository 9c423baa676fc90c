import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { exact } from './exact.ts';
import { Quotient } from './quotient.ts';

const halves = (numerator: bigint) => new Quotient(numerator, 2n, (parts) => exact(String(parts)).div(2));

describe('a quotient that is divided when asked', () => {
  it('is near as a double and exact as a decimal', () => {
    expect(halves(3n).near).toBe(1.5);
    expect(halves(3n).toExact().toFixed()).toBe('1.5');
  });

  it('is nought where the numerator is', () => {
    expect(halves(0n).near).toBe(0);
    expect(halves(0n).toExact().isZero()).toBe(true);
  });

  it('strays from the exact value by less than the stated error, whatever the size of the numbers', () => {
    const whole = fc.bigInt({ min: 1n, max: 10n ** 30n });
    fc.assert(
      fc.property(whole, whole, (numerator, denominator) => {
        const divided = exact(String(numerator)).div(String(denominator));
        const { near } = new Quotient(numerator, denominator, () => divided);
        expect(exact(near).div(divided).minus(1).abs().lte(exact(2).pow(-52).times(1.5))).toBe(true);
      }),
    );
  });
});
