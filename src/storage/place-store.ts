import type { Selectable } from 'kysely';
import type { PlaceTable } from './schema.ts';
import type { Reader } from './storage.ts';

export type PlaceRow = Selectable<PlaceTable>;

export const listPlaces = (db: Reader): Promise<PlaceRow[]> =>
  db.selectFrom('place').selectAll().orderBy('kind').orderBy('name').execute();

export const findPlace = (db: Reader, id: string): Promise<PlaceRow | undefined> =>
  db.selectFrom('place').selectAll().where('id', '=', id).executeTakeFirst();

export async function insertPlace(db: Reader, row: PlaceRow): Promise<void> {
  await db.insertInto('place').values(row).execute();
}

/** The first place of a kind. A begun workshop has a shelf and a place for retained samples from its first entry on. */
async function firstPlaceId(db: Reader, kind: string): Promise<string> {
  const row = await db
    .selectFrom('place')
    .select('id')
    .where('kind', '=', kind)
    .orderBy('id')
    .limit(1)
    .executeTakeFirst();
  if (!row) throw new Error(`a begun workshop has a place of the kind ${kind}`);
  return row.id;
}

/** Where goods come to stand when nobody says otherwise. */
export const shelfPlaceId = (db: Reader): Promise<string> => firstPlaceId(db, 'shelf');

export const retainedPlaceId = (db: Reader): Promise<string> => firstPlaceId(db, 'retained');
