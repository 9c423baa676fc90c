/** How a scale proved itself: ten weighings of a test, checks with a check weight. */
export type ScalesTables = Record<never, never>;
