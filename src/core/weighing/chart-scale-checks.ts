import { must } from '../problem.ts';
import { type Exact, type ExactInput, exact, largest, ZERO } from '../quantity/index.ts';
import type { ChartTables } from './control-chart-factors.ts';
import { findControlChart } from './find-control-chart.ts';
import { followDrift } from './follow-drift.ts';

export interface ScaleChecks {
  /** Reading less weight of each check with the same weight, the earliest first, in grams. */
  readonly deviationsGrams: readonly ExactInput[];
  readonly limitGrams: ExactInput;
  readonly readabilityGrams: ExactInput;
}

export interface ScaleChart {
  /** checks: limits from how the checks themselves scatter; errors: what the scale may be wrong by. */
  readonly limitsFrom: 'checks' | 'errors';
  readonly centreGrams: Exact;
  readonly upperGrams: Exact;
  readonly lowerGrams: Exact;
  /** Beyond these limits; counted from 0. */
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
 * narrower than the scale's own step; else the limits of the check itself. A drift is followed from nought.
 * Source: findControlChart, followDrift; which of them when: common practice, no source.
 */
export function chartScaleChecks(checks: ScaleChecks, tables: ChartTables): ScaleChart {
  const { deviationsGrams, readabilityGrams } = checks;
  const limit = exact(checks.limitGrams);
  const isEnough = deviationsGrams.length >= ENOUGH_CHECKS;
  const chart = isEnough
    ? must(findControlChart({ kind: 'individuals', values: deviationsGrams }, tables))
    : undefined;
  const isDrifting = isDriftIn(checks, tables);
  if (!chart || chart.upper.minus(chart.centre).lt(readabilityGrams))
    return {
      limitsFrom: 'errors',
      centreGrams: ZERO,
      upperGrams: limit,
      lowerGrams: limit.negated(),
      outside: deviationsGrams.flatMap((each, place) => (exact(each).abs().gt(limit) ? [place] : [])),
      isDrifting,
    };
  return {
    limitsFrom: 'checks',
    centreGrams: chart.centre,
    upperGrams: chart.upper,
    lowerGrams: chart.lower,
    outside: chart.outside,
    isDrifting,
  };
}

function isDriftIn({ deviationsGrams, readabilityGrams }: ScaleChecks, tables: ChartTables): boolean {
  if (deviationsGrams.length < ENOUGH_CHECKS) return false;
  const { spreadCentre } = must(findControlChart({ kind: 'individuals', values: deviationsGrams }, tables));
  const d2 = tables.find(({ subgroupSize }) => subgroupSize === 2)?.d2 ?? 1;
  const deviation = largest(spreadCentre.div(d2), exact(readabilityGrams).times(FLOOR_IN_READABILITY));
  const drift = followDrift({ values: deviationsGrams, target: 0, standardDeviation: deviation, ...DRIFT });
  return drift.outside.includes(deviationsGrams.length - 1);
}
