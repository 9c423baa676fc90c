/** Steps begun, rounds of whipping, what was seen. */
export interface StepsTables {
  step_begun: StepBegunTable;
  whip_round: WhipRoundTable;
}

/** Of a step that is not whipped in rounds load is 1, and round too; what melts is held in a second one. */
export interface StepBegunTable {
  entry_id: string;
  batch_id: string;
  position: number;
  load: number;
  round: number;
  /** How long its timer runs, where that was chosen at the bench; null: as the method says. */
  minutes: string | null;
}

export interface WhipRoundTable {
  entry_id: string;
  batch_id: string;
  position: number;
  load: number;
  round: number;
  minutes: string | null;
  /** What it looked like: contract/steps. */
  looked: string;
  /** `on`: another round; `stop`: this load is whipped. */
  goes: string;
  celsius: string | null;
  /** JSON of the cups and tins that were weighed. */
  cups: string;
  remark: string;
}
