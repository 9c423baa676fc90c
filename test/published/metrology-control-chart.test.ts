/**
 * Control charts against published data and printed results.
 *
 * Piston rings: Montgomery, Introduction to Statistical Quality Control, 2nd ed. 1991, pp. 206-213, 25 subgroups of 5
 * (data read; limits computed with the printed factors, tolerance 0.00002; the book rounds to 74.014, 73.988 and 0.049
 * from a mean range of 0.023, from memory). Chips: an exercise with its answer, tolerance 0.006. Single values and the
 * moving average: NIST/SEMATECH e-Handbook 6.3.2.2 and 6.3.2.4 (from memory), tolerance 0.00006 and 0.006.
 */
import { describe, expect, it } from 'vitest';
import { controlChartCalculation } from '../../src/catalogue/control-chart.ts';
import { must } from '../../src/core/problem.ts';
import { followDrift } from '../../src/core/weighing/index.ts';
import { controlChartFactors } from '../../src/reference/index.ts';

const PISTON_RINGS = [
  [74.03, 74.002, 74.019, 73.992, 74.008],
  [73.995, 73.992, 74.001, 74.011, 74.004],
  [73.988, 74.024, 74.021, 74.005, 74.002],
  [74.002, 73.996, 73.993, 74.015, 74.009],
  [73.992, 74.007, 74.015, 73.989, 74.014],
  [74.009, 73.994, 73.997, 73.985, 73.993],
  [73.995, 74.006, 73.994, 74.0, 74.005],
  [73.985, 74.003, 73.993, 74.015, 73.988],
  [74.008, 73.995, 74.009, 74.005, 74.004],
  [73.998, 74.0, 73.99, 74.007, 73.995],
  [73.994, 73.998, 73.994, 73.995, 73.99],
  [74.004, 74.0, 74.007, 74.0, 73.996],
  [73.983, 74.002, 73.998, 73.997, 74.012],
  [74.006, 73.967, 73.994, 74.0, 73.984],
  [74.012, 74.014, 73.998, 73.999, 74.007],
  [74.0, 73.984, 74.005, 73.998, 73.996],
  [73.994, 74.012, 73.986, 74.005, 74.007],
  [74.006, 74.01, 74.018, 74.003, 74.0],
  [73.984, 74.002, 74.003, 74.005, 73.997],
  [74.0, 74.01, 74.013, 74.02, 74.003],
  [73.988, 74.001, 74.009, 74.005, 73.996],
  [74.004, 73.999, 73.99, 74.006, 74.009],
  [74.01, 73.989, 73.99, 74.009, 74.014],
  [74.015, 74.008, 73.993, 74.0, 74.01],
  [73.982, 73.984, 73.995, 74.017, 74.013],
];

const chart = (kind: string, values: unknown) => must(controlChartCalculation.run({ kind, values }));
const isNear = (found: number, printed: number, tolerance: number) =>
  expect(Math.abs(found - printed)).toBeLessThanOrEqual(tolerance);
const RINGS = 2e-5;

describe('piston rings', () => {
  it('have the printed mean and range limits', () => {
    const found = chart('mean-range', PISTON_RINGS);
    isNear(found.centre, 74.001176, RINGS);
    isNear(found.upper, 74.01431, RINGS);
    isNear(found.lower, 73.98804, RINGS);
    isNear(found.spreadCentre, 0.02276, RINGS);
    isNear(found.spreadUpper, 0.04811, RINGS);
    expect(found.spreadLower).toBe(0);
    expect([found.outside, found.spreadOutside]).toEqual([[], []]);
  });

  it('agree with what the book rounds to', () => {
    const found = chart('mean-range', PISTON_RINGS);
    expect([found.upper.toFixed(3), found.lower.toFixed(3)]).toEqual(['74.014', '73.988']);
    const printed = Number(found.spreadCentre.toFixed(3)) * 2.114;
    isNear(printed, 0.049, 0.0005);
  });

  it('have the limits by standard deviation', () => {
    const found = chart('mean-deviation', PISTON_RINGS);
    isNear(found.spreadCentre, 0.00924, RINGS);
    isNear(found.upper, 74.01436, RINGS);
    isNear(found.lower, 73.98799, RINGS);
    isNear(found.spreadUpper, 0.019302, RINGS);
    expect(found.spreadLower).toBe(0);
  });

  it('have a standard deviation of 0.009785 by the ranges and 0.00983 by the deviations', () => {
    const five = controlChartFactors.find(({ subgroupSize }) => subgroupSize === 5)?.published;
    isNear(chart('mean-range', PISTON_RINGS).spreadCentre / (five?.d2 ?? 0), 0.009785, RINGS);
    isNear(chart('mean-deviation', PISTON_RINGS).spreadCentre / (five?.c4 ?? 0), 0.00983, RINGS);
  });

  it('has a subgroup outside as soon as one is moved by 0.02 mm', () => {
    const moved = PISTON_RINGS.map((group, index) =>
      index === 3 ? group.map((value) => value + 0.02) : group,
    );
    expect(chart('mean-range', moved).outside).toEqual([3]);
  });
});

it('bags of chips: mean 76 g, mean deviation 0.5 g of four, limits 75.19 g and 76.81 g', () => {
  // Four bags with the mean 76 and a standard deviation of just 0.5: squares of 0.75, 0.25, 0.25, 0.25 add up to 3 x 0.25.
  const bags = [76.75, 75.75, 75.75, 75.75];
  const found = chart('mean-deviation', [bags, bags]);
  expect([found.centre, found.spreadCentre]).toEqual([76, 0.5]);
  isNear(found.lower, 75.19, 0.006);
  isNear(found.upper, 76.81, 0.006);
});

it('flow of a batch process: single values 49.6 to 52.1, centre 50.81, limits 55.8041 and 45.8159', () => {
  const flow = [49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6, 52.1];
  const found = chart('individuals', flow);
  isNear(found.centre, 50.81, 0.00006);
  isNear(found.spreadCentre, 1.8778, 0.00006);
  isNear(found.upper, 55.8041, 0.00006);
  isNear(found.lower, 45.8159, 0.00006);
  expect(found.outside).toEqual([]);
});

it('exponentially weighted moving average: limits 52.5884 and 47.4115, and the averages as printed', () => {
  const values = [
    52, 47, 53, 49.3, 50.1, 47, 51, 50.1, 51.2, 50.5, 49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6,
    52.1,
  ];
  const printed = [
    50.6, 49.52, 50.56, 50.18, 50.16, 49.21, 49.75, 49.85, 50.26, 50.33, 50.11, 49.36, 49.52, 50.05, 49.38,
    49.92, 50.73, 51.23, 51.94, 51.99,
  ];
  const found = followDrift({ values, target: 50, standardDeviation: '2.0539', lambda: '0.3', width: 3 });
  expect(found.averages).toHaveLength(printed.length);
  for (const [place, average] of found.averages.entries())
    isNear(average.toNumber(), printed[place] ?? Number.NaN, 0.006);
  isNear(found.upper.toNumber(), 52.5884, 0.006);
  isNear(found.lower.toNumber(), 47.4115, 0.006);
  expect(found.outside).toEqual([]);
});
