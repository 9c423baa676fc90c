import {
  accessSync,
  closeSync,
  constants,
  existsSync,
  fsyncSync,
  openSync,
  renameSync,
  rmSync,
  statSync,
} from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { done, type Problem, problem, type Result, refused } from '../core/problem.ts';
import { copyInto, integrityFindings, openReadOnly, type SqliteHandle } from './sqlite-only.ts';
import { openProblem } from './storage.ts';

export interface BackupFile {
  readonly file: string;
  readonly bytes: number;
}

/**
 * Writes a backup into a folder: a consistent copy under a passing name, looked through, on disk, then named.
 * Nothing half-written is ever found under a backup's name.
 */
export function writeBackup(handle: SqliteHandle, folder: string, name: string): Result<BackupFile> {
  const hindrance = folderProblem(folder);
  if (hindrance) return refused(hindrance);
  const passing = join(folder, `.${name}.part`);
  try {
    rmSync(passing, { force: true });
    copyInto(handle, passing);
    const findings = lookThrough(passing);
    if (findings.length > 0)
      return refused(problem('backup-not-sound', folder, { found: findings[0] ?? '' }));
    syncToDisk(passing);
    const file = freeName(join(folder, name));
    renameSync(passing, file);
    syncFolder(folder);
    return done({ file, bytes: statSync(file).size });
  } catch (error) {
    const known = openProblem(error, folder);
    if (known) return refused(known);
    throw error;
  } finally {
    rmSync(passing, { force: true });
  }
}

/** Says before writing why a folder cannot take a backup; never makes it: a missing one is often a stick not plugged in. */
function folderProblem(folder: string): Problem | undefined {
  if (!existsSync(folder)) return problem('backup-folder-missing', folder);
  if (!statSync(folder).isDirectory()) return problem('backup-folder-no-folder', folder);
  try {
    accessSync(folder, constants.W_OK | constants.X_OK);
    return undefined;
  } catch {
    return problem('backup-folder-not-writable', folder);
  }
}

function lookThrough(file: string): string[] {
  const copy = openReadOnly(file);
  try {
    return integrityFindings(copy);
  } finally {
    copy.close();
  }
}

/** Two backups of one moment both stay. */
function freeName(wanted: string): string {
  const end = wanted.lastIndexOf('.');
  const numbered = (number: number): string => `${wanted.slice(0, end)}-${number}${wanted.slice(end)}`;
  let name = wanted;
  for (let number = 2; existsSync(name); number += 1) name = numbered(number);
  return name;
}

export function syncToDisk(file: string): void {
  const descriptor = openSync(file, 'r+');
  fsyncSync(descriptor);
  closeSync(descriptor);
}

/** A new name is on disk only once its folder is; Windows writes names through and opens no folder for it. */
export function syncFolder(folder: string): void {
  if (process.platform === 'win32') return;
  const descriptor = openSync(folder, 'r');
  fsyncSync(descriptor);
  closeSync(descriptor);
}

/** `workshop.gramwright` at an instant, for a reason: `workshop-2026-11-27T08-05-00.000Z-daily.gramwright`. */
export function datedName(file: string, at: string, why: string): string {
  const stem = basename(file).replace(/\.gramwright$/, '');
  return `${stem}-${at.replaceAll(':', '-')}-${why}.gramwright`;
}

/** Where backups go when nobody chose a folder. */
export const ownBackupFolder = (file: string): string => join(dirname(file), 'backups');
