import type { Kysely } from 'kysely';

export const RECORDS = [] as const;

/** Containers, cleared area, how tins were weighed. */
export async function up(_db: Kysely<never>): Promise<void> {}
