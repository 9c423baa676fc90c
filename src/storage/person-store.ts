import type { Selectable } from 'kysely';
import type { PersonTable } from './schema.ts';
import type { Reader } from './storage.ts';

export type PersonRow = Selectable<PersonTable>;

export const findPerson = (db: Reader, id: string): Promise<PersonRow | undefined> =>
  db.selectFrom('person').selectAll().where('id', '=', id).executeTakeFirst();

export const listPeople = (db: Reader): Promise<PersonRow[]> =>
  db.selectFrom('person').selectAll().orderBy('name').execute();

export async function insertPerson(db: Reader, row: PersonRow): Promise<void> {
  await db.insertInto('person').values(row).execute();
}

export async function updatePerson(db: Reader, row: PersonRow, seenVersion: number): Promise<boolean> {
  const changed = await db
    .updateTable('person')
    .set({ name: row.name, is_active: row.is_active, version: seenVersion + 1 })
    .where('id', '=', row.id)
    .where('version', '=', seenVersion)
    .returningAll()
    .executeTakeFirst();
  return changed !== undefined;
}
