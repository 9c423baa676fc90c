import { existsSync } from 'node:fs';
import { Kysely } from 'kysely';
import { done, problem, type Result, refused } from '../core/problem.ts';
import { migrations } from './migrations/index.ts';
import type { Database } from './schema.ts';
import {
  APPLICATION_ID,
  ImmediateDialect,
  openSqlite,
  readApplicationId,
  readSchemaVersion,
  type SqliteHandle,
  writeSchemaVersion,
} from './sqlite-only.ts';

export type Reader = Kysely<Database>;

/** An open workshop file. One process has it at a time; the database itself is the lock. */
export interface Storage {
  readonly file: string;
  readonly db: Reader;
  readonly handle: SqliteHandle;
  readonly schemaVersion: number;
  close(): Promise<void>;
}

export interface OpenOptions {
  /** Called before a file of an older version is changed: must leave a copy, or throw. */
  readonly beforeMigration?: (handle: SqliteHandle, fromVersion: number) => void;
}

/** Opens or makes a workshop file. What is wrong with it comes back as a problem, and the file stays as it was. */
export async function openStorage(file: string, options: OpenOptions = {}): Promise<Result<Storage>> {
  const isNew = file === ':memory:' || !existsSync(file);
  let handle: SqliteHandle | undefined;
  try {
    handle = openSqlite(file);
    const refusal = isNew ? undefined : whyNotOurs(handle, file);
    if (refusal) {
      handle.close();
      return refused(refusal);
    }
    const version = readSchemaVersion(handle);
    if (!isNew && version < migrations.length) options.beforeMigration?.(handle, version);
    const db = new Kysely<Database>({ dialect: new ImmediateDialect({ database: handle }) });
    await migrate(db, version);
    return done(storageOf(file, db, handle));
  } catch (error) {
    handle?.close();
    const known = openProblem(error, file);
    if (known) return refused(known);
    throw error;
  }
}

const storageOf = (file: string, db: Reader, handle: SqliteHandle): Storage => ({
  file,
  db,
  handle,
  schemaVersion: migrations.length,
  close: () => db.destroy(),
});

function whyNotOurs(handle: SqliteHandle, file: string) {
  const version = readSchemaVersion(handle);
  if (readApplicationId(handle) !== APPLICATION_ID) return problem('file-not-ours', file);
  if (version > migrations.length) {
    return problem('file-newer', file, { found: version, allowed: migrations.length });
  }
  return undefined;
}

/** Each migration in a transaction of its own: a file is never left between two versions. */
async function migrate(db: Kysely<Database>, from: number): Promise<void> {
  for (const [index, migration] of migrations.entries()) {
    if (index < from) continue;
    await db.transaction().execute(async (transaction) => {
      await migration.up(transaction as unknown as Kysely<never>);
      await writeSchemaVersion(transaction as unknown as Kysely<never>, index + 1);
    });
  }
}

/** What the operating system or SQLite says when a file cannot be opened, as a problem with a way out. */
function openProblem(error: unknown, file: string) {
  const code = error instanceof Error && 'code' in error ? String(error.code) : '';
  if (code.startsWith('SQLITE_BUSY') || code.startsWith('SQLITE_LOCKED')) return problem('file-held', file);
  if (code === 'SQLITE_NOTADB' || code.startsWith('SQLITE_CORRUPT')) return problem('file-torn', file);
  if (code === 'SQLITE_FULL') return problem('disk-full', file);
  if (
    code.startsWith('SQLITE_READONLY') ||
    code.startsWith('SQLITE_CANTOPEN') ||
    code.startsWith('SQLITE_PERM')
  )
    return problem('file-not-writable', file);
  if (error instanceof TypeError && /directory does not exist/.test(error.message))
    return problem('folder-missing', file);
  return undefined;
}
