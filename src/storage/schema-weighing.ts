/** Targets made anew while a batch is under way, weighings in parts, what was spilt. */
export interface WeighingTables {
  batch_resize: BatchResizeTable;
  batch_target: BatchTargetTable;
  addition_close: AdditionCloseTable;
  spill: SpillTable;
  without_recipe: WithoutRecipeTable;
}

/** The batch was made larger or smaller: its targets hold from here on, until it is struck or another comes. */
export interface BatchResizeTable {
  entry_id: string;
  batch_id: string;
  /** `over`, `under` or `wish`: too much or too little of one line, or somebody wanted it so. */
  cause: string;
  /** The line that was weighed too much or too little of. */
  position: number | null;
  planned_ug: number;
  /** JSON: how many of which product it is for now. */
  tins: string;
  reason: string;
}

/** What one line asks for, all of its weighings together, once the batch was made larger or smaller. */
export interface BatchTargetTable {
  entry_id: string;
  batch_id: string;
  position: number;
  exact_grams: string;
  target_ug: number;
  low_ug: number;
  high_ug: number;
  /** Of what is still to weigh. */
  scale_id: string | null;
  /** JSON, as of a line that was never resized. */
  weighing: string;
}

/** That is all there is: after this weighing nothing more is weighed at its position, though it was a part only. */
export interface AdditionCloseTable {
  entry_id: string;
  batch_id: string;
  position: number;
  after_entry_id: string;
}

/** Weighed out and spilt before it went in: out of the lot, and not in the bowl. */
export interface SpillTable {
  entry_id: string;
  batch_id: string;
  position: number;
  lot_id: string;
  spilt_ug: number;
  reason: string;
}

/** A batch that is weighed as its maker has it in the hands: the formula is written from it, line by line. */
export interface WithoutRecipeTable {
  entry_id: string;
  batch_id: string;
  formula_id: string;
  revision_id: string;
  /** 1: the first making, which writes the revision; 0: made again by hand, by a formula that stands. */
  is_first: number;
}
