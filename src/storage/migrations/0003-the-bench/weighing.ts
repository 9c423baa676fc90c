import type { Kysely } from 'kysely';

export const RECORDS = [] as const;

/** Targets made anew while a batch is under way, weighings in parts, makings without a recipe. */
export async function up(_db: Kysely<never>): Promise<void> {}
