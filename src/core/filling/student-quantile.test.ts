import { expect, it } from 'vitest';
import { studentQuantile } from './student-quantile.ts';

// To three places: NIST/SEMATECH e-Handbook of Statistical Methods, table 1.3.6.7.2, critical values of Student's t
// (6.314, 4.303, 4.541, 3.169, 2.045). The fourth place: from memory. The median is nought by symmetry.
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
