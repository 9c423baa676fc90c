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

/** The one that the workshop began with: places added later have an entry of their own. */
async function firstPlaceId(db: Reader, kind: string): Promise<string> {
  const row = await db
    .selectFrom('place')
    .leftJoin('entry', (join) =>
      join.onRef('entry.subject_id', '=', 'place.id').on('entry.subject_kind', '=', 'place'),
    )
    .select('place.id')
    .where('place.kind', '=', kind)
    .orderBy((order) => order.fn.coalesce('entry.seq', order.lit(0)))
    .orderBy('place.id')
    .limit(1)
    .executeTakeFirst();
  if (!row) throw new Error(`a begun workshop has a place of the kind ${kind}`);
  return row.id;
}

/** Where goods come to stand when nobody says otherwise. */
export const shelfPlaceId = (db: Reader): Promise<string> => firstPlaceId(db, 'shelf');

export const retainedPlaceId = (db: Reader): Promise<string> => firstPlaceId(db, 'retained');
