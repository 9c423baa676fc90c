import { resolve } from 'node:path';
import type { Result } from '../../core/problem.ts';
import { type Machine, makeFolder } from '../../machine/index.ts';
import { type Restored, restoreBackup } from '../../storage/index.ts';
import { workshopFile } from './open-workshop.ts';

/** Puts a backup in the place of the workshop's file; what stood there is kept under a dated name. */
export async function restoreWorkshop(
  folder: string,
  backup: string,
  machine: Machine,
): Promise<Result<Restored>> {
  const made = makeFolder(resolve(folder));
  if (!made.ok) return made;
  return restoreBackup(workshopFile(folder), resolve(backup), { id: machine.newId(), at: machine.now() });
}
