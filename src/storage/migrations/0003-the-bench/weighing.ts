import type { Kysely } from 'kysely';
import { freezeAllButWithoutRecipe } from '../../sqlite-only.ts';
import { makeTable } from '../make-table.ts';

export const RECORDS = ['batch_resize', 'batch_target', 'addition_close', 'spill', 'without_recipe'] as const;

/** Targets made anew while a batch is under way, weighings in parts, what was spilt. */
export async function up(db: Kysely<never>): Promise<void> {
  // null: the weighing is all of its position, as every weighing was.
  await db.schema.alterTable('addition').addColumn('is_part', 'integer').execute();
  // null: nothing was asked about the reading, and it was read off as it stands.
  await db.schema.alterTable('addition').addColumn('reading', 'text').execute();
  // null: what its scale may have been out by was not kept.
  await db.schema.alterTable('addition').addColumn('error_ug', 'integer').execute();
  // 1: its scale had failed its check; null: it had not.
  await db.schema.alterTable('addition').addColumn('scale_failed', 'integer').execute();
  await makeTable(db, 'batch_resize', ['entry_id'], {
    entry_id: '-> entry.id',
    batch_id: '-> batch.id',
    cause: 'text',
    position: 'integer?',
    planned_ug: 'integer',
    tins: 'text',
    reason: 'text',
  });
  await makeTable(db, 'batch_target', ['entry_id', 'position'], {
    entry_id: '-> entry.id',
    batch_id: '-> batch.id',
    position: 'integer',
    exact_grams: 'text',
    target_ug: 'integer',
    low_ug: 'integer',
    high_ug: 'integer',
    scale_id: '->? scale.id',
    weighing: 'text',
  });
  await makeTable(db, 'addition_close', ['entry_id'], {
    entry_id: '-> entry.id',
    batch_id: '-> batch.id',
    position: 'integer',
    after_entry_id: '-> addition.entry_id',
  });
  await makeTable(db, 'spill', ['entry_id'], {
    entry_id: '-> entry.id',
    batch_id: '-> batch.id',
    position: 'integer',
    lot_id: '-> lot.id',
    spilt_ug: 'integer',
    reason: 'text',
  });
  await makeTable(db, 'without_recipe', ['batch_id'], {
    entry_id: '-> entry.id',
    batch_id: '-> batch.id',
    formula_id: '-> formula.id',
    revision_id: '-> revision.id',
    is_first: 'integer',
  });
  await freezeAllButWithoutRecipe(db);
  await db.schema.createIndex('batch_resize_batch').on('batch_resize').columns(['batch_id']).execute();
  await db.schema
    .createIndex('addition_close_after')
    .on('addition_close')
    .columns(['after_entry_id'])
    .execute();
  await db.schema.createIndex('spill_batch').on('spill').columns(['batch_id']).execute();
}
