import { sql } from 'kysely';
import { type EntryRow, FIRST_HASH, hashEntry } from './entry-store.ts';
import { foreignKeyFindings, integrityFindings, type SqliteHandle } from './sqlite-only.ts';
import type { Reader, Storage } from './storage.ts';

export type CheckName = 'integrity' | 'foreign-keys' | 'chain' | 'sequence' | 'records' | 'balances';

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
    await recordsWithoutEntry(db),
    await negativeBalances(db),
  ];
}

/** Each entry's hash is computed again, and must name the hash before it. */
function brokenLinks(entries: readonly EntryRow[]): string[] {
  let before = FIRST_HASH;
  return entries.flatMap((row) => {
    const isWhole = row.previous_hash === before && row.hash === hashEntry(row);
    before = row.hash;
    return isWhole ? [] : [`entry ${row.seq} (${row.kind})`];
  });
}

const gaps = (entries: readonly EntryRow[]): string[] =>
  entries.flatMap((row, place) => {
    const expected = (entries[place - 1]?.seq ?? 0) + 1;
    return row.seq === expected ? [] : [`entry ${expected} is missing before ${row.seq}`];
  });

/** Records that name an entry, and the rows that a batch brought with it. */
const BY_ENTRY = [
  'movement',
  'lot',
  'lot_status',
  'firm_word',
  'addition',
  'step_record',
  'deviation',
  'batch_close',
  'fill_weight',
  'strike',
  'run_close',
  'release',
  'decision',
  'reservation',
  'dispatch',
  'batch',
  'filling_run',
  'label_print',
  'attachment',
] as const;

async function recordsWithoutEntry(db: Reader): Promise<Finding> {
  let looked = 0;
  const wrong: string[] = [];
  for (const table of BY_ENTRY) {
    const { rows } = await sql<{ all: number; without: number }>`
      select count(*) as "all", sum(case when entry.id is null then 1 else 0 end) as "without"
      from ${sql.table(table)} as record left join entry on entry.id = record.entry_id`.execute(db);
    looked += Number(rows[0]?.all ?? 0);
    const without = Number(rows[0]?.without ?? 0);
    if (without > 0) wrong.push(`${table}: ${without}`);
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
