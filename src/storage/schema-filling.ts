/** Containers, cleared area, how tins were weighed. */
export type FillingTables = Record<never, never>;
