import { rmSync, statSync } from 'node:fs';
import { dirname } from 'node:path';
import type { Insertable, Selectable } from 'kysely';
import { readChainEnd } from './entry-store.ts';
import type { BackupMadeTable } from './schema.ts';
import type { Reader } from './storage.ts';

export type BackupRow = Selectable<BackupMadeTable>;

export const findLastBackup = (db: Reader, kind?: string): Promise<BackupRow | undefined> =>
  db
    .selectFrom('backup_made')
    .selectAll()
    .$if(kind !== undefined, (query) => query.where('kind', '=', kind ?? ''))
    .orderBy('at', 'desc')
    .orderBy('id', 'desc')
    .limit(1)
    .executeTakeFirst();

/** Noted with where the chain ends: from then on the file must hold that entry. */
export async function insertBackup(
  db: Reader,
  row: Omit<Insertable<BackupMadeTable>, 'last_seq' | 'last_hash'>,
): Promise<void> {
  const end = await readChainEnd(db);
  await db
    .insertInto('backup_made')
    .values({ ...row, last_seq: end.seq, last_hash: end.hash })
    .execute();
}

/** Clears old dailies of a folder away: only files that this workshop wrote, at the size that it wrote them. */
export async function clearOldDailies(db: Reader, folder: string, keep: number): Promise<string[]> {
  const dailies = await db
    .selectFrom('backup_made')
    .selectAll()
    .where('kind', '=', 'daily')
    .orderBy('at', 'desc')
    .orderBy('id', 'desc')
    .execute();
  const old = dailies.filter((row) => dirname(row.file) === folder).slice(keep);
  const own = old.filter((row) => statSync(row.file, { throwIfNoEntry: false })?.size === row.bytes);
  for (const row of own) rmSync(row.file);
  return own.map((row) => row.file);
}
