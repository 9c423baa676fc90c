import type { Selectable } from 'kysely';
import type { FillWayTable, RunCountTable, RunReadyTable, TinFateTable } from './schema-filling.ts';
import type { Reader } from './storage.ts';

export type FillWayRow = Selectable<FillWayTable>;
export type RunReadyRow = Selectable<RunReadyTable>;
export type RunCountRow = Selectable<RunCountTable>;

/** How tins are weighed from the last word on, by run. */
export async function findFillWays(
  db: Reader,
  runIds: readonly string[],
): Promise<ReadonlyMap<string, FillWayRow>> {
  if (runIds.length === 0) return new Map();
  const rows = await db
    .selectFrom('fill_way')
    .innerJoin('entry', 'entry.id', 'fill_way.entry_id')
    .selectAll('fill_way')
    .where('fill_way.filling_run_id', 'in', runIds)
    .orderBy('entry.seq')
    .execute();
  return new Map(rows.map((row) => [row.filling_run_id, row]));
}

export async function insertFillWay(db: Reader, row: FillWayRow): Promise<void> {
  await db.insertInto('fill_way').values(row).execute();
}

export type SignedReady = RunReadyRow & { readonly happened_at: string; readonly person_name: string };

/** What was made ready for these runs; of each kind the last word counts. */
export async function listRunReady(db: Reader, runIds: readonly string[]): Promise<SignedReady[]> {
  if (runIds.length === 0) return [];
  const rows = await db
    .selectFrom('run_ready')
    .innerJoin('entry', 'entry.id', 'run_ready.entry_id')
    .leftJoin('person', 'person.id', 'entry.person_id')
    .selectAll('run_ready')
    .select(['entry.happened_at', 'person.name as person_name'])
    .where('run_ready.filling_run_id', 'in', runIds)
    .orderBy('entry.seq')
    .execute();
  return rows.map((row) => ({ ...row, person_name: row.person_name ?? '' }));
}

export async function insertRunReady(db: Reader, row: RunReadyRow): Promise<void> {
  await db.insertInto('run_ready').values(row).execute();
}

export async function insertTinFate(db: Reader, row: Selectable<TinFateTable>): Promise<void> {
  await db.insertInto('tin_fate').values(row).execute();
}

export async function insertRunCounts(db: Reader, rows: readonly RunCountRow[]): Promise<void> {
  if (rows.length > 0)
    await db
      .insertInto('run_count')
      .values([...rows])
      .execute();
}

export async function listRunCounts(db: Reader, runIds: readonly string[]): Promise<RunCountRow[]> {
  if (runIds.length === 0) return [];
  return db.selectFrom('run_count').selectAll().where('filling_run_id', 'in', runIds).execute();
}
