/** How a scale proved itself: ten weighings of a test, checks with a check weight. */
export interface ScalesTables {
  scale_test: ScaleTestTable;
  scale_check: ScaleCheckTable;
}

/** One weight put on and off. */
export interface ScaleTestTable {
  entry_id: string;
  scale_id: string;
  /** About what the weight is said to weigh. */
  weight_grams: string;
  /** JSON list of the readings in grams, as decimal text, in the order in which they came. */
  readings: string;
  /** What the scale showed in steps of then: another step is another scale. */
  readability_grams: string;
  /** Standard deviation with divisor n - 1, in grams. */
  deviation_grams: string;
}

export interface ScaleCheckTable {
  entry_id: string;
  scale_id: string;
  /** Day of the workshop. */
  checked_on: string;
  weight_grams: string;
  tolerance_grams: string;
  reading_grams: string;
  /** What the reading might differ from the weight, and what decided that. */
  limit_grams: string;
  limit_by: string;
  is_good: number;
  /** 1: with the weight that the scale is checked with. Another one may hold the scale, and never frees it. */
  is_own_weight: number;
}
