/**
 * Tolerable negative errors against published and computed values.
 *
 * Published: a 250 g pack has 9 g (UK trading standards, quoted by the US Metric Association), 500 g has 15 g and
 * 3000 g has 45 g (guide to the average quantity system in Australia); largest measuring errors of NI 2011/331,
 * Schedule 2. Computed by hand from the table of Directive 76/211/EEC: the spot values. Tolerance: none, all exact.
 */
import { describe, expect, it } from 'vitest';
import { tolerableErrorCalculation } from '../../src/catalogue/tolerable-error.ts';
import { must } from '../../src/core/problem.ts';
import { measuringErrorRules } from '../../src/reference/index.ts';

const answerFor = (nominal: number, rounding: 'up-0.1' | 'r87' = 'up-0.1') =>
  must(tolerableErrorCalculation.run({ nominal, unit: 'g', rounding }));

/** Nominal, error, limit 1, limit 2, error by R 87, largest measuring error; g or ml. */
const SPOT_VALUES: readonly (readonly [number, number, number, number, number, number])[] = [
  [5, 0.5, 4.5, 4, 0.5, 0.1],
  [7, 0.7, 6.3, 5.6, 0.7, 0.14],
  [10, 0.9, 9.1, 8.2, 0.9, 0.18],
  [15, 1.4, 13.6, 12.2, 1.4, 0.28],
  [20, 1.8, 18.2, 16.4, 1.8, 0.36],
  [25, 2.3, 22.7, 20.4, 2.3, 0.46],
  [28, 2.6, 25.4, 22.8, 2.6, 0.52],
  [30, 2.7, 27.3, 24.6, 2.7, 0.54],
  [35, 3.2, 31.8, 28.6, 3.2, 0.64],
  [40, 3.6, 36.4, 32.8, 3.6, 0.72],
  [45, 4.1, 40.9, 36.8, 4.1, 0.82],
  [50, 4.5, 45.5, 41, 4.5, 0.9],
  [60, 4.5, 55.5, 51, 4.5, 0.9],
  [75, 4.5, 70.5, 66, 4.5, 0.9],
  [90, 4.5, 85.5, 81, 4.5, 0.9],
  [100, 4.5, 95.5, 91, 4.5, 0.9],
  [110, 5, 105, 100, 5, 1],
  [115, 5.2, 109.8, 104.6, 5.2, 1.04],
  [118, 5.4, 112.6, 107.2, 5.4, 1.08],
  [120, 5.4, 114.6, 109.2, 5.4, 1.08],
  [125, 5.7, 119.3, 113.6, 5.7, 1.14],
  [130, 5.9, 124.1, 118.2, 5.9, 1.18],
  [150, 6.8, 143.2, 136.4, 6.8, 1.36],
  [170, 7.7, 162.3, 154.6, 7.7, 1.54],
  [175, 7.9, 167.1, 159.2, 7.9, 1.58],
  [180, 8.1, 171.9, 163.8, 8.1, 1.62],
  [190, 8.6, 181.4, 172.8, 8.6, 1.72],
  [200, 9, 191, 182, 9, 1.8],
  [220, 9, 211, 202, 9, 1.8],
  [225, 9, 216, 207, 9, 1.8],
  [250, 9, 241, 232, 9, 1.8],
  [300, 9, 291, 282, 9, 1.8],
  [310, 9.3, 300.7, 291.4, 9.3, 1.86],
  [330, 9.9, 320.1, 310.2, 9.9, 1.98],
  [340, 10.2, 329.8, 319.6, 10.2, 2.04],
  [350, 10.5, 339.5, 329, 10.5, 2.1],
  [375, 11.3, 363.7, 352.4, 11.3, 2.26],
  [400, 12, 388, 376, 12, 2.4],
  [450, 13.5, 436.5, 423, 13.5, 2.7],
  [500, 15, 485, 470, 15, 3],
  [750, 15, 735, 720, 15, 3],
  [1000, 15, 985, 970, 15, 3],
  [1100, 16.5, 1083.5, 1067, 17, 3.3],
  [1250, 18.8, 1231.2, 1212.4, 19, 3.76],
  [1500, 22.5, 1477.5, 1455, 23, 4.5],
  [2000, 30, 1970, 1940, 30, 6],
  [2500, 37.5, 2462.5, 2425, 38, 7.5],
  [5000, 75, 4925, 4850, 75, 15],
  [10000, 150, 9850, 9700, 150, 30],
  [12000, 150, 11850, 11700, 150, 30],
  [15000, 150, 14850, 14700, 150, 30],
  [20000, 200, 19800, 19600, 200, 40],
  [25000, 250, 24750, 24500, 250, 50],
];

describe('tolerable error, published and computed values', () => {
  it.each([
    { nominal: 250, error: 9, source: 'UK trading standards' },
    { nominal: 500, error: 15, source: 'Australian guide, butter' },
    { nominal: 3000, error: 45, source: 'Australian guide, potatoes' },
  ])('gives $error g for $nominal g ($source)', ({ nominal, error }) => {
    expect(answerFor(nominal).tolerableError).toBe(error);
  });

  it('agrees with every spot value worked out from the table', () => {
    const found = SPOT_VALUES.map(([nominal]) => {
      const { tolerableError, limit1, limit2, largestMeasuringError } = answerFor(nominal);
      return [
        nominal,
        tolerableError,
        limit1,
        limit2,
        answerFor(nominal, 'r87').tolerableError,
        largestMeasuringError,
      ];
    });
    expect(found).toEqual(SPOT_VALUES);
  });

  it('agrees with the largest measuring errors printed beside the rule of a fifth', () => {
    const examples = measuringErrorRules.flatMap((rule) => rule.examples);
    expect(examples).toHaveLength(6);
    for (const { nominalGrams, largestMeasuringErrorGrams } of examples) {
      expect(answerFor(nominalGrams).largestMeasuringError).toBe(largestMeasuringErrorGrams);
    }
  });

  it('rounds a percentage above 15 kg up exactly, where binary arithmetic is 0.1 too high', () => {
    expect(Math.ceil(0.01 * 15_020 * 10) / 10).toBe(150.3);
    expect(answerFor(15_020).tolerableError).toBe(150.2);
  });
});
