import type { ChartTables } from '../core/weighing/index.ts';
import { controlChartFactors } from '../reference/index.ts';

/** The factors as they are printed: what a reader with the table in hand would take. */
export const chartTables: ChartTables = controlChartFactors.map(({ subgroupSize, published }) => ({
  subgroupSize,
  A2: published.A2,
  A3: published.A3,
  B3: published.B3,
  B4: published.B4,
  d2: published.d2,
  D3: published.D3,
  D4: published.D4,
}));
