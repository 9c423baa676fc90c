import { readFileSync, rmSync, writeFileSync } from 'node:fs';

/**
 * Beside an open workshop file lies the address of the server that has it, so that another program can be told.
 * It is a hint and no lock: the lock lies in the database, and an address left behind by a kill does no harm.
 */
const hintOf = (file: string): string => `${file}.address`;

const isMissing = (error: unknown): boolean =>
  error instanceof Error && 'code' in error && (error.code === 'ENOENT' || error.code === 'EACCES');

export function readAddressHint(file: string): string | null {
  try {
    const address = readFileSync(hintOf(file), 'utf8').trim();
    return /^http:\/\/[\w.:[\]-]+$/.test(address) ? address : null;
  } catch (error) {
    if (isMissing(error)) return null;
    throw error;
  }
}

export const writeAddressHint = (file: string, address: string): void =>
  writeFileSync(hintOf(file), `${address}\n`, { mode: 0o600 });

export const removeAddressHint = (file: string): void => rmSync(hintOf(file), { force: true });
