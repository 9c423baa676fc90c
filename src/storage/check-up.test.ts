import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, afterEach, beforeEach, describe, expect, it } from 'vitest';
import { AT, makeSmallFile, receiveLot } from '../../test/workshop/small-file.ts';
import { insertBackup } from './backup-store.ts';
import { checkUp } from './check-up.ts';
import { updateLotFacts } from './lot-store.ts';
import type { Storage } from './storage.ts';
import { writeOnce } from './write.ts';

const root = mkdtempSync(join(tmpdir(), 'gramwright-check-'));
afterAll(() => rmSync(root, { recursive: true }));
let storage: Storage;
let number = 0;
beforeEach(async () => {
  number += 1;
  storage = await makeSmallFile(join(root, `w${number}.gramwright`));
  await receiveLot(storage, 'l2', 2_000_000);
});
afterEach(() => storage.close());

/** As another program would: past the guards. */
function tamper(...statements: string[]): void {
  storage.handle.pragma('foreign_keys = OFF');
  const triggers = storage.handle.prepare("select name from sqlite_master where type = 'trigger'").all();
  for (const { name } of triggers as { name: string }[]) storage.handle.exec(`drop trigger "${name}"`);
  for (const statement of statements) storage.handle.exec(statement);
}
const wrong = async (): Promise<Record<string, readonly string[]>> =>
  Object.fromEntries(
    (await checkUp(storage)).filter((it) => it.wrong.length > 0).map((it) => [it.check, it.wrong]),
  );

describe('a check-up', () => {
  it('finds nothing wrong in a sound file, and looked at something', async () => {
    expect(await wrong()).toEqual({});
    const looked = Object.fromEntries((await checkUp(storage)).map((it) => [it.check, it.looked]));
    expect(looked).toMatchObject({ chain: 3, sequence: 3, end: 0, records: 7, rows: 3, balances: 2 });
  });

  it('finds an entry whose text was changed, down to one character', async () => {
    tamper("update entry set payload = replace(payload, 'received', 'receivee') where seq = 1");
    expect(await wrong()).toEqual({ chain: ['entry 1 (lot-received)'] });
  });

  it('finds every changed column of an entry', async () => {
    const columns = [
      'id',
      'kind',
      'subject_kind',
      'subject_id',
      'payload',
      'request_hash',
      'happened_at',
      'recorded_at',
      'device',
    ];
    for (const column of columns) {
      tamper(`update entry set ${column} = ${column} || 'x' where seq = 3`);
      expect((await wrong()).chain, column).toHaveLength(1);
      tamper(`update entry set ${column} = substr(${column}, 1, length(${column}) - 1) where seq = 3`);
      expect((await wrong()).chain, column).toBeUndefined();
    }
  });

  it('finds an entry taken out, by the gap and by the link', async () => {
    tamper('delete from entry where seq = 2');
    expect(await wrong()).toMatchObject({
      sequence: ['entry 2 is missing before 3'],
      chain: [expect.stringContaining('entry 3')],
      records: ['attachment a1 names entry attached-a1, which is not here'],
      'foreign-keys': [expect.stringContaining('attachment')],
    });
  });

  it('finds entries cut off at the end, with all that they brought', async () => {
    tamper(
      "delete from movement where entry_id = 'received-l2'",
      "delete from lot where id = 'l2'",
      'delete from entry where seq = 3',
    );
    expect(await wrong()).toEqual({ end: ['3 entries were written, the last is 2'] });
  });

  it('goes on finding them after the next entry', async () => {
    tamper(
      "delete from movement where entry_id = 'received-l2'",
      "delete from lot where id = 'l2'",
      'delete from entry where seq = 3',
    );
    await receiveLot(storage, 'l3', 1_000_000);
    expect(await wrong()).toMatchObject({ sequence: ['entry 3 is missing before 4'] });
  });

  it('finds a chain that was cut and noted so, by what a backup ended with', async () => {
    const made = { file: '/backups/one', bytes: 1, kind: 'daily', at: '2026-11-02T09:00:00Z' };
    await insertBackup(storage.db, made);
    expect(await wrong()).toEqual({});
    tamper(
      "delete from movement where entry_id = 'received-l2'",
      "delete from lot where id = 'l2'",
      'delete from entry where seq = 3',
      'update chain_end set seq = 2, hash = (select hash from entry where seq = 2)',
    );
    expect(await wrong()).toEqual({
      end: ['the backup of 2026-11-02T09:00:00Z ended with entry 3, which is not here'],
    });
  });

  it('finds an entry whose fields were shifted into one another', async () => {
    tamper("update entry set kind = kind || char(10) || subject_kind, subject_kind = '' where seq = 3");
    expect((await wrong()).chain).toEqual([expect.stringContaining('entry 3')]);
  });

  it('finds an entry that was computed anew after a change: the next one names the old hash', async () => {
    tamper("update entry set hash = 'f' || substr(hash, 2) where seq = 1");
    expect((await wrong()).chain).toContain('entry 2 (file-attached)');
  });

  it('finds more taken from a lot than it had', async () => {
    tamper("update movement set quantity = 999 where id = 'l2-a'");
    expect(await wrong()).toEqual({
      balances: ['lot L-l2, Shelf'],
      rows: ['movement l2-a of entry 3 (lot-received) was changed'],
    });
  });

  it('names the table, the row and the entry of a record that was changed, taken out or put in', async () => {
    tamper(
      "update movement set quantity = quantity + 1 where id = 'l1-a'",
      "update lot set best_before = '2099-01-01' where id = 'l2'",
      "update attachment set bytes = x'00'",
      "insert into lot_status values ('received-l1', 'l1', 'released', '')",
      "delete from movement where id = 'l2-b'",
    );
    expect((await wrong()).rows).toEqual([
      'movement l1-a of entry 1 (lot-received) was changed',
      'lot l2 (L-l2) of entry 3 (lot-received) was changed',
      'lot_status l1 of entry 1 (lot-received) was added later',
      'attachment a1 of entry 2 (file-attached) was changed',
      'movement l2-b of entry 3 (lot-received) is missing',
    ]);
  });

  it('knows a lot that was corrected as it is since, and finds it changed afterwards', async () => {
    const stamp = { id: 'correction', at: AT, by: 'p1', device: 'test', asked: { text: 'x', salt: null } };
    const facts = {
      id: 'l2',
      supplier_lot: 'S-9',
      best_before: '2027-01-31',
      paid: '4.20',
      received: 2_000_000,
    };
    const written = await writeOnce(storage, stamp, AT, async (tx, tell) => {
      await tell({ kind: 'lot-corrected', subjectKind: 'lot', subjectId: 'l2', payload: {} });
      return updateLotFacts(tx, facts, 1);
    });
    expect(written).toMatchObject({ value: { value: true } });
    expect(await wrong()).toEqual({});
    tamper("update lot set best_before = '2027-02-28' where id = 'l2'");
    expect((await wrong()).rows).toEqual(['lot l2 (L-l2) of entry 4 (lot-corrected) was changed']);
  });

  it('finds a row that names another which is not there', async () => {
    tamper("delete from place where id = 'shelf'");
    expect((await wrong())['foreign-keys']?.[0]).toContain('place');
  });
});
