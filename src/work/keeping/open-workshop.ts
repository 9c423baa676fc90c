import { resolve } from 'node:path';
import { done, type Result } from '../../core/problem.ts';
import { type Machine, makeFolder } from '../../machine/index.ts';
import { datedName, openStorage, ownBackupFolder, readWorkshop, writeBackup } from '../../storage/index.ts';
import type { Context } from '../context.ts';

const FILE_NAME = 'workshop.gramwright';

export const workshopFile = (folder: string): string => resolve(folder, FILE_NAME);

export interface OpenWish {
  readonly folder: string;
  readonly machine: Machine;
  /** Refuses where there is no workshop yet, instead of making one. */
  readonly mustExist?: boolean;
  /** How long to wait for a file that another process has. */
  readonly waitMs?: number;
  readonly buildExample?: Context['buildExample'];
}

/** Opens the workshop of a folder, or makes it. An older file is backed up before it is brought to the present form. */
export async function openWorkshop(wish: OpenWish): Promise<Result<Context>> {
  const { folder, machine, buildExample, waitMs, mustExist = false } = wish;
  const file = workshopFile(folder);
  const made = mustExist ? done(folder) : makeFolder(resolve(folder));
  if (!made.ok) return made;
  const opened = await openStorage(file, {
    mustExist,
    ...(waitMs !== undefined && { waitMs }),
    beforeMigration(handle) {
      const backups = makeFolder(ownBackupFolder(file));
      return backups.ok
        ? writeBackup(handle, backups.value, datedName(file, machine.now(), 'before-migration'))
        : backups;
    },
  });
  return opened.ok ? done({ storage: opened.value, machine, ...(buildExample && { buildExample }) }) : opened;
}

/** Whether nobody has chosen yet between the example and a workshop of their own. */
export const isWorkshopEmpty = async ({ storage }: Context): Promise<boolean> =>
  (await readWorkshop(storage.db)) === undefined;
