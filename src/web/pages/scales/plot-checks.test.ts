import { expect, it } from 'vitest';
import { plotChecks } from './plot-checks.ts';

const limits = { upper: 0.02, centre: 0, lower: -0.02 };

it('draws the earliest on the left, more above, the limits where they lie', () => {
  const picture = plotChecks([0, 0.01, -0.01], limits);
  expect(picture.dots.map(({ x }) => x)).toEqual([34, 360, 686]);
  expect(picture.upper).toBeLessThan(picture.centre);
  expect(picture.centre).toBeLessThan(picture.lower);
  expect(picture.dots[0]?.y).toBeCloseTo(picture.centre, 9);
  expect(picture.dots[1]?.y).toBeLessThan(picture.dots[2]?.y ?? 0);
});

it('keeps a check far beyond the limits in the picture, and draws one or none', () => {
  const { dots, height } = plotChecks([3], limits);
  expect(dots[0]?.y).toBeGreaterThan(0);
  expect(dots[0]?.y).toBeLessThan(height);
  expect(plotChecks([], { upper: 0, centre: 0, lower: 0 }).dots).toEqual([]);
});
