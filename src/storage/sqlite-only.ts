import Sqlite from 'better-sqlite3';
import {
  CompiledQuery,
  type DatabaseConnection,
  type Driver,
  type Kysely,
  type RawBuilder,
  type SqliteDatabase,
  SqliteDialect,
  SqliteDriver,
  type SqliteStatement,
  sql,
} from 'kysely';

/** The one file with SQL that only SQLite understands; everything else goes through Kysely and stays portable. */

/** 'Gram' as four bytes: tells our files from other SQLite files (PRAGMA application_id, SQLite file format). */
export const APPLICATION_ID = 0x4772_616d;

/** How long an opener waits for another process before it is told, in milliseconds (common practice, no source). */
export const BUSY_TIMEOUT_MS = 3000;

/**
 * Opens a file and changes nothing in it: a foreign file must be left as it is (guards come once it is known as ours).
 * locking_mode=EXCLUSIVE: the database itself is the lock of its one writer, and the kernel frees it after a kill.
 */
export function openSqlite(file: string, waitMs = BUSY_TIMEOUT_MS): Sqlite.Database {
  const handle = new Sqlite(file);
  handle.pragma(`busy_timeout = ${waitMs}`);
  handle.pragma('locking_mode = EXCLUSIVE');
  return handle;
}

/** For looking into a copy that nobody writes to. */
export const openReadOnly = (file: string): Sqlite.Database =>
  new Sqlite(file, { readonly: true, fileMustExist: true });

/** Holds the whole file of a small workshop's years; SQLite's own 2 MB does not (measured on a making entry). */
const CACHE_KIB = 16_384;

/**
 * Sets every guard of a connection. WAL with synchronous=FULL: a commit is on disk when it returns.
 * recursive_triggers: without it INSERT OR REPLACE would slip past an append-only trigger.
 */
export function setGuards(handle: Sqlite.Database): void {
  handle.pragma('journal_mode = WAL');
  handle.pragma('synchronous = FULL');
  handle.pragma('foreign_keys = ON');
  handle.pragma('recursive_triggers = ON');
  // What is erased is overwritten in the file: a customer's name must not stay readable in a freed page.
  handle.pragma('secure_delete = ON');
  handle.pragma(`cache_size = -${CACHE_KIB}`);
}

/** A file of no bytes, or one whose making was cut off before its first transaction: no table stands in it. */
export function isBlank(handle: Sqlite.Database): boolean {
  const { tables } = handle.prepare('select count(*) as tables from sqlite_master').get() as {
    tables: number;
  };
  return tables === 0 && readApplicationId(handle) === 0 && readSchemaVersion(handle) === 0;
}

/** Queries met in a day's work; a list of ids of another length is another text. */
const REMEMBERED_AT_MOST = 500;
/** Anything else (a pragma, a change of the tables) is met once. */
const WORTH_REMEMBERING = /^(select|insert|update|delete|begin|commit|rollback)\b/;

/** Each text is prepared once, not each time: preparing took as long as running (measured on a making entry). */
function rememberStatements(handle: Sqlite.Database): SqliteDatabase {
  const known = new Map<string, SqliteStatement>();
  return {
    close: () => handle.close(),
    prepare(text) {
      const before = known.get(text);
      if (before) return before;
      const fresh: SqliteStatement = handle.prepare(text);
      const isWorthIt = WORTH_REMEMBERING.test(text);
      if (!isWorthIt || known.size >= REMEMBERED_AT_MOST) known.clear();
      if (isWorthIt) known.set(text, fresh);
      return fresh;
    },
  };
}

/**
 * Takes the write lock at once: a transaction that read first and wrote later could be refused half-way.
 * A full disk makes SQLite roll back by itself; a second rollback would then hide the cause behind its own failure.
 */
class ImmediateDriver extends SqliteDriver {
  readonly #handle: Sqlite.Database;

  constructor(handle: Sqlite.Database) {
    super({ database: rememberStatements(handle) });
    this.#handle = handle;
  }

  override async beginTransaction(connection: DatabaseConnection): Promise<void> {
    await connection.executeQuery(CompiledQuery.raw('begin immediate'));
  }

  override async rollbackTransaction(connection: DatabaseConnection): Promise<void> {
    if (this.#handle.inTransaction) await super.rollbackTransaction(connection);
  }
}

export class ImmediateDialect extends SqliteDialect {
  readonly #handle: Sqlite.Database;

  constructor(handle: Sqlite.Database) {
    super({ database: handle });
    this.#handle = handle;
  }

