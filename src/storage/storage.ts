import { accessSync, constants, existsSync } from 'node:fs';
import { Kysely, type Transaction } from 'kysely';
import { done, type Problem, problem, type Result, refused } from '../core/problem.ts';
import { readAddressHint } from '../machine/index.ts';
import { migrations } from './migrations/index.ts';
import type { Database } from './schema.ts';
import {
  APPLICATION_ID,
  ImmediateDialect,
  isBlank,
  openSqlite,
  readApplicationId,
  readSchemaVersion,
  type SqliteHandle,
  setGuards,
  truncateLog,
  writeSchemaVersion,
} from './sqlite-only.ts';
import { makeWrittenWatch, type WrittenWatch } from './written-watch.ts';

export type Reader = Kysely<Database>;

/** An open workshop file. One process has it at a time; the database itself is the lock. */
export interface Storage {
  readonly file: string;
  readonly db: Reader;
  readonly handle: SqliteHandle;
  readonly schemaVersion: number;
  /** Told of every write as soon as it is on disk. */
  readonly written: WrittenWatch;
  /** An open transaction that every write is part of: all of it counts, or nothing. */
  readonly within?: Transaction<Database>;
  close(): Promise<void>;
}

export interface OpenOptions {
  /** Called before a file of an older version is changed: leaves a copy; a refusal leaves the file as it was. */
  readonly beforeMigration?: (handle: SqliteHandle, fromVersion: number) => Result<unknown>;
  /** Refuses a file that is not there instead of making it. */
  readonly mustExist?: boolean;
  /** How long to wait for a file that another process has. */
  readonly waitMs?: number;
}

/** Opens or makes a workshop file. What is wrong with it comes back as a problem, and the file stays as it was. */
export async function openStorage(file: string, options: OpenOptions = {}): Promise<Result<Storage>> {
  if (options.mustExist && !existsSync(file)) return refused(problem('file-missing', file));
  if (existsSync(file) && !mayWrite(file)) return refused(problem('file-not-writable', file));
  let handle: SqliteHandle | undefined;
  try {
    handle = openSqlite(file, options.waitMs);
    const refusals = prepare(handle, file, options);
    if (refusals.length > 0) {
      handle.close();
      return refused(...refusals);
    }
    const db = new Kysely<Database>({ dialect: new ImmediateDialect(handle) });
    await migrate(db, readSchemaVersion(handle));
    // After a kill the log may still hold what was erased.
    truncateLog(handle);
    return done(storageOf(file, db, handle));
  } catch (error) {
    handle?.close();
    const known = openProblem(error, file);
    if (known) return refused(known);
    throw error;
  }
}

/** Asked beforehand, since SQLite only says of such a file that it could not lock it. */
function mayWrite(file: string): boolean {
  try {
    accessSync(file, constants.R_OK | constants.W_OK);
    return true;
  } catch {
    return false;
  }
}

/** Looks before anything is changed: a file that is not ours, or newer, or cannot be backed up, stays as it was. */
function prepare(handle: SqliteHandle, file: string, { beforeMigration }: OpenOptions): readonly Problem[] {
  if (isBlank(handle)) {
    setGuards(handle);
    return [];
  }
  const refusal = whyNotOurs(handle, file);
  if (refusal) return [refusal];
  setGuards(handle);
  const version = readSchemaVersion(handle);
  const kept = version < migrations.length ? beforeMigration?.(handle, version) : undefined;
  return kept === undefined || kept.ok ? [] : kept.problems;
}

const storageOf = (file: string, db: Reader, handle: SqliteHandle): Storage => ({
  file,
  db,
  handle,
  schemaVersion: migrations.length,
  written: makeWrittenWatch(),
  async close() {
    await db.destroy();
    // Kysely closes only what it has used: a file that was opened and nothing more would stay held.
    if (handle.open) handle.close();
  },
});

/** Why a file is not to be touched by this program, or nothing. */
export function whyNotOurs(handle: SqliteHandle, file: string) {
  const version = readSchemaVersion(handle);
  if (readApplicationId(handle) !== APPLICATION_ID) return problem('file-not-ours', file);
  if (version > migrations.length) {
    return problem('file-newer', file, { found: version, allowed: migrations.length });
  }
  return undefined;
}

/** After an erasure: until it is emptied, the log beside the file holds the pages as they were. */
export const emptyLog = ({ db, handle }: Storage): Promise<void> =>
  db.connection().execute(async () => truncateLog(handle));

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
export function openProblem(error: unknown, file: string): Problem | undefined {
  const code = error instanceof Error && 'code' in error ? String(error.code) : '';
  if (code.startsWith('SQLITE_BUSY') || code.startsWith('SQLITE_LOCKED'))
    return problem('file-held', file, { parameters: { address: readAddressHint(file) } });
  if (code === 'SQLITE_NOTADB' || code.startsWith('SQLITE_CORRUPT')) return problem('file-torn', file);
  if (code === 'SQLITE_FULL' || code === 'ENOSPC') return problem('disk-full', file);
  if (code.startsWith('SQLITE_IOERR')) return problem('disk-trouble', file, { found: code });
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
