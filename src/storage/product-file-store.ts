import type { Selectable } from 'kysely';
import type { PointOfDepartureTable } from './schema.ts';
import type { Reader } from './storage.ts';

export type PointOfDepartureRow = Selectable<PointOfDepartureTable>;

export const listPointsOfDeparture = (db: Reader): Promise<PointOfDepartureRow[]> =>
  db.selectFrom('point_of_departure').selectAll().orderBy('name').orderBy('id').execute();

export const findPointOfDeparture = (db: Reader, id: string): Promise<PointOfDepartureRow | undefined> =>
  db.selectFrom('point_of_departure').selectAll().where('id', '=', id).executeTakeFirst();

export async function insertPointOfDeparture(db: Reader, row: PointOfDepartureRow): Promise<void> {
  await db.insertInto('point_of_departure').values(row).execute();
}

/** Changes the row only where it still has the version that the writer saw; says whether it did. */
export async function updatePointOfDeparture(
  db: Reader,
  { id, name, details }: PointOfDepartureRow,
  seenVersion: number,
): Promise<boolean> {
  const changed = await db
    .updateTable('point_of_departure')
    .set({ name, details, version: seenVersion + 1 })
    .where('id', '=', id)
    .where('version', '=', seenVersion)
    .returningAll()
    .executeTakeFirst();
  return changed !== undefined;
}