  override createDriver(): Driver {
    return new ImmediateDriver(this.#handle);
  }
}

/** STRICT tables refuse a text where a number belongs. */
export const STRICT: RawBuilder<unknown> = sql`strict`;

/** A reference that is looked at when the transaction commits. */
export const AT_COMMIT: RawBuilder<unknown> = sql`deferrable initially deferred`;

/** The end of the chain is noted beside it, in the same transaction, without a query of its own. */
export async function noteChainEnd(database: Kysely<never>, firstHash: string): Promise<void> {
  await sql`insert into chain_end (id, seq, hash) values (1, 0, ${firstHash})`.execute(database);
  await sql`create trigger entry_moves_chain_end after insert on entry
    begin update chain_end set seq = new.seq, hash = new.hash; end`.execute(database);
}

/** The database itself refuses to change or delete a record. */
export async function makeAppendOnly(database: Kysely<never>, table: string): Promise<void> {
  for (const event of ['update', 'delete'] as const) {
    const name = sql.raw(`"${table}_never_${event}"`);
    const message = sql.raw(`'append-only: ${table}'`);
    await sql`create trigger ${name} before ${sql.raw(event)} on ${sql.table(table)}
      begin select raise(abort, ${message}); end`.execute(database);
  }
}

/** A file is never changed; its bytes alone may go, since a photograph may show somebody. */
export async function letFilesBeEmptied(database: Kysely<never>): Promise<void> {
  await sql`drop trigger attachment_never_update`.execute(database);
  await sql`create trigger attachment_never_update before update on attachment
    when length(new.bytes) > 0 or new.id is not old.id or new.entry_id is not old.entry_id
      or new.name is not old.name or new.sha256 is not old.sha256
    begin select raise(abort, 'append-only: attachment'); end`.execute(database);
}

/** Nothing is taken from a lot that is not there: no place's balance may fall below nought. */
export async function refuseOverdraft(database: Kysely<never>): Promise<void> {
  await sql`create trigger movement_never_overdraws before insert on movement when new.quantity < 0
    begin
      select raise(abort, 'overdraft')
      where (select coalesce(sum(quantity), 0) from movement where lot_id = new.lot_id and place_id = new.place_id)
        + new.quantity < 0;
    end`.execute(database);
}

/** A revision that a batch used is never edited again. */
export async function freezeUsedRevisions(database: Kysely<never>): Promise<void> {
  for (const table of ['revision_line', 'revision_step']) {
    for (const [event, row] of [
      ['insert', 'new'],
      ['update', 'old'],
      ['delete', 'old'],
    ] as const) {
      await sql`create trigger ${sql.raw(`"${table}_fixed_${event}"`)} before ${sql.raw(event)} on ${sql.table(table)}
        when exists (select 1 from batch where revision_id = ${sql.raw(row)}.revision_id)
        begin select raise(abort, 'revision-fixed'); end`.execute(database);
    }
  }
  await sql`create trigger revision_fixed_update before update on revision
    when exists (select 1 from batch where revision_id = old.id)
    begin select raise(abort, 'revision-fixed'); end`.execute(database);
}

/**
 * The same, but for the revision that the first making without a recipe writes as it goes, until that is over: lines and
 * steps come and go, and none is changed. One that is only made again by hand stays as it is.
 */
export async function freezeAllButWithoutRecipe(database: Kysely<never>): Promise<void> {
  const isOpen = (id: string) => `not exists (
    select 1 from without_recipe left join batch_close on batch_close.batch_id = without_recipe.batch_id
    where without_recipe.revision_id = ${id} and without_recipe.is_first = 1
      and batch_close.batch_id is null)`;
  const freeze = (name: string, event: string, table: string, id: string) =>
    sql.raw(`create trigger "${name}" before ${event} on "${table}"
      when exists (select 1 from batch where revision_id = ${id}) and ${isOpen(id)}
      begin select raise(abort, 'revision-fixed'); end`);
  for (const table of ['revision_line', 'revision_step'])
    for (const [event, row] of [
      ['insert', 'new'],
      ['delete', 'old'],
    ] as const) {
      const name = `${table}_fixed_${event}`;
      await sql.raw(`drop trigger "${name}"`).execute(database);
      await freeze(name, event, table, `${row}.revision_id`).execute(database);
    }
  await sql.raw('drop trigger revision_fixed_update').execute(database);
  await freeze('revision_fixed_update', 'update', 'revision', 'old.id').execute(database);
}

export const readSchemaVersion = (handle: Sqlite.Database): number =>
  handle.pragma('user_version', { simple: true }) as number;

export const readApplicationId = (handle: Sqlite.Database): number =>
  handle.pragma('application_id', { simple: true }) as number;

export async function writeSchemaVersion(database: Kysely<never>, version: number): Promise<void> {
  await sql`pragma user_version = ${sql.raw(String(version))}`.execute(database);
}

export async function writeApplicationId(database: Kysely<never>): Promise<void> {
  await sql`pragma application_id = ${sql.raw(String(APPLICATION_ID))}`.execute(database);
}

/** Writes everything into the file itself and leaves the log empty: what was overwritten stays nowhere. */
export function truncateLog(handle: Sqlite.Database): void {
  const [answer] = handle.pragma('wal_checkpoint(TRUNCATE)') as { busy: number }[];
  if (answer?.busy) throw new Error('the log could not be emptied: somebody reads from it');
}

/** Tables in the order in which they were made: what others name comes first, but for what looks at the commit. */
export const listTables = (handle: Sqlite.Database): string[] =>
  (
    handle
      .prepare(
        "select name from sqlite_master where type = 'table' and name not like 'sqlite_%' order by rowid",
      )
      .all() as { name: string }[]
  ).map((row) => row.name);

/** Until this transaction ends, references are looked at when it commits. */
export const setAtCommit = (handle: Sqlite.Database): void => {
  handle.pragma('defer_foreign_keys = ON');
};

/** Writes a consistent copy of the open file; the target must not exist. */
export function copyInto(handle: Sqlite.Database, file: string): void {
  handle.prepare('vacuum into ?').run(file);
}

/** SQLite's own findings: `ok`, or what is broken. */
export function integrityFindings(handle: Sqlite.Database): string[] {
  const rows = handle.pragma('integrity_check') as { integrity_check: string }[];
  return rows.map((row) => row.integrity_check).filter((finding) => finding !== 'ok');
}

export function foreignKeyFindings(handle: Sqlite.Database): string[] {
  const rows = handle.pragma('foreign_key_check') as { table: string; parent: string }[];
  return rows.map((row) => `${row.table} names a missing ${row.parent}`);
}

export type SqliteHandle = Sqlite.Database;
