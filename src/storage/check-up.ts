import { sql } from 'kysely';
import { BY_BATCH, compareRows, nameEntry } from './check-rows.ts';
import { type ChainEnd, type EntryRow, FIRST_HASH, hashEntry, readChainEnd } from './entry-store.ts';
import { nameRow, RECORD_KEYS } from './record-rows.ts';
import { foreignKeyFindings, integrityFindings, type SqliteHandle } from './sqlite-only.ts';
import type { Reader, Storage } from './storage.ts';

export type CheckName =
  | 'integrity'
  | 'foreign-keys'
  | 'chain'
  | 'sequence'
  | 'end'
  | 'records'
  | 'rows'
  | 'balances';

/** What one check found: nothing, or what is wrong, in the words of the file. */
export interface Finding {
  readonly check: CheckName;
  /** How much was looked at. */
  readonly looked: number;
  readonly wrong: readonly string[];
}

/**
 * Looks the whole file through. Each check reads the rows themselves, past the guards that should have kept them right:
 * a file may have been changed by another program. One transaction, so that no write goes on meanwhile.
 */
export const checkUp = ({ db, handle }: Storage): Promise<Finding[]> =>
  db.transaction().execute((tx) => lookThrough(tx, handle));

async function lookThrough(db: Reader, handle: SqliteHandle): Promise<Finding[]> {
  const entries = await db.selectFrom('entry').selectAll().orderBy('seq').execute();
  const integrity = integrityFindings(handle);
  return [
    { check: 'integrity', looked: 1, wrong: integrity },
    { check: 'foreign-keys', looked: 1, wrong: foreignKeyFindings(handle) },
    { check: 'chain', looked: entries.length, wrong: brokenLinks(entries) },
    { check: 'sequence', looked: entries.length, wrong: gaps(entries) },
    await missingEnd(db, entries),
    await recordsWithoutEntry(db),
    { check: 'rows', looked: entries.length, wrong: await compareRows(db, entries) },
    await negativeBalances(db),
  ];
}

/** Each entry's hash is computed again, and must name the hash before it. */
function brokenLinks(entries: readonly EntryRow[]): string[] {
  let before = FIRST_HASH;
  return entries.flatMap((row) => {
    const isWhole = row.previous_hash === before && row.hash === hashEntry(row);
    before = row.hash;
    return isWhole ? [] : [nameEntry(row)];
  });
}

const gaps = (entries: readonly EntryRow[]): string[] =>
  entries.flatMap((row, place) => {
    const expected = (entries[place - 1]?.seq ?? 0) + 1;
    return row.seq === expected ? [] : [`entry ${expected} is missing before ${row.seq}`];
  });

/**
 * A chain whose last links were taken off is unbroken still. So its end was noted beside it, with every entry and with
 * every backup: an entry that was noted there must be in the chain, with the same hash.
 */
async function missingEnd(db: Reader, entries: readonly EntryRow[]): Promise<Finding> {
  const hashAt = new Map<number, string>([[0, FIRST_HASH], ...entries.map(atPlace)]);
  const end = await readChainEnd(db);
  const backups = await db.selectFrom('backup_made').selectAll().orderBy('id').execute();
  const isThere = ({ seq, hash }: ChainEnd): boolean => hashAt.get(seq) === hash;
  const last = entries.at(-1)?.seq ?? 0;
  const wrong =
    isThere(end) && end.seq === last ? [] : [`${end.seq} entries were written, the last is ${last}`];
  const missed = backups
    .filter((row) => !isThere({ seq: row.last_seq, hash: row.last_hash }))
    .map((row) => `the backup of ${row.at} ended with entry ${row.last_seq}, which is not here`);
  return { check: 'end', looked: backups.length, wrong: [...wrong, ...missed] };
}

const atPlace = ({ seq, hash }: EntryRow): [number, string] => [seq, hash];

const BY_ENTRY = Object.keys(RECORD_KEYS).filter((table) => !BY_BATCH.has(table));

async function recordsWithoutEntry(db: Reader): Promise<Finding> {
  let looked = 0;
  const wrong: string[] = [];
  for (const table of BY_ENTRY) {
    const { rows: counted } = await sql<{ all: number }>`
      select count(*) as "all" from ${sql.table(table)}`.execute(db);
    const { rows } = await sql<Record<string, unknown>>`
      select record.* from ${sql.table(table)} as record left join entry on entry.id = record.entry_id
      where entry.id is null`.execute(db);
    looked += Number(counted[0]?.all ?? 0);
    wrong.push(...rows.map((row) => `${nameRow(table, row)} names entry ${row.entry_id}, which is not here`));
  }
  return { check: 'records', looked, wrong };
}

async function negativeBalances(db: Reader): Promise<Finding> {
  const rows = await db
    .selectFrom('movement')
    .innerJoin('lot', 'lot.id', 'movement.lot_id')
    .innerJoin('place', 'place.id', 'movement.place_id')
    .select(['lot.number as lot', 'place.name as place'])
    .select((query) => query.fn.sum<number>('movement.quantity').as('balance'))
    .groupBy(['lot.number', 'place.name'])
    .execute();
  const wrong = rows.filter((row) => Number(row.balance) < 0).map((row) => `lot ${row.lot}, ${row.place}`);
  return { check: 'balances', looked: rows.length, wrong };
}
