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
  const lots = lotCorrections(entries);
  const wrong: string[] = [];
  for (const table of Object.keys(RECORD_KEYS)) {
    for await (const { entryId, row } of readRows(db, table)) {
      const entry = entryOf.get(entryId);
      // A row without its entry is told by another check.
      if (!entry) continue;
      const place = placeOf(table, entryId, rowKey(table, row));
      const hash = told.get(place)?.hash;
      const written = table === 'lot' ? asFirstWritten(row, lots.get(String(row.id)) ?? []) : row;
      if (hash === undefined) wrong.push(`${nameRow(table, row)} of ${nameEntry(entry)} was added later`);
      else if (written === undefined || hashRow(written) !== hash)
        wrong.push(`${nameRow(table, row)} of ${nameEntry(entry)} was changed`);
      told.delete(place);
    }
  }
  return [...wrong, ...[...told].map(([place, { entry }]) => `${nameMissing(place, entry)} is missing`)];
}

const SEPARATOR = '\n';
const placeOf = (table: string, entryId: string, key: string): string =>
  [table, entryId, key].join(SEPARATOR);

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

interface LotFacts {
  readonly supplierLot: string | null;
  readonly bestBefore: string | null;
  readonly paid: string | null;
}
interface Correction {
  readonly before: LotFacts;
  readonly after: LotFacts;
}

/** What may be corrected of a lot is told by its corrections, in their order. */
function lotCorrections(entries: readonly EntryRow[]): Map<string, Correction[]> {
  const corrections = new Map<string, Correction[]>();
  for (const entry of entries) {
    if (entry.kind !== 'lot-corrected') continue;
    const known = corrections.get(entry.subject_id) ?? [];
    corrections.set(entry.subject_id, [...known, JSON.parse(entry.payload) as Correction]);
  }
  return corrections;
}

/** The lot as it was before any correction, or nothing where it is not what the last correction made of it. */
function asFirstWritten(row: RecordRow, corrections: readonly Correction[]): RecordRow | undefined {
  const [first] = corrections;
  const last = corrections.at(-1);
  if (!first || !last) return row;
  const isAsCorrected =
    row.supplier_lot === last.after.supplierLot &&
    row.best_before === last.after.bestBefore &&
    row.paid === last.after.paid &&
    row.version === corrections.length + 1;
  if (!isAsCorrected) return undefined;
  const { supplierLot, bestBefore, paid } = first.before;
  return { ...row, supplier_lot: supplierLot, best_before: bestBefore, paid, version: 1 };
}
