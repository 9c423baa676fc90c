import type { Selectable } from 'kysely';
import type { ConstituentTable, MaterialTable } from './schema.ts';
import type { Reader } from './storage.ts';

export type MaterialRow = Selectable<MaterialTable>;
export type ConstituentRow = Selectable<ConstituentTable>;

export const listMaterials = (db: Reader): Promise<MaterialRow[]> =>
  db.selectFrom('material').selectAll().orderBy('kind').orderBy('name').execute();

export const findMaterial = (db: Reader, id: string): Promise<MaterialRow | undefined> =>
  db.selectFrom('material').selectAll().where('id', '=', id).executeTakeFirst();

export const findMaterials = (db: Reader, ids: readonly string[]): Promise<MaterialRow[]> =>
  db.selectFrom('material').selectAll().where('id', 'in', ids).execute();

/** Constituents of these materials, or of all, in the order in which they were typed. */
export function listConstituents(db: Reader, materialIds?: readonly string[]): Promise<ConstituentRow[]> {
  const query = db.selectFrom('constituent').selectAll().orderBy('material_id').orderBy('position');
  return (materialIds === undefined ? query : query.where('material_id', 'in', materialIds)).execute();
}

export async function insertMaterial(
  db: Reader,
  row: MaterialRow,
  constituents: readonly ConstituentRow[],
): Promise<void> {
  await db.insertInto('material').values(row).execute();
  await insertConstituents(db, constituents);
}

/** Changes the row only where it still has the version that the writer saw; says whether it did. */
export async function updateMaterial(
  db: Reader,
  row: MaterialRow,
  constituents: readonly ConstituentRow[],
  seenVersion: number,
): Promise<boolean> {
  const changed = await db
    .updateTable('material')
    .set({ kind: row.kind, name: row.name, details: row.details, version: seenVersion + 1 })
    .where('id', '=', row.id)
    .where('version', '=', seenVersion)
    .returningAll()
    .executeTakeFirst();
  if (!changed) return false;
  await db.deleteFrom('constituent').where('material_id', '=', row.id).returningAll().execute();
  await insertConstituents(db, constituents);
  return true;
}

async function insertConstituents(db: Reader, rows: readonly ConstituentRow[]): Promise<void> {
  if (rows.length > 0)
    await db
      .insertInto('constituent')
      .values([...rows])
      .execute();
}
