import { done, problem, type Result, refused } from '../problem.ts';
import { type Exact, type ExactInput, exact, sumOf } from '../quantity/index.ts';
import type { ChartFactors, ChartTables } from './control-chart-factors.ts';

export type ChartWish =
  | { readonly kind: 'individuals'; readonly values: readonly ExactInput[] }
  | { readonly kind: 'mean-range' | 'mean-deviation'; readonly values: readonly (readonly ExactInput[])[] };

export interface ControlChart {
  readonly centre: Exact;
  readonly upper: Exact;
  readonly lower: Exact;
  readonly spreadCentre: Exact;
  readonly spreadUpper: Exact;
  readonly spreadLower: Exact;
  /** Values, or subgroups, beyond the limits; counted from 0. One just on a limit is not beyond it. */
  readonly outside: readonly number[];
  /** Beyond the limits of the spread: moving ranges (0: from the first value to the second), or subgroups. */
  readonly spreadOutside: readonly number[];
}

/**
 * Control chart of single values with their moving ranges, or of subgroups with their ranges or standard deviations.
 *
 * Equations: individuals: mean +- 3 MR / d2 of two, moving ranges 0 to D4 MR. Subgroups: grand mean +- A2 R, ranges
 * D3 R to D4 R; or grand mean +- A3 s, deviations B3 s to B4 s (divisor n - 1). MR, R and s are the means.
 * Units: those of the values. Valid range: two values or more; equal subgroups of 2 to 25.
 * Source: printed factors (control-charts-2026); the chart of individuals from memory. Factors are taken as printed.
 */
export function findControlChart(wish: ChartWish, tables: ChartTables): Result<ControlChart> {
  return wish.kind === 'individuals'
    ? chartIndividuals(wish.values, tables)
    : chartSubgroups(wish.kind, wish.values, tables);
}

const factorsOf = (tables: ChartTables, size: number): ChartFactors | undefined =>
  tables.find(({ subgroupSize }) => subgroupSize === size);

function chartIndividuals(values: readonly ExactInput[], tables: ChartTables): Result<ControlChart> {
  const factors = factorsOf(tables, 2);
  if (!factors) throw new Error('the tables lack the factors of two');
  if (values.length < 2)
    return refused(problem('chart-too-few', 'values', { found: values.length, allowed: 2 }));
  const points = values.map(exact);
  const ranges = points.slice(1).map((value, index) => value.minus(points[index] ?? value).abs());
  // 3 / d2 has no end as a decimal: what is compared is multiplied by d2 instead.
  return done(
    drawChart(points, ranges, {
      reach: exact(3),
      reachOver: exact(factors.d2),
      least: exact(factors.D3),
      most: exact(factors.D4),
    }),
  );
}

function chartSubgroups(
  kind: 'mean-range' | 'mean-deviation',
  groups: readonly (readonly ExactInput[])[],
  tables: ChartTables,
): Result<ControlChart> {
  const size = groups[0]?.length ?? 0;
  if (groups.length === 0) return refused(problem('chart-too-few', 'values', { found: 0, allowed: 1 }));
  const odd = groups.findIndex((group) => group.length !== size);
  if (odd >= 0)
    return refused(
      problem('subgroups-not-equal', `values[${odd}]`, { found: groups[odd]?.length ?? 0, allowed: size }),
    );
  const factors = factorsOf(tables, size);
  if (!factors)
    return refused(
      problem('subgroup-size-not-in-table', 'values', {
        found: size,
        allowed: `${tables[0]?.subgroupSize ?? 0} to ${tables.at(-1)?.subgroupSize ?? 0}`,
      }),
    );
  const isRange = kind === 'mean-range';
  return done(
    drawChart(
      // Sums instead of means: a third of three readings has no end as a decimal.
      groups.map((group) => sumOf(group)),
      groups.map((group) => (isRange ? rangeOf(group) : deviationOf(group))),
      {
        reach: exact(isRange ? factors.A2 : factors.A3).times(size),
        reachOver: exact(1),
        least: exact(isRange ? factors.D3 : factors.B3),
        most: exact(isRange ? factors.D4 : factors.B4),
        size,
      },
    ),
  );
}

function rangeOf(group: readonly ExactInput[]): Exact {
  const values = group.map(exact);
  return values
    .reduce((most, value) => (value.gt(most) ? value : most))
    .minus(values.reduce((least, value) => (value.lt(least) ? value : least)));
}

function deviationOf(group: readonly ExactInput[]): Exact {
  const count = group.length;
  const squares = sumOf(group.map((value) => exact(value).pow(2)));
  return squares
    .times(count)
    .minus(sumOf(group).pow(2))
    .div(count * (count - 1))
    .sqrt();
}

interface Reach {
  /** Mean spread times reach / reachOver is what a point (a sum, where it stands for a subgroup) may differ. */
  readonly reach: Exact;
  readonly reachOver: Exact;
  readonly least: Exact;
  readonly most: Exact;
  /** How many readings a point is the sum of. */
  readonly size?: number;
}

function drawChart(points: readonly Exact[], spreads: readonly Exact[], reached: Reach): ControlChart {
  const { reach, reachOver, least, most, size = 1 } = reached;
  const total = sumOf(points);
  const spreadTotal = sumOf(spreads);
  const centre = total.div(points.length);
  const spreadCentre = spreadTotal.div(spreads.length);
  const half = spreadCentre.times(reach).div(reachOver);
  const allowed = spreadTotal.times(reach).times(points.length);
  return {
    centre: centre.div(size),
    upper: centre.plus(half).div(size),
    lower: centre.minus(half).div(size),
    spreadCentre,
    spreadUpper: spreadCentre.times(most),
    spreadLower: spreadCentre.times(least),
    outside: placesOf(points, (point) =>
      point.times(points.length).minus(total).abs().times(reachOver).times(spreads.length).gt(allowed),
    ),
    spreadOutside: placesOf(spreads, (spread) => {
      const scaled = spread.times(spreads.length);
      return scaled.gt(spreadTotal.times(most)) || scaled.lt(spreadTotal.times(least));
    }),
  };
}

const placesOf = (values: readonly Exact[], isOutside: (value: Exact) => boolean): number[] =>
  values.flatMap((value, place) => (isOutside(value) ? [place] : []));
