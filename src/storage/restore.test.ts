import {
  copyFileSync,
  existsSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  truncateSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import Sqlite from 'better-sqlite3';
import { afterAll, beforeEach, describe, expect, it } from 'vitest';
import { countEntries, makeSmallFile, receiveLot } from '../../test/workshop/small-file.ts';
import { must } from '../core/problem.ts';
import { writeBackup } from './backup.ts';
import { checkUp } from './check-up.ts';
import { restoreBackup } from './restore.ts';
import { APPLICATION_ID } from './sqlite-only.ts';
import { openStorage } from './storage.ts';

const root = mkdtempSync(join(tmpdir(), 'gramwright-restore-'));
afterAll(() => rmSync(root, { recursive: true }));
const STAMP = { id: 'restored-1', at: '2026-11-03T09:30:00.000Z' };
let folder: string;
let file: string;
let backup: string;

beforeEach(async () => {
  folder = mkdtempSync(join(root, 'w-'));
  file = join(folder, 'workshop.gramwright');
  const storage = await makeSmallFile(file);
  backup = must(writeBackup(storage.handle, root, 'backup.gramwright')).file;
  await receiveLot(storage, 'later', 1_000_000);
  await storage.close();
});

const edit = (path: string, statement: string): void => {
  const handle = new Sqlite(path);
  handle.exec(statement);
  handle.close();
};
/** Nothing at all may have changed: neither the file nor what lies beside it. */
async function expectRefusal(code: string): Promise<void> {
  const before = readFileSync(file);
  const result = await restoreBackup(file, backup, STAMP);
  expect(result).toMatchObject({ ok: false, problems: [{ code, where: backup }] });
  expect(readFileSync(file).equals(before)).toBe(true);
  expect(readdirSync(folder)).toEqual(['workshop.gramwright']);
}

describe('restoring', () => {
  it('brings back what the backup held, tells it in the chain, and keeps the other file aside', async () => {
    const { keptAside } = must(await restoreBackup(file, backup, STAMP));
    const restored = must(await openStorage(file));
    expect(countEntries(restored)).toBe(3);
    expect(restored.handle.prepare('select kind from entry order by seq desc limit 1').get()).toEqual({
      kind: 'file-restored',
    });
    expect((await checkUp(restored)).flatMap((finding) => finding.wrong)).toEqual([]);
    await restored.close();
    expect(keptAside).toBe(join(folder, 'workshop-2026-11-03T09-30-00.000Z-before-restore.gramwright'));
    const aside = must(await openStorage(keptAside ?? ''));
    expect(countEntries(aside)).toBe(3);
    expect(aside.handle.prepare("select count(*) as n from lot where id = 'later'").get()).toEqual({ n: 1 });
    await aside.close();
    expect(readdirSync(folder).filter((name) => name.includes('restoring'))).toEqual([]);
  });

  it('brings back no PIN and nobody who was let in on a tablet: what was locked since stays locked', async () => {
    edit(
      backup,
      `insert into person (id, name, is_active, version) values ('ada', 'Ada', 1, 1);
       insert into device (id, name, token_hash, paired_at, is_dropped, version) values ('d', 'Tablet', 'h', '2026-11-03', 0, 1);
       insert into person_pin (person_id, salt, hash, key_name, version) values ('ada', 's', 'h', 'k', 1);
       insert into unlocked (device_id, person_id, at) values ('d', 'ada', '2026-11-03')`,
    );
    must(await restoreBackup(file, backup, STAMP));
    const restored = must(await openStorage(file));
    for (const table of ['person_pin', 'unlocked'])
      expect(restored.handle.prepare(`select count(*) as n from ${table}`).get()).toEqual({ n: 0 });
    await restored.close();
  });

  it('leaves the backup as it was, byte for byte', async () => {
    const before = readFileSync(backup);
    must(await restoreBackup(file, backup, STAMP));
    expect(readFileSync(backup).equals(before)).toBe(true);
    expect(existsSync(`${backup}-wal`)).toBe(false);
  });

  it('works where no file stands yet', async () => {
    rmSync(file);
    expect(must(await restoreBackup(file, backup, STAMP)).keptAside).toBeNull();
    const restored = must(await openStorage(file));
    expect(countEntries(restored)).toBe(3);
    await restored.close();
  });

  it('replaces a damaged file, its log kept with it', async () => {
    writeFileSync(file, 'no database any more');
    writeFileSync(`${file}-wal`, 'old log');
    const { keptAside } = must(await restoreBackup(file, backup, STAMP));
    expect(readFileSync(keptAside ?? '', 'utf8')).toBe('no database any more');
    const restored = must(await openStorage(file));
    expect(countEntries(restored)).toBe(3);
    await restored.close();
  });

  it('takes the newest rows from a log beside the backup', async () => {
    const live = must(await openStorage(file));
    await receiveLot(live, 'in-the-log', 1_000_000);
    const copied = join(root, 'copied-by-hand.gramwright');
    copyFileSync(file, copied);
    copyFileSync(`${file}-wal`, `${copied}-wal`);
    await live.close();
    must(await restoreBackup(file, copied, STAMP));
    const restored = must(await openStorage(file));
    expect(restored.handle.prepare("select count(*) as n from lot where id = 'in-the-log'").get()).toEqual({
      n: 1,
    });
    await restored.close();
  });

  it('brings a backup of an older form to the present one', async () => {
    const older = join(root, 'older.gramwright');
    rmSync(older, { force: true });
    edit(older, `pragma application_id = ${APPLICATION_ID}`);
    must(await restoreBackup(file, older, STAMP));
    const restored = must(await openStorage(file));
    expect(restored.handle.pragma('user_version', { simple: true })).toBe(restored.schemaVersion);
    await restored.close();
  });

  it('refuses a newer backup', async () => {
    edit(backup, 'pragma user_version = 999');
    await expectRefusal('file-newer');
  });

  it('refuses a file that is not ours', async () => {
    edit(backup, 'pragma application_id = 1');
    await expectRefusal('file-not-ours');
  });

  it('refuses a backup cut short, and one that is no database', async () => {
    truncateSync(backup, 8192);
    await expectRefusal('backup-torn');
    writeFileSync(backup, 'a letter to the bank');
    await expectRefusal('backup-torn');
  });

  it('refuses a backup with a page spoilt in the middle', async () => {
    const bytes = readFileSync(backup);
    bytes.fill(0xa5, bytes.length - 4096 * 3, bytes.length - 4096);
    writeFileSync(backup, bytes);
    await expectRefusal('backup-torn');
  });

  it('refuses a backup that is not there, and the workshop file itself', async () => {
    rmSync(backup);
    await expectRefusal('backup-missing');
    backup = file;
    await expectRefusal('backup-is-the-file');
  });

  it('refuses while another has the file open', async () => {
    const open = must(await openStorage(file));
    expect(await restoreBackup(file, backup, STAMP)).toMatchObject({
      problems: [{ code: 'file-held', where: file }],
    });
    await receiveLot(open, 'still-writable', 1_000_000);
    await open.close();
  });
});
