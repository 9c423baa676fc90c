import { describe, expect, it } from 'vitest';
import { expectSoundTable } from '../../../test/tables/expect-sound-table.ts';
import {
  controlChartFactors,
  controlChartFormulas,
  controlChartSources,
  normalQuantiles,
  runRules,
  studentQuantiles,
  toleranceFactors,
} from './control-charts-2026.ts';

describe('the tables of control charts', () => {
  it('have 94 rows in six tables, each with its source', () => {
    const tables = [
      [controlChartFactors, 24],
      [controlChartFormulas, 6],
      [runRules, 4],
      [normalQuantiles, 8],
      [studentQuantiles, 38],
      [toleranceFactors, 14],
    ] as const;
    for (const [rows, count] of tables) {
      expect(rows).toHaveLength(count);
      expectSoundTable(rows, controlChartSources);
    }
  });

  it('have a row for each size of subgroup from 2 to 25', () => {
    expect(controlChartFactors.map(({ subgroupSize }) => subgroupSize)).toEqual(
      Array.from({ length: 24 }, (_, index) => index + 2),
    );
  });

  it('print what the definitions give, to a thousandth and half the last digit', () => {
    for (const { published, computed } of controlChartFactors) {
      for (const name of ['A2', 'A3', 'c4', 'B3', 'B4', 'B5', 'B6', 'd2', 'D3', 'D4'] as const)
        expect(Math.abs(published[name] - computed[name])).toBeLessThanOrEqual(0.0011);
    }
  });

  it('agree among themselves: with A = 3 / sqrt n, A2 = A / d2, A3 = A / c4, D4 = 1 + 3 d3 / d2, B4 = 1 + 3 sqrt(1 - c4^2) / c4', () => {
    for (const { subgroupSize, computed } of controlChartFactors) {
      const { A2, A3, B4, D4, c4, d2, d3 } = computed;
      const A = 3 / Math.sqrt(subgroupSize);
      expect(A2).toBeCloseTo(A / d2, 5);
      expect(A3).toBeCloseTo(A / c4, 5);
      expect(D4).toBeCloseTo(1 + (3 * d3) / d2, 4);
      expect(B4).toBeCloseTo(1 + (3 * Math.sqrt(1 - c4 ** 2)) / c4, 4);
    }
  });

  it('fall or rise as the subgroup grows', () => {
    for (const [index, { published }] of controlChartFactors.entries()) {
      const before = controlChartFactors[index - 1]?.published;
      if (!before) continue;
      expect(published.A2).toBeLessThan(before.A2);
      expect(published.A3).toBeLessThan(before.A3);
      expect(published.d2).toBeGreaterThan(before.d2);
      expect(published.D3).toBeGreaterThanOrEqual(before.D3);
      expect(published.D4).toBeLessThan(before.D4);
    }
  });

  it('have quantiles that grow with the probability and fall with the degrees of freedom', () => {
    for (const [index, { probability, quantile }] of normalQuantiles.entries()) {
      expect(quantile).toBeGreaterThan(normalQuantiles[index - 1]?.quantile ?? 0);
      expect(probability).toBeLessThan(1);
    }
    for (const [index, { quantiles }] of studentQuantiles.entries()) {
      expect(quantiles['0.995']).toBeLessThan(studentQuantiles[index - 1]?.quantiles['0.995'] ?? Number.POSITIVE_INFINITY);
    }
  });
});
