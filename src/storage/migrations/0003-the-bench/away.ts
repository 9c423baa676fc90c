import type { Kysely } from 'kysely';

export const RECORDS = [] as const;

/** What was done while a tablet was away and could not be entered as it was sent. */
export async function up(_db: Kysely<never>): Promise<void> {}
