import { randomBytes } from 'node:crypto';
import {
  chmodSync,
  closeSync,
  existsSync,
  fsyncSync,
  mkdirSync,
  openSync,
  readFileSync,
  renameSync,
  writeSync,
} from 'node:fs';
import { dirname, join } from 'node:path';

/**
 * Beside the workshop's file lies a folder with what belongs to this computer and not to the workshop: the switch, keys
 * and certificates. Backups and exports hold none of it.
 */
export const networkFolder = (file: string): string => join(dirname(file), 'network');

/** For its owner alone. A folder that was there before is closed too: it may have come from a stick that knows no owners. */
function openFolder(folder: string): void {
  mkdirSync(folder, { recursive: true, mode: 0o700 });
  chmodSync(folder, 0o700);
}

export function readKept(folder: string, name: string): string | null {
  const file = join(folder, name);
  return existsSync(file) ? readFileSync(file, 'utf8') : null;
}

/** Under a passing name, for its owner alone, on disk, then named: a half-written key is never found. */
export function keep(folder: string, name: string, text: string): void {
  openFolder(folder);
  const passing = join(folder, `.${name}.${randomBytes(4).toString('hex')}.part`);
  const descriptor = openSync(passing, 'wx', 0o600);
  try {
    writeSync(descriptor, text);
    fsyncSync(descriptor);
  } finally {
    closeSync(descriptor);
  }
  renameSync(passing, join(folder, name));
}

/** What the owner chose: kept here and not in the file, so that a backup put back elsewhere opens no network by itself. */
export interface NetworkChoice {
  readonly isOn: boolean;
  /** The port that devices know; null until it was on once. */
  readonly port: number | null;
}

const CHOICE = 'network.json';

/** Anything that cannot be read is off. */
export function readNetworkChoice(folder: string): NetworkChoice {
  try {
    const { isOn, port } = JSON.parse(readKept(folder, CHOICE) ?? '{}') as Partial<NetworkChoice>;
    return { isOn: isOn === true, port: Number.isInteger(port) ? Number(port) : null };
  } catch (error) {
    if (error instanceof SyntaxError) return { isOn: false, port: null };
    throw error;
  }
}

export const keepNetworkChoice = (folder: string, choice: NetworkChoice): void =>
  keep(folder, CHOICE, `${JSON.stringify(choice)}\n`);

const PIN_KEY = 'pin.key';
/** Of workshops that lie in memory only, or in no folder: gone with the program. */
const passingKeys = new Map<string, Buffer>();

/** What PINs are hashed with beside their salt; null where no PIN was ever set on this computer. */
export function findPinKey(file: string): Buffer | null {
  if (file === ':memory:') return passingKeys.get(file) ?? null;
  const kept = readKept(networkFolder(file), PIN_KEY);
  return kept === null ? null : Buffer.from(kept.trim(), 'hex');
}

/** The same, made where there is none. */
export function readPinKey(file: string): Buffer {
  const known = findPinKey(file);
  if (known !== null) return known;
  const made = randomBytes(32);
  if (file === ':memory:') passingKeys.set(file, made);
  else keep(networkFolder(file), PIN_KEY, `${made.toString('hex')}\n`);
  return made;
}

const DROPPED = 'dropped.txt';
const passingDropped = new Map<string, readonly string[]>();

/**
 * The hashes of devices that were dropped, kept beside the file as well: a backup of the time before knows nothing of the
 * dropping, and must not let the device in again.
 */
export function readDropped(file: string): readonly string[] {
  if (file === ':memory:') return passingDropped.get(file) ?? [];
  return (readKept(networkFolder(file), DROPPED) ?? '').split('\n').filter((line) => line !== '');
}

export function noteDropped(file: string, hash: string): void {
  const all = [...new Set([...readDropped(file), hash])];
  if (file === ':memory:') passingDropped.set(file, all);
  else keep(networkFolder(file), DROPPED, `${all.join('\n')}\n`);
}
