import { existsSync, mkdirSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, afterEach, beforeEach, describe, expect, it } from 'vitest';
import { AT, countEntries, makeSmallFile, receiveLot } from '../../test/workshop/small-file.ts';
import { must } from '../core/problem.ts';
import { datedName, writeBackup } from './backup.ts';
import { clearOldDailies, findLastBackup, insertBackup } from './backup-store.ts';
import { openReadOnly } from './sqlite-only.ts';
import { openStorage, type Storage } from './storage.ts';

const root = mkdtempSync(join(tmpdir(), 'gramwright-backup-'));
afterAll(() => rmSync(root, { recursive: true }));
let storage: Storage;
let folder: string;
let number = 0;
beforeEach(async () => {
  number += 1;
  folder = join(root, `backups-${number}`);
  mkdirSync(folder);
  storage = await makeSmallFile(join(root, `w${number}.gramwright`));
});
afterEach(() => storage.close());

describe('a backup', () => {
  it('is a whole workshop file of its own, with everything acknowledged before it', async () => {
    const made = must(writeBackup(storage.handle, folder, 'one.gramwright'));
    expect(readdirSync(folder)).toEqual(['one.gramwright']);
    await receiveLot(storage, 'later', 1_000_000);
    const copy = must(await openStorage(made.file));
    expect(countEntries(copy)).toBe(2);
    expect(copy.handle.prepare('select hex(bytes) as hex from attachment').get()).toEqual({
      hex: '00FF25504446',
    });
    await copy.close();
    expect(made.bytes).toBeGreaterThan(10_000);
  });

  it('never takes the name of another', () => {
    const names = [1, 2, 3].map(() => must(writeBackup(storage.handle, folder, 'same.gramwright')).file);
    expect(new Set(names).size).toBe(3);
    expect(readdirSync(folder)).toHaveLength(3);
  });

  it('is named by its moment and reason', () => {
    expect(datedName('/w/workshop.gramwright', AT, 'daily')).toBe(
      'workshop-2026-11-02T08-00-00.000Z-daily.gramwright',
    );
  });

  it('is told no, by the folder, where there is none or a file stands there', () => {
    const missing = join(root, 'unplugged');
    expect(writeBackup(storage.handle, missing, 'x.gramwright')).toMatchObject({
      problems: [{ code: 'backup-folder-missing', where: missing }],
    });
    expect(existsSync(missing)).toBe(false);
    const file = join(root, 'a-file');
    writeFileSync(file, '');
    expect(writeBackup(storage.handle, file, 'x.gramwright')).toMatchObject({
      problems: [{ code: 'backup-folder-no-folder' }],
    });
  });

  it('carries no write-ahead log that could be lost', () => {
    const { file } = must(writeBackup(storage.handle, folder, 'one.gramwright'));
    const copy = openReadOnly(file);
    expect(copy.pragma('journal_mode', { simple: true })).toBe('delete');
    copy.close();
  });
});

describe('old dailies', () => {
  const makeDaily = async (day: number) => {
    const at = new Date(Date.UTC(2026, 0, day)).toISOString();
    const made = must(writeBackup(storage.handle, folder, datedName(storage.file, at, 'daily')));
    await insertBackup(storage.db, { at, kind: 'daily', ...made });
  };

  it('beyond the number kept are cleared away, the oldest first', async () => {
    for (const day of [1, 2, 3, 4]) await makeDaily(day);
    await clearOldDailies(storage.db, folder, 3);
    expect(readdirSync(folder).map((name) => name.slice(3, 13))).toHaveLength(3);
    expect(readdirSync(folder).some((name) => name.includes('2026-01-01'))).toBe(false);
    expect((await findLastBackup(storage.db, 'daily'))?.at).toBe('2026-01-04T00:00:00.000Z');
  });

  it('leave alone what the workshop did not write, made by hand, or that is not what it was', async () => {
    for (const day of [1, 2]) await makeDaily(day);
    const foreign = join(folder, datedName(storage.file, '2020-01-01T00:00:00.000Z', 'daily'));
    writeFileSync(foreign, 'kept');
    const oldest = readdirSync(folder).find((name) => name.includes('2026-01-01')) ?? '';
    writeFileSync(join(folder, oldest), 'replaced by somebody');
    const byHand = must(writeBackup(storage.handle, folder, 'by-hand.gramwright'));
    await insertBackup(storage.db, { at: '2020-01-02T00:00:00.000Z', kind: 'by-hand', ...byHand });
    expect(await clearOldDailies(storage.db, folder, 1)).toEqual([]);
    expect(readdirSync(folder)).toHaveLength(4);
  });

  it('of another folder are not counted', async () => {
    for (const day of [1, 2]) await makeDaily(day);
    expect(await clearOldDailies(storage.db, join(root, 'elsewhere'), 0)).toEqual([]);
  });
});
