/** How tins of a run are weighed from this entry on; the latest counts. The first stands with the run's own entry. */
export interface FillWayTable {
  entry_id: string;
  filling_run_id: string;
  /** mean, own or net. */
  way: string;
  /** What is taken off each tin: the mean of empty ones; nought where the scale was tared; null: each tin its own. */
  tare_ug: number | null;
  /** JSON: empty tins as they were weighed, in grams. */
  tares: string;
  /** Standard deviation of the empty tins; null: they were not weighed one by one. */
  tare_spread_ug: number | null;
  /** Worst error of a net weight: of the scale, and of a tin's tare beside the mean. */
  error_ug: number;
  aim_ug: number;
}

/** What was made ready before the first tin: containers cleaned, area cleared, pieces counted out. */
export interface RunReadyTable {
  entry_id: string;
  filling_run_id: string;
  /** containers, area or issued. */
  kind: string;
  /** JSON of contract/filling. */
  details: string;
}

/** What became of a tin that was taken out: beside its strike. */
export interface TinFateTable {
  entry_id: string;
  /** bowl, trial, binned or slip. */
  fate: string;
}

/** Pieces of one part as they were counted when the run was closed. */
export interface RunCountTable {
  entry_id: string;
  filling_run_id: string;
  /** tin, lid or label. */
  part: string;
  /** null: nobody counted them out. */
  issued: number | null;
  used: number;
  spoilt: number;
  /** null: nobody counted what went back. */
  back: number | null;
}

/** Containers, cleared area, how tins were weighed. */
export interface FillingTables {
  fill_way: FillWayTable;
  run_ready: RunReadyTable;
  tin_fate: TinFateTable;
  run_count: RunCountTable;
}
