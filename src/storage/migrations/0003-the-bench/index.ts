import type { Kysely } from 'kysely';
import { makeAppendOnly } from '../../sqlite-only.ts';
import * as away from './away.ts';
import * as filling from './filling.ts';
import * as reach from './reach.ts';
import * as scales from './scales.ts';
import * as steps from './steps.ts';
import * as weighing from './weighing.ts';

const PARTS = [reach, scales, weighing, away, steps, filling];

export const RECORDS: readonly string[] = PARTS.flatMap((part) => part.RECORDS);

/** The bench: who reaches it, what its scales can do, what is done there. */
export async function up(db: Kysely<never>): Promise<void> {
  for (const part of PARTS) await part.up(db);
  for (const table of RECORDS) await makeAppendOnly(db, table);
}
