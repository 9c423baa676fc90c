import { describe, expect, it } from 'vitest';
import { normalQuantile } from './normal-quantile.ts';

describe('normal quantile', () => {
  // To three places: NIST/SEMATECH e-Handbook of Statistical Methods, table 1.3.6.7.2, whose last row is the normal
  // distribution (1.282, 1.645, 1.960, 2.326, 2.576, 3.090). The further places, and the value at 0.9999: from memory.
  it.each([
    [0.5, 0],
    [0.9, 1.281552],
    [0.95, 1.644854],
    [0.975, 1.959964],
    [0.99, 2.326348],
    [0.995, 2.575829],
    [0.999, 3.090232],
    [0.9999, 3.719016],
  ])('of %f is %f', (probability, quantile) => {
    expect(Math.abs(normalQuantile(probability) - quantile)).toBeLessThan(6e-7);
  });

  it('mirrors itself about one half', () => {
    expect(normalQuantile(0.025)).toBeCloseTo(-normalQuantile(0.975), 12);
  });

  it('is where the 3.72 of the target quantity comes from: 1 in 10 000', () => {
    expect(normalQuantile(0.9999).toFixed(2)).toBe('3.72');
  });

  it.each([0, 1, -1, Number.NaN])('throws for %f: a mistake of the caller', (probability) => {
    expect(() => normalQuantile(probability)).toThrow(RangeError);
  });
});
