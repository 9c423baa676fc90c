import { existsSync, mkdirSync, mkdtempSync, readdirSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, afterEach, beforeEach, describe, expect, it } from 'vitest';
import { openTestWorkshop, type TestWorkshop } from '../../../test/workshop/open-test-workshop.ts';
import { must } from '../../core/problem.ts';
import { openStorage } from '../../storage/index.ts';
import { backUpIfDue } from './back-up.ts';

const root = mkdtempSync(join(tmpdir(), 'gramwright-keeping-'));
afterAll(() => rmSync(root, { recursive: true }));
let bench: TestWorkshop;
let folder: string;
beforeEach(async () => {
  folder = mkdtempSync(join(root, 'w-'));
  bench = await openTestWorkshop({ file: join(folder, 'workshop.gramwright') });
});
afterEach(() => bench.close());

const chooseFolder = async (backupFolder: string): Promise<void> => {
  const { details, version } = await bench.get('getWorkshop');
  if (!details) throw new Error('the workshop is begun');
  await bench.get('changeWorkshop', { body: { version, details: { ...details, backupFolder } } });
};

describe('a backup by hand', () => {
  it('goes beside the file where nobody chose a folder, and is the last one told', async () => {
    const made = await bench.get('backUp', { body: {} });
    expect(made.file).toBe(join(folder, 'backups', 'workshop-2026-11-26T08-05-00Z-by-hand.gramwright'));
    expect((await bench.get('getWorkshop')).lastBackup).toEqual({ at: bench.now(), file: made.file });
    const copy = must(await openStorage(made.file));
    expect(copy.handle.prepare('select count(*) as n from person').get()).toEqual({ n: 2 });
    await copy.close();
  });

  it('goes into the folder that was chosen, or the one asked for now', async () => {
    const [chosen, asked] = [join(folder, 'chosen'), join(folder, 'asked')];
    for (const each of [chosen, asked]) mkdirSync(each);
    await chooseFolder(chosen);
    expect((await bench.get('backUp', { body: {} })).file).toContain(`${chosen}/`);
    expect((await bench.get('backUp', { body: { folder: asked } })).file).toContain(`${asked}/`);
  });

  it('makes no chosen folder: it is often a stick that is not plugged in', async () => {
    const unplugged = join(folder, 'stick');
    await chooseFolder(unplugged);
    expect(await bench.ask('backUp', { body: {} })).toMatchObject({
      problems: [{ code: 'backup-folder-missing', where: unplugged }],
    });
    expect(existsSync(unplugged)).toBe(false);
    expect((await bench.get('getWorkshop')).lastBackup).toBeNull();
  });

  it('wants the whole path of a folder', async () => {
    expect(await bench.ask('backUp', { body: { folder: 'backups' } })).toMatchObject({
      problems: [{ code: 'backup-folder-not-whole' }],
    });
  });

  it('may be made while entries are being made', async () => {
    const people = Array.from({ length: 20 }, (_, number) =>
      bench.get('savePerson', { body: { name: `Person ${number}` } }),
    );
    const backups = Array.from({ length: 3 }, () => bench.get('backUp', { body: {} }));
    const made = await Promise.all([...people, ...backups]);
    expect(made).toHaveLength(23);
    expect(readdirSync(join(folder, 'backups'))).toHaveLength(3);
    expect((await bench.get('checkUp')).isSound).toBe(true);
  });
});

describe("the day's backup", () => {
  const due = async () => must(await backUpIfDue(bench.context));

  it('is due at once, then a day later to the millisecond', async () => {
    expect(await due()).not.toBeNull();
    bench.setClock('2026-11-27T08:04:59.999Z');
    expect(await due()).toBeNull();
    bench.setClock('2026-11-27T08:05:00.000Z');
    expect(await due()).not.toBeNull();
  });

  it('is not put off by one made by hand', async () => {
    await bench.get('backUp', { body: {} });
    expect(await due()).not.toBeNull();
  });

  it('needs something to be kept', async () => {
    const empty = await openTestWorkshop({ file: join(folder, 'empty.gramwright'), isEmpty: true });
    expect(must(await backUpIfDue(empty.context))).toBeNull();
    await empty.close();
  });

  it('keeps the newest thirty', async () => {
    for (let day = 1; day <= 33; day += 1) {
      bench.setClock(new Date(Date.UTC(2027, 0, day, 9)).toISOString());
      await due();
    }
    const names = readdirSync(join(folder, 'backups')).sort();
    expect(names).toHaveLength(30);
    expect(names[0]).toContain('2027-01-04');
    expect(names.at(-1)).toContain('2027-02-02');
  });

  it('says why it could not be made, and is asked again', async () => {
    await chooseFolder(join(folder, 'stick'));
    expect(await backUpIfDue(bench.context)).toMatchObject({ problems: [{ code: 'backup-folder-missing' }] });
    mkdirSync(join(folder, 'stick'));
    expect(await due()).not.toBeNull();
  });
});

describe('opening', () => {
  it('an older file leaves a backup of it beside', async () => {
    const { openWorkshop } = await import('./open-workshop.ts');
    const older = mkdtempSync(join(root, 'older-'));
    const { default: Sqlite } = await import('better-sqlite3');
    const made = new Sqlite(join(older, 'workshop.gramwright'));
    made.pragma(`application_id = ${0x4772616d}`);
    made.close();
    const context = must(await openWorkshop({ folder: older, machine: bench.context.machine }));
    await context.storage.close();
    expect(readdirSync(join(older, 'backups'))).toEqual([
      'workshop-2026-11-26T08-05-00Z-before-migration.gramwright',
    ]);
  });
});
