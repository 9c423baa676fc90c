import type { Kysely } from 'kysely';

export const RECORDS = [] as const;

/** Steps begun, rounds of whipping, what was seen. */
export async function up(_db: Kysely<never>): Promise<void> {}
