/** What was done while a tablet was away and could not be entered as it was sent. */
export interface AwayTables {
  claim: ClaimTable;
  claim_answer: ClaimAnswerTable;
}

/** A request of the bench that was refused when it came late: the whole of it, so that nothing is thrown away. */
export interface ClaimTable {
  entry_id: string;
  /** The id of its own stamp: the same is kept once, however often it is sent. */
  kept_id: string;
  route: string;
  /** `batch`, `filling-run` or `workshop`; what it names may be gone, so nothing refers to it. */
  subject_kind: string;
  subject_id: string;
  happened_at: string;
  by_id: string;
  device: string;
  /** JSON of parameters and body, as they came. */
  request: string;
  /** JSON of the problems with which it was refused. */
  problems: string;
}

export interface ClaimAnswerTable {
  entry_id: string;
  claim_entry_id: string;
  /** `entered` or `aside`. */
  answer: string;
  reason: string;
}
