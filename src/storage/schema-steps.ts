/** Steps begun, rounds of whipping, what was seen. */
export type StepsTables = Record<never, never>;
