/** What was done while a tablet was away and could not be entered as it was sent. */
export type AwayTables = Record<never, never>;
