import { describe, expect, it } from 'vitest';
import { chartTables } from '../../catalogue/index.ts';
import { chartScaleChecks } from './chart-scale-checks.ts';

const swing = (count: number, at = 0) =>
  Array.from({ length: count }, (_, index) => ((index % 3) - 1) / 100 + at);
const chart = (deviationsGrams: readonly number[], limitGrams = '0.02') =>
  chartScaleChecks(
    {
      points: deviationsGrams.map((deviationGrams) => ({
        deviationGrams,
        isGood: Math.abs(deviationGrams) <= Number(limitGrams),
      })),
      limitGrams,
      readabilityGrams: '0.01',
    },
    chartTables,
  );

describe('the chart of a scale’s checks', () => {
  it('has the limits of the check until there are twenty, and then those of the checks themselves', () => {
    expect(chart(swing(19))).toMatchObject({ limitsFrom: 'errors', isDrifting: false });
    expect(chart(swing(19)).upperGrams.toFixed()).toBe('0.02');
    expect(chart(swing(20)).limitsFrom).toBe('checks');
  });

  it('keeps the limits of the check where all read the same: a line is no limit', () => {
    const found = chart(Array.from({ length: 30 }, () => 0));
    expect(found).toMatchObject({ limitsFrom: 'errors', outside: [], isDrifting: false });
  });

  it('tells a check that was not good, which does not widen the limits, and one beyond its limits', () => {
    const found = chart([...swing(18), 0.2, ...swing(6)]);
    expect(found.outside).toEqual([18]);
    expect(found.upperGrams.eq(chart(swing(24)).upperGrams)).toBe(true);
    expect(chart([...swing(21), 0.05], '0.06').outside).toEqual([21]);
    expect(chart([0, 0.02, 0.021, -0.021]).outside).toEqual([2, 3]);
  });

  it('sees a drift that each single check hides', () => {
    const drifting = [...swing(15), ...swing(15, 0.02)];
    expect(chart(drifting, '0.04')).toMatchObject({ outside: [], isDrifting: true });
    expect(chart(swing(30)).isDrifting).toBe(false);
  });

  it('of nothing has its limits and nothing beyond them', () => {
    expect(chart([])).toMatchObject({ limitsFrom: 'errors', outside: [], isDrifting: false });
  });
});
