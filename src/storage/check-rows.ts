import { sql } from 'kysely';
import type { EntryRow } from './entry-store.ts';
import {
  hashRow,
  isEdited,
  isThing,
  nameRow,
  RECORD_KEYS,
  type RecordRow,
  readRowHashes,
  rowKey,
  THING_KEYS,
} from './record-rows.ts';
import type { Reader } from './storage.ts';

/** Rows that name no entry, but the batch they are of: told by the entry that began it, or by a later one. */
export const BY_BATCH: ReadonlySet<string> = new Set(['batch_line', 'batch_tin']);

type Told = Map<string, { readonly hash: string | null; readonly entry: EntryRow }>;

/**
 * Compares every record with the hash that its entry holds of it, and every thing with what the last entry said of it:
 * changed, missing, or never told. Only one table's rows are looked at a time, one by one.
 */
export async function compareRows(db: Reader, entries: readonly EntryRow[]): Promise<string[]> {
  const told = tellRows(entries);
  const entryOf = new Map(entries.map((entry) => [entry.id, entry]));
  const wrong: string[] = [];
  for (const table of [...Object.keys(RECORD_KEYS), ...Object.keys(THING_KEYS)]) {
    for await (const { entryId, row } of readRows(db, table)) {
      const entry = entryOf.get(entryId);
      // A record without its entry is told by another check.
      if (!entry && !isThing(table)) continue;
      const place = placeOf(table, entryId, rowKey(table, row));
      const known = told.get(place);
      const name = nameWith(nameRow(table, row), known?.entry ?? entry);
      if (known === undefined || known.hash === null) wrong.push(`${name} was added later`);
      else if (hashRow(table, row) !== known.hash) wrong.push(`${name} was changed`);
      told.delete(place);
    }
  }
  const missing = [...told].filter(([, { hash }]) => hash !== null);
  return [...wrong, ...missing.map(([place, { entry }]) => `${nameMissing(place, entry)} is missing`)];
}

const nameWith = (row: string, entry: EntryRow | undefined): string =>
  entry === undefined ? row : `${row} of ${nameEntry(entry)}`;

const SEPARATOR = '\n';
/**
 * What is edited is known by itself: what the last entry said of it holds, whichever that was. So is a row of a batch,
 * since a batch that is weighed without a recipe gets its lines one by one.
 */
const placeOf = (table: string, entryId: string, key: string): string =>
  [table, isEdited(table) || BY_BATCH.has(table) ? '' : entryId, key].join(SEPARATOR);

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
