import type { Kysely, Selectable } from 'kysely';
import { canonicalJson, sha256 } from './canonical.ts';
import type { Database, EntryTable } from './schema.ts';

export type EntryRow = Selectable<EntryTable>;

export interface NewEntry {
  readonly id: string;
  /** What happened: `addition-recorded`, `lot-received` ... */
  readonly kind: string;
  readonly subjectKind: string;
  readonly subjectId: string;
  readonly payload: unknown;
  readonly requestHash: string;
  /** The rows' hashes, as RowStory writes them. */
  readonly rows: string;
  readonly happenedAt: string;
  readonly recordedAt: string;
  readonly personId: string | null;
  readonly device: string;
}

/** The hash before the first entry. */
export const FIRST_HASH = '0'.repeat(64);

/** Covers every column of the row and the hash before it; as JSON, so that no text can pass for two others. */
export const hashEntry = (row: Omit<EntryRow, 'hash'>): string =>
  sha256(
    canonicalJson([
      row.previous_hash,
      row.seq,
      row.id,
      row.kind,
      row.subject_kind,
      row.subject_id,
      row.payload,
      row.request_hash,
      row.rows,
      row.happened_at,
      row.recorded_at,
      row.person_id,
      row.device,
    ]),
  );

export const findEntry = (db: Kysely<Database>, id: string): Promise<EntryRow | undefined> =>
  db.selectFrom('entry').selectAll().where('id', '=', id).executeTakeFirst();

/** What was written of these kinds, in the order in which it was written. */
export const listEntriesOf = (db: Kysely<Database>, kinds: readonly string[]): Promise<EntryRow[]> =>
  db.selectFrom('entry').selectAll().where('kind', 'in', kinds).orderBy('seq').execute();

/** When the last entry was written: how old the data is. Before the first there is none. */
export async function lastWrittenAt(db: Kysely<Database>): Promise<string | undefined> {
  const row = await db
    .selectFrom('entry')
    .select('recorded_at')
    .orderBy('seq', 'desc')
    .limit(1)
    .executeTakeFirst();
  return row?.recorded_at;
}

export interface ChainEnd {
  readonly seq: number;
  readonly hash: string;
}

/** Where the chain ends, as it was noted beside it: an entry cut off at the end leaves this behind. */
export const readChainEnd = (db: Kysely<Database>): Promise<ChainEnd> =>
  db.selectFrom('chain_end').select(['seq', 'hash']).executeTakeFirstOrThrow();

/**
 * Adds the next link of the chain; called inside the one transaction of the write it belongs to. It follows the end that
 * was noted, not the last row: after entries were cut off, the gap stays to be seen. Gives its number.
 */
export async function appendEntry(db: Kysely<Database>, entry: NewEntry): Promise<number> {
  const end = await readChainEnd(db);
  const row = {
    seq: end.seq + 1,
    id: entry.id,
    kind: entry.kind,
    subject_kind: entry.subjectKind,
    subject_id: entry.subjectId,
    payload: canonicalJson(entry.payload),
    request_hash: entry.requestHash,
    rows: entry.rows,
    happened_at: entry.happenedAt,
    recorded_at: entry.recordedAt,
    person_id: entry.personId,
    device: entry.device,
    previous_hash: end.hash,
  };
  await db
    .insertInto('entry')
    .values({ ...row, hash: hashEntry(row) })
    .execute();
  return row.seq;
}
