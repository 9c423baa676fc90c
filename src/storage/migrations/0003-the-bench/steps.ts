import type { Kysely } from 'kysely';
import { letFilesBeEmptied } from '../../sqlite-only.ts';
import { makeTable } from '../make-table.ts';

export const RECORDS = ['step_begun', 'whip_round'] as const;

/** null: written before a method could say it. */
const METHOD_COLUMNS = [
  ['round_minutes', 'text'],
  ['rounds', 'integer'],
  ['grows_percent', 'text'],
  ['least_hours', 'text'],
  ['most_hours', 'text'],
] as const;

/** Steps begun, rounds of whipping, what was seen. */
export async function up(db: Kysely<never>): Promise<void> {
  for (const [column, kind] of METHOD_COLUMNS)
    await db.schema.alterTable('revision_step').addColumn(column, kind).execute();
  await makeTable(db, 'step_begun', ['entry_id'], {
    entry_id: '-> entry.id',
    batch_id: '-> batch.id',
    position: 'integer',
    load: 'integer',
    round: 'integer',
    minutes: 'text?',
  });
  await makeTable(db, 'whip_round', ['entry_id'], {
    entry_id: '-> entry.id',
    batch_id: '-> batch.id',
    position: 'integer',
    load: 'integer',
    round: 'integer',
    minutes: 'text?',
    looked: 'text',
    goes: 'text',
    celsius: 'text?',
    cups: 'text',
    remark: 'text',
  });
  await letFilesBeEmptied(db);
  for (const table of RECORDS)
    await db.schema.createIndex(`${table}_by_batch_id`).on(table).columns(['batch_id']).execute();
}
