import { existsSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';

/** The folder with the program's package.json: the same file serves the sources and the built program. */
export function findProgramFolder(from: string = import.meta.dirname): string {
  if (existsSync(join(from, 'package.json'))) return from;
  const parent = dirname(from);
  if (parent === from) throw new Error('no package.json above the program');
  return findProgramFolder(parent);
}

export const readOwnVersion = (): string =>
  (JSON.parse(readFileSync(join(findProgramFolder(), 'package.json'), 'utf8')) as { version: string })
    .version;
