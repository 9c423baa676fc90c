import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, afterEach, beforeEach, describe, expect, it } from 'vitest';
import { makeSmallFile, receiveLot } from '../../test/workshop/small-file.ts';
import { checkUp } from './check-up.ts';
import type { Storage } from './storage.ts';

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
    expect(looked).toMatchObject({ chain: 3, sequence: 3, records: 7, balances: 2 });
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
      records: ['attachment: 1'],
      'foreign-keys': [expect.stringContaining('attachment')],
    });
  });

  it('finds an entry that was computed anew after a change: the next one names the old hash', async () => {
    tamper("update entry set hash = 'f' || substr(hash, 2) where seq = 1");
    expect((await wrong()).chain).toContain('entry 2 (file-attached)');
  });

  it('finds more taken from a lot than it had', async () => {
    tamper("update movement set quantity = 999 where id = 'l2-a'");
    expect(await wrong()).toEqual({ balances: ['lot L-l2, Shelf'] });
  });

  it('finds a row that names another which is not there', async () => {
    tamper("delete from place where id = 'shelf'");
    expect((await wrong())['foreign-keys']?.[0]).toContain('place');
  });
});
