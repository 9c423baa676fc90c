import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import Sqlite from 'better-sqlite3';
import { sql } from 'kysely';
import { afterAll, describe, expect, it } from 'vitest';
import { done, must, problem, refused } from '../core/problem.ts';
import { migrations, RECORDS } from './migrations/index.ts';
import { openStorage, type Storage } from './storage.ts';
import { writeOnce } from './write.ts';

const folder = mkdtempSync(join(tmpdir(), 'gramwright-'));
afterAll(() => rmSync(folder, { recursive: true }));
const openNew = async (name: string): Promise<Storage> => must(await openStorage(join(folder, name)));
const ASKED = { text: 'the same', salt: null };
const AT = '2026-11-02T08:00:00Z';

describe('an open workshop file', () => {
  it('has every guard set on its connection', async () => {
    const storage = await openNew('guards.gramwright');
    const read = (name: string) => storage.handle.pragma(name, { simple: true });
    expect(read('journal_mode')).toBe('wal');
    expect(read('synchronous')).toBe(2);
    expect(read('foreign_keys')).toBe(1);
    expect(read('recursive_triggers')).toBe(1);
    expect(read('busy_timeout')).toBe(3000);
    expect(read('locking_mode')).toBe('exclusive');
    expect(read('application_id')).toBe(0x4772616d);
    expect(read('user_version')).toBe(migrations.length);
    await storage.close();
  });

  it('lets its file go when it is closed, though nothing was asked of it', async () => {
    await (await openNew('let-go.gramwright')).close();
    const again = await openNew('let-go.gramwright');
    await again.close();
    expect(again.handle.open).toBe(false);
  });

  it('of no bytes, left by a start that was cut off, is begun anew', async () => {
    writeFileSync(join(folder, 'cut-off.gramwright'), '');
    const storage = await openNew('cut-off.gramwright');
    expect(storage.handle.pragma('user_version', { simple: true })).toBe(storage.schemaVersion);
    await storage.close();
  });

  it.each([
    ['another program', 'pragma application_id = 7; create table a (b)', 'file-not-ours'],
    ['a newer Gramwright', `pragma application_id = ${0x4772616d}; pragma user_version = 999`, 'file-newer'],
  ])('of %s is refused and left as it was, byte for byte', async (_whose, statement, code) => {
    const file = join(folder, `${code}.gramwright`);
    const made = new Sqlite(file);
    made.exec(statement);
    made.close();
    const before = readFileSync(file);
    expect(await openStorage(file)).toMatchObject({ problems: [{ code, where: file }] });
    expect(readFileSync(file).equals(before)).toBe(true);
    expect(existsSync(`${file}-wal`)).toBe(false);
  });

  it('of an older form is copied first, and left as it was where that cannot be done', async () => {
    const file = join(folder, 'older.gramwright');
    const made = new Sqlite(file);
    made.pragma(`application_id = ${0x4772616d}`);
    made.close();
    const refusal = refused(problem('backup-folder-missing', 'there'));
    expect(await openStorage(file, { beforeMigration: () => refusal })).toEqual(refusal);
    const still = new Sqlite(file);
    expect(still.pragma('user_version', { simple: true })).toBe(0);
    still.close();
    const seen: number[] = [];
    const opened = must(
      await openStorage(file, {
        beforeMigration(_handle, version) {
          seen.push(version);
          return done(null);
        },
      }),
    );
    expect(seen).toEqual([0]);
    expect(opened.handle.pragma('user_version', { simple: true })).toBe(opened.schemaVersion);
    await opened.close();
  });

  it('that is no database is said to be damaged', async () => {
    const file = join(folder, 'letter.gramwright');
    writeFileSync(
      file,
      'a letter to the bank, long enough to be taken for a header of a database file'.repeat(9),
    );
    expect(await openStorage(file)).toMatchObject({ problems: [{ code: 'file-torn' }] });
  });

  it('keeps every table strict', async () => {
    const storage = await openNew('strict.gramwright');
    const rows = storage.handle.pragma('table_list') as { name: string; strict: number; type: string }[];
    const loose = rows.filter(
      (row) => row.type === 'table' && !row.name.startsWith('sqlite_') && row.strict === 0,
    );
    expect(loose).toEqual([]);
    await storage.close();
  });

  it('refuses to change or delete any record, by replace too', async () => {
    const storage = await openNew('append.gramwright');
    const written = await writeOnce(
      storage,
      { id: 'e1', at: AT, by: null, device: 'test', asked: ASKED },
      AT,
      async (_tx, tell) => tell({ kind: 'tried', subjectKind: 'test', subjectId: 's', payload: { a: 1 } }),
    );
    expect(written.ok).toBe(true);
    expect(() => storage.handle.prepare("update entry set kind = 'x'").run()).toThrow(/append-only: entry/);
    expect(() => storage.handle.prepare('delete from entry').run()).toThrow(/append-only: entry/);
    const replace =
      "insert or replace into entry select seq, id, 'x', subject_kind, subject_id, payload, request_hash, rows, happened_at, recorded_at, person_id, device, previous_hash, hash from entry";
    expect(() => storage.handle.prepare(replace).run()).toThrow(/append-only: entry/);
    const triggers = storage.handle
      .prepare("select name from sqlite_master where type = 'trigger'")
      .all() as { name: string }[];
    for (const table of RECORDS) {
      expect(triggers.map((row) => row.name)).toEqual(
        expect.arrayContaining([`${table}_never_update`, `${table}_never_delete`]),
      );
    }
    await storage.close();
  });

  it('counts the same entry once', async () => {
    const storage = await openNew('once.gramwright');
    const write = () =>
      writeOnce(
        storage,
        { id: 'same', at: AT, by: null, device: 'test', asked: ASKED },
        AT,
        async (_tx, tell) => {
          await tell({ kind: 'tried', subjectKind: 'test', subjectId: 's', payload: {} });
          return 'first';
        },
      );
    expect(must(await write())).toEqual({ again: false, value: 'first' });
    expect(must(await write())).toEqual({ again: true, subjectId: 's' });
    await storage.close();
  });

  it('refuses the same stamp on another request, and on a request sent at the same time', async () => {
    const storage = await openNew('other.gramwright');
    const write = (text: string) =>
      writeOnce(
        storage,
        { id: 'one', at: AT, by: null, device: 'test', asked: { text, salt: null } },
        AT,
        async (_tx, tell) => {
          await tell({ kind: 'tried', subjectKind: 'test', subjectId: 's', payload: {} });
          return 'first';
        },
      );
    const [first, other] = await Promise.all([write('ten grams'), write('twelve grams')]);
    expect(must(first)).toMatchObject({ again: false });
    const refusal = {
      problems: [{ code: 'stamp-used-otherwise', where: 'stamp.id', found: 'one', allowed: AT }],
    };
    expect(other).toMatchObject(refusal);
    expect(await write('twelve grams')).toMatchObject(refusal);
    expect(must(await write('ten grams'))).toEqual({ again: true, subjectId: 's' });
    await storage.close();
  });

  it('knows a request again by its salt, and not once the salt was erased', async () => {
    const storage = await openNew('salt.gramwright');
    let salts = 0;
    const write = () => {
      salts += 1;
      const asked = { text: 'Mara Fell', salt: `salt ${salts}` };
      return writeOnce(
        storage,
        { id: 'one', at: AT, by: null, device: 'test', asked },
        AT,
        async (_tx, tell) => {
          await tell({ kind: 'tried', subjectKind: 'test', subjectId: 's', payload: {} });
          return 'first';
        },
      );
    };
    expect(must(await write())).toMatchObject({ again: false });
    expect(must(await write())).toEqual({ again: true, subjectId: 's' });
    storage.handle.exec('delete from request_salt');
    expect(await write()).toMatchObject({ problems: [{ code: 'stamp-used-otherwise' }] });
    await storage.close();
  });

  it('starts every transaction by taking the write lock', async () => {
    const storage = await openNew('immediate.gramwright');
    const seen: string[] = [];
    const original = storage.handle.prepare.bind(storage.handle);
    storage.handle.prepare = ((text: string) => {
      seen.push(text);
      return original(text);
    }) as typeof storage.handle.prepare;
    await storage.db.transaction().execute((tx) => sql`select 1`.execute(tx));
    expect(seen[0]).toBe('begin immediate');
    await storage.close();
  });

  it('tells a full disk as such, keeps nothing of the entry and everything before it', async () => {
    const storage = await openNew('full.gramwright');
    const write = (id: string, size: number) =>
      writeOnce(storage, { id, at: AT, by: null, device: 'test', asked: ASKED }, AT, async (_tx, tell) => {
        await tell({ kind: 'tried', subjectKind: 'test', subjectId: 's', payload: 'x'.repeat(size) });
      });
    expect((await write('before', 10)).ok).toBe(true);
    storage.handle.pragma(`max_page_count = ${storage.handle.pragma('page_count', { simple: true })}`);
    expect(await write('too-large', 1_000_000)).toEqual({
      ok: false,
      problems: [{ code: 'disk-full', where: storage.file }],
    });
    storage.handle.pragma('max_page_count = 1000000');
    expect((await write('after', 1_000_000)).ok).toBe(true);
    const ids = storage.handle.prepare('select id from entry order by seq').all();
    expect(ids).toEqual([{ id: 'before' }, { id: 'after' }]);
    await storage.close();
  });
});
