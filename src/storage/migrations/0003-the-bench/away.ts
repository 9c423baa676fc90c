import type { Kysely } from 'kysely';
import { makeTable } from '../make-table.ts';

export const RECORDS = ['claim', 'claim_answer'] as const;

/** What was done while a tablet was away and could not be entered as it was sent. */
export async function up(db: Kysely<never>): Promise<void> {
  await makeTable(db, 'claim', ['entry_id'], {
    entry_id: '-> entry.id',
    kept_id: 'text',
    route: 'text',
    subject_kind: 'text',
    subject_id: 'text',
    happened_at: 'text',
    by_id: 'text',
    device: 'text',
    request: 'text',
    problems: 'text',
  });
  await makeTable(db, 'claim_answer', ['entry_id'], {
    entry_id: '-> entry.id',
    claim_entry_id: '-> claim.entry_id',
    answer: 'text',
    reason: 'text',
  });
  await db.schema.createIndex('claim_once').unique().on('claim').column('kept_id').execute();
  await db.schema
    .createIndex('claim_answered_once')
    .unique()
    .on('claim_answer')
    .column('claim_entry_id')
    .execute();
  await db.schema
    .createIndex('claim_by_subject')
    .on('claim')
    .columns(['subject_kind', 'subject_id'])
    .execute();
}
