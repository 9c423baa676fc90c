import type { Kysely } from 'kysely';
import { makeAppendOnly } from '../sqlite-only.ts';
import { makeTable } from './make-table.ts';

export const RECORDS = [
  'lot_certificate',
  'complaint',
  'complaint_word',
  'label_count',
  'attachment_link',
] as const;

/** What a supplier's paper says of one lot, what customers said of a product, what became of labels, what lies with what. */
async function makeRecords(db: Kysely<never>): Promise<void> {
  await makeTable(db, 'lot_certificate', ['entry_id'], {
    entry_id: '-> entry.id',
    lot_id: '-> lot.id',
    reference: 'text',
    dated_on: 'text?',
    details: 'text',
    attachment_id: '->? attachment.id',
  });
  await makeTable(db, 'complaint', ['id'], {
    id: 'text',
    entry_id: '-> entry.id',
    product_id: '-> product.id',
    filling_run_id: '->? filling_run.id',
    received_on: 'text',
    details: 'text',
  });
  await makeTable(db, 'complaint_word', ['entry_id'], {
    entry_id: '-> entry.id',
    complaint_id: '-> complaint.id',
    state: 'text',
    said: 'text',
    judged: 'text?',
  });
  await makeTable(db, 'label_count', ['entry_id'], {
    entry_id: '-> entry.id',
    filling_run_id: '-> filling_run.id',
    kind: 'text',
    used: 'integer',
    spoilt: 'integer',
    remark: 'text',
  });
  await makeTable(db, 'attachment_link', ['entry_id'], {
    entry_id: '-> entry.id',
    attachment_id: '-> attachment.id',
    subject_kind: 'text',
    subject_id: 'text',
    heading: 'text',
    is_taken_out: 'integer',
  });
  // null: printed before there were kinds of label.
  await db.schema.alterTable('label_print').addColumn('design', 'text').execute();
}

async function makeThings(db: Kysely<never>): Promise<void> {
  await makeTable(db, 'product_file', ['product_id'], {
    product_id: '-> product.id',
    details: 'text',
    version: 'integer',
  });
  await makeTable(db, 'label_design', ['product_id'], {
    product_id: '-> product.id',
    details: 'text',
    version: 'integer',
  });
  await makeTable(db, 'point_of_departure', ['id'], {
    id: 'text',
    name: 'text',
    details: 'text',
    version: 'integer',
  });
  await makeTable(db, 'label_sheet', ['id'], {
    id: 'text',
    name: 'text',
    details: 'text',
    version: 'integer',
  });
}

const INDEXED: readonly (readonly [string, readonly string[]])[] = [
  ['lot_certificate', ['lot_id']],
  ['complaint', ['product_id']],
  ['complaint', ['filling_run_id']],
  ['complaint_word', ['complaint_id']],
  ['label_count', ['filling_run_id']],
  ['attachment_link', ['subject_kind', 'subject_id']],
];

export async function up(db: Kysely<never>): Promise<void> {
  await makeThings(db);
  await makeRecords(db);
  for (const [table, columns] of INDEXED)
    await db.schema
      .createIndex(`${table}_by_${columns.join('_')}`)
      .on(table)
      .columns([...columns])
      .execute();
  for (const table of RECORDS) await makeAppendOnly(db, table);
}
