import { z } from 'zod';
import { done, problem, type Result, refused } from '../core/problem.ts';
import { type ChartWish, findControlChart } from '../core/weighing/index.ts';
import { chartTables } from './chart-tables.ts';
import { defineCalculation } from './define-calculation.ts';
import { asNumber } from './measured-fields.ts';

/** Grams, either way from nought: a tonne is more than any weighing of a workshop (common practice, no source). */
const FARTHEST = 1_000_000;
/** More readings than a chart shows apart; the answer comes at once all the same (common practice, no source). */
const MOST = 10_000;
const value = z.number().min(-FARTHEST).max(FARTHEST);

const input = z.strictObject({
  kind: z
    .enum(['individuals', 'mean-range', 'mean-deviation'])
    .describe(
      'individuals with moving ranges; means of subgroups with ranges; means with standard deviations',
    ),
  values: z
    .array(z.union([value, z.array(value).max(MOST)]))
    .max(MOST)
    .describe('In the order in which they came: single values, or equal subgroups of 2 to 25'),
});

/** Single values for the chart of individuals, lists for the others: a mixture is told by its place. */
function readWish({ kind, values }: z.output<typeof input>): Result<ChartWish> {
  const singles: number[] = [];
  const groups: number[][] = [];
  for (const [place, each] of values.entries()) {
    if (Array.isArray(each) !== (kind !== 'individuals'))
      return refused(
        problem(kind === 'individuals' ? 'chart-wants-values' : 'chart-wants-subgroups', `values[${place}]`, {
          found: JSON.stringify(each).slice(0, 60),
        }),
      );
    if (Array.isArray(each)) groups.push(each);
    else singles.push(each);
  }
  return done(kind === 'individuals' ? { kind, values: singles } : { kind, values: groups });
}

export const controlChartCalculation = defineCalculation({
  name: 'control-chart',
  title: 'Control chart',
  summary:
    'Centre and limits of a control chart and of its spread, in the unit of the values, and which of them lie beyond.',
  equation:
    'individuals: mean +- 3 MR / 1.128, moving ranges 0 to 3.267 MR; mean-range: grand mean +- A2 R, ranges D3 R to D4 R; mean-deviation: grand mean +- A3 s, deviations B3 s to B4 s; MR, R, s: the means; s with divisor n - 1',
  validRange:
    'Two values or more; equal subgroups of 2 to 25. Limits of fewer than about 20 points are rough. Exact: a point just on a limit is not beyond it.',
  sources: [
    { text: 'Factors A2, A3, B3, B4, D3, D4 as printed in textbook tables', confidence: 'read' },
    { text: 'NIST/SEMATECH e-Handbook 6.3.2.2: individuals and moving range', confidence: 'memory' },
  ],
  input,
  output: z.strictObject({
    centre: z.number().describe('Centre line: mean, or mean of the subgroups’ means'),
    upper: z.number().describe('Upper limit'),
    lower: z.number().describe('Lower limit'),
    spreadCentre: z.number().describe('Mean moving range, mean range or mean standard deviation'),
    spreadUpper: z.number().describe('Upper limit of the spread'),
    spreadLower: z.number().describe('Lower limit of the spread'),
    outside: z.array(z.number()).describe('Values or subgroups beyond the limits, counted from 0'),
    spreadOutside: z
      .array(z.number())
      .describe('Ranges or deviations beyond theirs, counted from 0; moving range 0: first to second value'),
  }),
  example: {
    input: {
      kind: 'mean-range',
      values: [
        [10, 12],
        [11, 12],
        [10, 11],
      ],
    },
    output: {
      centre: 11,
      upper: 13.506666666666666,
      lower: 8.493333333333334,
      spreadCentre: 1.3333333333333333,
      spreadUpper: 4.356,
      spreadLower: 0,
      outside: [],
      spreadOutside: [],
    },
  },
  compute(asked) {
    const wish = readWish(asked);
    if (!wish.ok) return wish;
    const chart = findControlChart(wish.value, chartTables);
    if (!chart.ok) return chart;
    const { outside, spreadOutside, ...lines } = chart.value;
    return done({
      centre: asNumber(lines.centre),
      upper: asNumber(lines.upper),
      lower: asNumber(lines.lower),
      spreadCentre: asNumber(lines.spreadCentre),
      spreadUpper: asNumber(lines.spreadUpper),
      spreadLower: asNumber(lines.spreadLower),
      outside: [...outside],
      spreadOutside: [...spreadOutside],
    });
  },
});
