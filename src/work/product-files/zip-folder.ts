import { strToU8, zipSync } from 'fflate';

export type Folder = ReadonlyMap<string, Uint8Array>;

/**
 * A folder in one file, the same bytes for the same content: names in their order, and the time of the data as UTC reads
 * it, since the format has no zones and would take whichever this computer stands in.
 */
export function zipFolder(folder: Folder, asOf: string): Uint8Array {
  const at = new Date(asOf);
  const mtime = new Date(
    at.getUTCFullYear(),
    at.getUTCMonth(),
    at.getUTCDate(),
    at.getUTCHours(),
    at.getUTCMinutes(),
    at.getUTCSeconds(),
  );
  const files = [...folder].sort(([one], [other]) => (one < other ? -1 : 1));
  return zipSync(Object.fromEntries(files), { mtime });
}

export const textFile = (text: string): Uint8Array => strToU8(text.endsWith('\n') ? text : `${text}\n`);

/** A name that every system takes for a file: what means something in a path becomes a dash. */
export const plainName = (name: string): string =>
  name
    .replace(/[\\/:*?"<>|\p{Cc}]+/gu, '-')
    .replace(/^\.+/, '')
    .trim() || 'file';

/** Two files of one name in one folder both stay. */
export function putFile(folder: Map<string, Uint8Array>, path: string, bytes: Uint8Array): string {
  const [, stem = path, ending = ''] = /^(.*?)(\.[A-Za-z0-9]+)?$/.exec(path) ?? [];
  let free = path;
  for (let count = 2; folder.has(free); count += 1) free = `${stem}-${count}${ending}`;
  folder.set(free, bytes);
  return free;
}
