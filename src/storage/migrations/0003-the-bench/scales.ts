import type { Kysely } from 'kysely';
import { makeTable } from '../make-table.ts';

export const RECORDS = ['scale_test', 'scale_check'] as const;

/** How a scale proved itself: ten weighings of a test, checks with a check weight. */
export async function up(db: Kysely<never>): Promise<void> {
  await makeTable(db, 'scale_test', ['entry_id'], {
    entry_id: '-> entry.id',
    scale_id: '-> scale.id',
    weight_grams: 'text',
    readings: 'text',
    readability_grams: 'text',
    deviation_grams: 'text',
  });
  await makeTable(db, 'scale_check', ['entry_id'], {
    entry_id: '-> entry.id',
    scale_id: '-> scale.id',
    checked_on: 'text',
    weight_grams: 'text',
    tolerance_grams: 'text',
    reading_grams: 'text',
    limit_grams: 'text',
    limit_by: 'text',
    is_good: 'integer',
    is_own_weight: 'integer',
  });
  // null: the workshop has no check weight for this scale.
  await db.schema.alterTable('scale').addColumn('check_weight_grams', 'text').execute();
  await db.schema.alterTable('scale').addColumn('check_tolerance_grams', 'text').execute();
  // null: the typed repeatability was there before it was kept when it was typed.
  await db.schema.alterTable('scale').addColumn('repeatability_at', 'text').execute();
}
