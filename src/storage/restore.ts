import { copyFileSync, existsSync, linkSync, renameSync, rmSync } from 'node:fs';
import { basename, dirname, join, resolve } from 'node:path';
import { done, problem, type Result, refused } from '../core/problem.ts';
import { datedName, syncFolder, syncToDisk } from './backup.ts';
import { foreignKeyFindings, integrityFindings, openSqlite } from './sqlite-only.ts';
import { openProblem, openStorage, whyNotOurs } from './storage.ts';
import { type Writer, writeOnce } from './write.ts';

export interface Restored {
  readonly file: string;
  /** Where the file that stood there before is kept; null where there was none. */
  readonly keptAside: string | null;
}

/** When, and the id of the entry that tells of it. */
export interface RestoreStamp {
  readonly id: string;
  readonly at: string;
}

/**
 * Puts a backup in the place of the workshop file.
 *
 * Works on a copy, so that the backup is never written to; the copy is looked through, brought to the present form,
 * told in its own chain, and on disk before it takes the name. The file that stood there is kept under a dated name.
 */
export async function restoreBackup(
  file: string,
  backup: string,
  stamp: RestoreStamp,
): Promise<Result<Restored>> {
  if (!existsSync(backup)) return refused(problem('backup-missing', backup));
  if (resolve(backup) === resolve(file)) return refused(problem('backup-is-the-file', backup));
  const passing = join(dirname(file), `.${basename(file)}.restoring`);
  try {
    const free = makeSureNobodyHas(file);
    if (!free.ok) return free;
    clear(passing);
    copyWithLog(backup, passing);
    const ready = await prepareCopy(passing, backup, stamp);
    return ready.ok ? done(swap(file, passing, stamp.at)) : ready;
  } catch (error) {
    const known = openProblem(error, file);
    if (known) return refused(known);
    throw error;
  } finally {
    clear(passing);
  }
}

const clear = (file: string): void => {
  for (const end of ['', '-wal', '-shm', '-journal']) rmSync(`${file}${end}`, { force: true });
};

/** A write-ahead log beside the backup holds its newest rows: without it they would be lost in silence. */
function copyWithLog(from: string, to: string): void {
  copyFileSync(from, to);
  if (existsSync(`${from}-wal`)) copyFileSync(`${from}-wal`, `${to}-wal`);
}

/** A damaged file may be replaced, one that another process has may not. */
function makeSureNobodyHas(file: string): Result<null> {
  if (!existsSync(file)) return done(null);
  const handle = openSqlite(file);
  try {
    handle.exec('begin immediate; rollback');
    return done(null);
  } catch (error) {
    const known = openProblem(error, file);
    return known?.code === 'file-torn' ? done(null) : refused(known ?? problem('file-torn', file));
  } finally {
    handle.close();
  }
}

async function prepareCopy(passing: string, backup: string, stamp: RestoreStamp): Promise<Result<null>> {
  const sound = lookThrough(passing, backup);
  if (!sound.ok) return sound;
  const opened = await openStorage(passing, { mustExist: true });
  if (!opened.ok) return opened;
  const told = await writeOnce(
    opened.value,
    {
      id: stamp.id,
      at: stamp.at,
      by: null,
      device: 'this computer',
      asked: { text: 'file-restored', salt: null },
    },
    stamp.at,
    async (tx, tell) => {
      await tell({
        kind: 'file-restored',
        subjectKind: 'workshop',
        subjectId: 'workshop',
        payload: { backup: basename(backup), pinsAreSetAnew: true },
      });
      await forgetPins(tx);
    },
  );
  await opened.value.close();
  if (!told.ok) return told;
  syncToDisk(passing);
  return done(null);
}

/** A PIN that was changed since, or a person who locked a tablet since, must not come back with an older file. */
async function forgetPins(tx: Writer): Promise<void> {
  await tx.deleteFrom('unlocked').returningAll().execute();
  await tx.deleteFrom('person_pin').returningAll().execute();
}

/** Says of the copy what is wrong with the backup, by the backup's own name. */
function lookThrough(passing: string, backup: string): Result<null> {
  const handle = openSqlite(passing);
  try {
    const refusal = whyNotOurs(handle, backup);
    if (refusal) return refused(refusal);
    const findings = [...integrityFindings(handle), ...foreignKeyFindings(handle)];
    return findings.length === 0
      ? done(null)
      : refused(problem('backup-torn', backup, { found: findings[0] ?? '' }));
  } catch (error) {
    const known = openProblem(error, backup);
    if (known?.code === 'file-torn') return refused(problem('backup-torn', backup, { found: 'unreadable' }));
    throw error;
  } finally {
    handle.close();
  }
}

/** The name always stands for a whole file: first the old one gets a second name, then the new one takes the first. */
function swap(file: string, passing: string, at: string): Restored {
  const aside = join(dirname(file), datedName(file, at, 'before-restore'));
  const isThere = existsSync(file);
  if (isThere) keepAside(file, aside);
  renameSync(passing, file);
  syncFolder(dirname(file));
  return { file, keptAside: isThere ? aside : null };
}

function keepAside(file: string, aside: string): void {
  for (const log of ['-wal', '-journal']) {
    // Of a damaged file only: a log left here would be played into the restored one.
    if (existsSync(`${file}${log}`)) renameSync(`${file}${log}`, `${aside}${log}`);
  }
  try {
    linkSync(file, aside);
  } catch {
    // Sticks and memory cards know no second name for a file.
    copyFileSync(file, aside);
    syncToDisk(aside);
  }
}
