import { expect, it } from 'vitest';
import { studentQuantile } from './student-quantile.ts';

// Quantiles of Student's distribution to four places, as any table of them prints.
it.each([
  [0.95, 1, 6.3138],
  [0.975, 2, 4.3027],
  [0.99, 3, 4.5407],
  [0.995, 10, 3.1693],
  [0.975, 29, 2.0452],
  [0.5, 7, 0],
])('t(%f; %i) is %f', (probability, degrees, quantile) => {
  expect(Math.abs(studentQuantile(probability, degrees) - quantile)).toBeLessThan(0.00006);
});

it('throws outside of its range: a mistake of the caller', () => {
  expect(() => studentQuantile(0.4, 5)).toThrow(RangeError);
  expect(() => studentQuantile(1, 5)).toThrow(RangeError);
});
