/** Factors of one size of subgroup, as the printed tables call them. */
export interface ChartFactors {
  readonly subgroupSize: number;
  readonly A2: number;
  readonly A3: number;
  readonly B3: number;
  readonly B4: number;
  readonly d2: number;
  readonly D3: number;
  readonly D4: number;
}

export type ChartTables = readonly ChartFactors[];
