import type { Reader } from './storage.ts';

export async function insertSalt(db: Reader, entryId: string, salt: string): Promise<void> {
  await db.insertInto('request_salt').values({ entry_id: entryId, salt }).execute();
}

export async function findSalt(db: Reader, entryId: string): Promise<string | undefined> {
  const row = await db
    .selectFrom('request_salt')
    .select('salt')
    .where('entry_id', '=', entryId)
    .executeTakeFirst();
  return row?.salt;
}
