import type { Selectable } from 'kysely';
import type { ScaleTable } from './schema.ts';
import type { Reader } from './storage.ts';

export type ScaleRow = Selectable<ScaleTable>;

export const listScales = (db: Reader): Promise<ScaleRow[]> =>
  db.selectFrom('scale').selectAll().orderBy('name').execute();

export const findScale = (db: Reader, id: string): Promise<ScaleRow | undefined> =>
  db.selectFrom('scale').selectAll().where('id', '=', id).executeTakeFirst();

export async function insertScale(db: Reader, row: ScaleRow): Promise<void> {
  await db.insertInto('scale').values(row).execute();
}

export async function updateScale(db: Reader, row: ScaleRow, seenVersion: number): Promise<boolean> {
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
