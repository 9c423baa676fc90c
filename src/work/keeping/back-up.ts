import { isAbsolute } from 'node:path';
import { done, problem, type Result, refused } from '../../core/problem.ts';
import { makeFolder } from '../../machine/index.ts';
import {
  type BackupFile,
  clearOldDailies,
  datedName,
  findLastBackup,
  insertBackup,
  ownBackupFolder,
  readWorkshop,
  writeBackup,
} from '../../storage/index.ts';
import type { Context } from '../context.ts';
import type { UseCase } from '../use-case.ts';

type Kind = 'daily' | 'by-hand';
type Made = BackupFile & { readonly at: string };

/** A month of dailies (common practice, no source). */
const DAILIES_KEPT = 30;
const DAY_MS = 24 * 60 * 60 * 1000;

export const backUp: UseCase<'backUp'> = async (context, { body }) => {
  const folder = await chooseFolder(context, body.folder);
  return folder.ok ? make(context, folder.value, 'by-hand') : folder;
};

/** The folder asked for, else the workshop's own choice, else `backups` beside the file. Only the last is made. */
async function chooseFolder({ storage }: Context, asked = ''): Promise<Result<string>> {
  const row = await readWorkshop(storage.db);
  const chosen = row === undefined ? '' : (JSON.parse(row.details) as { backupFolder: string }).backupFolder;
  const folder = asked || chosen;
  if (folder === '') return makeFolder(ownBackupFolder(storage.file));
  return isAbsolute(folder) ? done(folder) : refused(problem('backup-folder-not-whole', folder));
}

async function make({ storage, machine }: Context, folder: string, kind: Kind): Promise<Result<Made>> {
  const at = machine.now();
  // The connection is taken whole: a copy cannot be made while a write is under way on it.
  const written = await storage.db
    .connection()
    .execute(async () => writeBackup(storage.handle, folder, datedName(storage.file, at, kind)));
  if (!written.ok) return written;
  await insertBackup(storage.db, { at, kind, ...written.value });
  return done({ at, ...written.value });
}

/**
 * The day's backup: written when the last daily is older than a day, then dailies beyond the newest 30 are cleared away.
 * Answers with what was written, or null where none was due; a file in which nothing was entered yet needs none.
 */
export async function backUpIfDue(context: Context): Promise<Result<Made | null>> {
  const { storage, machine } = context;
  const last = await findLastBackup(storage.db, 'daily');
  if (last && Date.parse(machine.now()) - Date.parse(last.at) < DAY_MS) return done(null);
  if ((await readWorkshop(storage.db)) === undefined) return done(null);
  const folder = await chooseFolder(context);
  if (!folder.ok) return folder;
  const made = await make(context, folder.value, 'daily');
  if (made.ok) await clearOldDailies(storage.db, folder.value, DAILIES_KEPT);
  return made;
}
