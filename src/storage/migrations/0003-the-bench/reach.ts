import type { Kysely } from 'kysely';

export const RECORDS = [] as const;

/** Devices of the workshop that reach its computer over the network, and the secrets of people. */
export async function up(_db: Kysely<never>): Promise<void> {}
