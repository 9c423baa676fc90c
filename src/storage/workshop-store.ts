import type { Selectable } from 'kysely';
import type { WorkshopTable } from './schema.ts';
import type { Reader } from './storage.ts';

export type WorkshopRow = Selectable<WorkshopTable>;

/** The one row of the workshop; nothing before the first start chose. */
export const readWorkshop = (db: Reader): Promise<WorkshopRow | undefined> =>
  db.selectFrom('workshop').selectAll().executeTakeFirst();

export async function insertWorkshop(db: Reader, row: WorkshopRow): Promise<void> {
  await db.insertInto('workshop').values(row).execute();
}

export async function updateWorkshop(db: Reader, details: string, seenVersion: number): Promise<boolean> {
  const changed = await db
    .updateTable('workshop')
    .set({ details, version: seenVersion + 1 })
    .where('version', '=', seenVersion)
    .returningAll()
    .executeTakeFirst();
  return changed !== undefined;
}
