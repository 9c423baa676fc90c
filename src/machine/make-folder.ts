import { accessSync, constants, mkdirSync } from 'node:fs';
import { done, problem, type Result, refused } from '../core/problem.ts';

const CODES: Readonly<Record<string, string>> = {
  EACCES: 'folder-not-writable',
  EPERM: 'folder-not-writable',
  EROFS: 'folder-not-writable',
  EEXIST: 'folder-is-a-file',
  ENOTDIR: 'folder-is-a-file',
  ENOSPC: 'disk-full',
};

/** Makes the folder where it is not there yet, for its owner alone, and says why it cannot be used. */
export function makeFolder(folder: string): Result<string> {
  try {
    mkdirSync(folder, { recursive: true, mode: 0o700 });
    accessSync(folder, constants.R_OK | constants.W_OK | constants.X_OK);
    return done(folder);
  } catch (error) {
    const known = CODES[error instanceof Error && 'code' in error ? String(error.code) : ''];
    if (known === undefined) throw error;
    return refused(problem(known, folder));
  }
}
