import { expressionBuilder, type Selectable } from 'kysely';
import type { Database, ScaleTable } from './schema.ts';
import type { Reader } from './storage.ts';

/** What the latest test and the latest check of a scale say; null or absent: there was none. */
export interface ScaleProof {
  readonly measured_grams?: string | null;
  readonly measured_at?: string | null;
  /** Step of the scale when it was tested. */
  readonly measured_step_grams?: string | null;
  readonly check_at?: string | null;
  readonly check_on?: string | null;
  readonly check_is_good?: number | null;
}

/** As it is written down. */
export type ScaleThing = Selectable<ScaleTable>;

export type ScaleRow = ScaleThing & ScaleProof;

/** The entry that was made last of a scale in one of its records: a tablet that was away tells an earlier one later. */
const latestOf = (table: 'scale_test' | 'scale_check') =>
  expressionBuilder<Database, 'scale'>()
    .selectFrom(table)
    .innerJoin('entry as told', 'told.id', `${table}.entry_id`)
    .select('told.id')
    .whereRef(`${table}.scale_id`, '=', 'scale.id')
    .orderBy('told.happened_at', 'desc')
    .orderBy('told.seq', 'desc')
    .limit(1);

/** A good check with another weight than its own says nothing for a scale; one that failed says something against it. */
const latestCheck = () =>
  latestOf('scale_check').where((query) =>
    query.or([query('scale_check.is_good', '=', 0), query('scale_check.is_own_weight', '=', 1)]),
  );

const selectScales = (db: Reader) =>
  db
    .selectFrom('scale')
    .leftJoin('entry as test_entry', (join) => join.on('test_entry.id', '=', latestOf('scale_test')))
    .leftJoin('scale_test', 'scale_test.entry_id', 'test_entry.id')
    .leftJoin('entry as check_entry', (join) => join.on('check_entry.id', '=', latestCheck()))
    .leftJoin('scale_check', 'scale_check.entry_id', 'check_entry.id')
    .selectAll('scale')
    .select([
      'scale_test.deviation_grams as measured_grams',
      'test_entry.happened_at as measured_at',
      'scale_test.readability_grams as measured_step_grams',
      'check_entry.happened_at as check_at',
      'scale_check.checked_on as check_on',
      'scale_check.is_good as check_is_good',
    ]);

export const listScales = (db: Reader): Promise<ScaleRow[]> =>
  selectScales(db).orderBy('scale.name').execute();

export const findScale = (db: Reader, id: string): Promise<ScaleRow | undefined> =>
  selectScales(db).where('scale.id', '=', id).executeTakeFirst();

export async function insertScale(db: Reader, row: ScaleThing): Promise<void> {
  await db.insertInto('scale').values(row).execute();
}

export async function updateScale(db: Reader, row: ScaleThing, seenVersion: number): Promise<boolean> {
  const { id, ...rest } = row;
  const changed = await db
    .updateTable('scale')
    .set({ ...rest, version: seenVersion + 1 })
    .where('id', '=', id)
    .where('version', '=', seenVersion)
    .returningAll()
    .executeTakeFirst();
  return changed !== undefined;
}
