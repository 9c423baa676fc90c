import { sql } from 'kysely';
import type { EntryRow } from './entry-store.ts';
import { hashRow, nameRow, RECORD_KEYS, type RecordRow, readRowHashes, rowKey } from './record-rows.ts';
import type { Reader } from './storage.ts';

/** Rows that belong to an entry by the batch they came with. */
export const BY_BATCH: ReadonlySet<string> = new Set(['batch_line', 'batch_tin']);

type Told = Map<string, { readonly hash: string; readonly entry: EntryRow }>;

/**
 * Compares every record with the hash that its entry holds of it: changed, missing, or never told by that entry. Only
 * one table's rows are looked at a time, one by one.
 */
export async function compareRows(db: Reader, entries: readonly EntryRow[]): Promise<string[]> {
  const told = tellRows(entries);
  const entryOf = new Map(entries.map((entry) => [entry.id, entry]));
  const wrong: string[] = [];
  for (const table of Object.keys(RECORD_KEYS)) {
    for await (const { entryId, row } of readRows(db, table)) {
      const entry = entryOf.get(entryId);
      // A row without its entry is told by another check.
      if (!entry) continue;
      const place = placeOf(table, entryId, rowKey(table, row));
      const known = told.get(place);
      const name = `${nameRow(table, row)} of ${nameEntry(known?.entry ?? entry)}`;
      if (!known) wrong.push(`${name} was added later`);
      else if (hashRow(row) !== known.hash) wrong.push(`${name} was changed`);
      told.delete(place);
    }
  }
  return [...wrong, ...[...told].map(([place, { entry }]) => `${nameMissing(place, entry)} is missing`)];
}

const SEPARATOR = '\n';
/** A lot may be corrected: what the last entry said of it holds, whichever that was. */
const placeOf = (table: string, entryId: string, key: string): string =>
  [table, table === 'lot' ? '' : entryId, key].join(SEPARATOR);

function tellRows(entries: readonly EntryRow[]): Told {
  const told: Told = new Map();
  for (const entry of entries) {
    for (const [table, rows] of Object.entries(readRowHashes(entry.rows))) {
      for (const [key, hash] of Object.entries(rows))
        told.set(placeOf(table, entry.id, key), { hash, entry });
    }
  }
  return told;
}

async function* readRows(db: Reader, table: string): AsyncGenerator<{ entryId: string; row: RecordRow }> {
  if (BY_BATCH.has(table)) {
    const { rows } = await sql<RecordRow & { batch_entry: string }>`
      select record.*, batch.entry_id as batch_entry
      from ${sql.table(table)} as record inner join batch on batch.id = record.batch_id`.execute(db);
    for (const { batch_entry, ...row } of rows) yield { entryId: batch_entry, row };
    return;
  }
  const rows = db
    .selectFrom(sql<RecordRow>`${sql.table(table)}`.as('record'))
    .selectAll()
    .stream();
  for await (const row of rows) yield { entryId: String(row.entry_id), row };
}

const nameMissing = (place: string, entry: EntryRow): string => {
  const [table = '', , key = ''] = place.split(SEPARATOR);
  return `${`${table} ${key}`.trim()} of ${nameEntry(entry)}`;
};

export const nameEntry = ({ seq, kind }: EntryRow): string => `entry ${seq} (${kind})`;
