import { must } from '../problem.ts';
import { type Exact, type ExactInput, exact, largest, ZERO } from '../quantity/index.ts';
import type { ChartTables } from './control-chart-factors.ts';
import { findControlChart } from './find-control-chart.ts';
import { followDrift } from './follow-drift.ts';

export interface ScaleCheckPoint {
  /** Reading less weight. */
  readonly deviationGrams: ExactInput;
  readonly isGood: boolean;
}

export interface ScaleChecks {
  /** Of checks with the same weight, the earliest first. */
  readonly points: readonly ScaleCheckPoint[];
  readonly limitGrams: ExactInput;
  readonly readabilityGrams: ExactInput;
}

export interface ScaleChart {
  /** checks: limits from how the checks themselves scatter; errors: what the scale may be wrong by. */
  readonly limitsFrom: 'checks' | 'errors';
  readonly centreGrams: Exact;
  readonly upperGrams: Exact;
  readonly lowerGrams: Exact;
  /** Not good, or beyond these limits; counted from 0. */
  readonly outside: readonly number[];
  /** The moving average of the checks has left its own limits: the scale drifts, though each check may be good. */
  readonly isDrifting: boolean;
}

/** Limits of fewer points are rough (common practice, no source). */
export const ENOUGH_CHECKS = 20;
/** Two readings that are each rounded to the step differ by 0.41 d: no scale scatters less. */
const FLOOR_IN_READABILITY = '0.41';
const DRIFT = { lambda: '0.2', width: 3 } as const;

/**
 * Chart of a scale's daily checks, in grams: chart of individuals once there are enough, and where their limits are no
 * narrower than the scale's own step; else the limits of the check itself. A check that was not good had a cause that
 * was looked for, and does not widen the limits. A drift is followed from nought.
 * Source: findControlChart, followDrift; which of them when: common practice, no source.
 */
export function chartScaleChecks(checks: ScaleChecks, tables: ChartTables): ScaleChart {
  const values = checks.points.flatMap(({ deviationGrams, isGood }) =>
    isGood ? [exact(deviationGrams)] : [],
  );
  const isEnough = values.length >= ENOUGH_CHECKS;
  const chart = isEnough ? must(findControlChart({ kind: 'individuals', values }, tables)) : undefined;
  const isByChecks = chart?.upper.minus(chart.centre).gte(checks.readabilityGrams) ?? false;
  const limit = exact(checks.limitGrams);
  const lines =
    chart && isByChecks
      ? { centreGrams: chart.centre, upperGrams: chart.upper, lowerGrams: chart.lower }
      : { centreGrams: ZERO, upperGrams: limit, lowerGrams: limit.negated() };
  return {
    ...lines,
    limitsFrom: isByChecks ? 'checks' : 'errors',
    outside: checks.points.flatMap(({ deviationGrams, isGood }, place) => {
      const off = exact(deviationGrams);
      return !isGood || off.gt(lines.upperGrams) || off.lt(lines.lowerGrams) ? [place] : [];
    }),
    isDrifting: chart !== undefined && isDriftIn(values, chart.spreadCentre, checks.readabilityGrams, tables),
  };
}

function isDriftIn(
  values: readonly Exact[],
  meanRange: Exact,
  readabilityGrams: ExactInput,
  tables: ChartTables,
): boolean {
  const d2 = tables.find(({ subgroupSize }) => subgroupSize === 2)?.d2 ?? 1;
  const standardDeviation = largest(meanRange.div(d2), exact(readabilityGrams).times(FLOOR_IN_READABILITY));
  return followDrift({ values, target: 0, standardDeviation, ...DRIFT }).outside.includes(values.length - 1);
}
