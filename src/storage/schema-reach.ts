/** Devices of the workshop that reach its computer over the network, and the secrets of people. */
export type ReachTables = Record<never, never>;
