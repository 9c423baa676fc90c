import type { Kysely } from 'kysely';
import { makeTable } from '../make-table.ts';

export const RECORDS = ['fill_way', 'run_ready', 'tin_fate', 'run_count'] as const;

/** Containers, cleared area, how tins were weighed. */
export async function up(db: Kysely<never>): Promise<void> {
  await makeTable(db, 'fill_way', ['entry_id'], {
    entry_id: '-> entry.id',
    filling_run_id: '-> filling_run.id',
    way: 'text',
    tare_ug: 'integer?',
    tares: 'text',
    tare_spread_ug: 'integer?',
    error_ug: 'integer',
    aim_ug: 'integer',
  });
  await makeTable(db, 'run_ready', ['entry_id'], {
    entry_id: '-> entry.id',
    filling_run_id: '-> filling_run.id',
    kind: 'text',
    details: 'text',
  });
  await makeTable(db, 'tin_fate', ['entry_id'], { entry_id: '-> entry.id', fate: 'text' });
  await makeTable(db, 'run_count', ['entry_id', 'part'], {
    entry_id: '-> entry.id',
    filling_run_id: '-> filling_run.id',
    part: 'text',
    issued: 'integer?',
    used: 'integer',
    spoilt: 'integer',
    back: 'integer?',
  });
  // null: weighed before there were several ways, as its run was begun.
  for (const [column, kind] of [
    ['way', 'text'],
    ['error_ug', 'integer'],
    ['refill_of', 'text'],
    ['sure', 'text'],
  ] as const)
    await db.schema.alterTable('fill_weight').addColumn(column, kind).execute();
  for (const table of ['fill_way', 'run_ready', 'run_count'])
    await db.schema
      .createIndex(`${table}_of_run`)
      .on(table as never)
      .columns(['filling_run_id'] as never)
      .execute();
}
