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
  readonly happenedAt: string;
  readonly recordedAt: string;
  readonly personId: string | null;
  readonly device: string;
}

/** The hash before the first entry. */
export const FIRST_HASH = '0'.repeat(64);

/** Covers every column of the row and the hash before it. */
export function hashEntry(row: Omit<EntryRow, 'hash'>): string {
  return sha256(
    [
      row.previous_hash,
      row.seq,
      row.id,
      row.kind,
      row.subject_kind,
      row.subject_id,
      row.payload,
      row.happened_at,
      row.recorded_at,
      row.person_id ?? '',
      row.device,
    ].join('\n'),
  );
}

export const findEntry = (db: Kysely<Database>, id: string): Promise<EntryRow | undefined> =>
  db.selectFrom('entry').selectAll().where('id', '=', id).executeTakeFirst();

/** Adds the next link of the chain; called inside the one transaction of the write it belongs to. */
export async function appendEntry(db: Kysely<Database>, entry: NewEntry): Promise<void> {
  const last = await db
    .selectFrom('entry')
    .select(['seq', 'hash'])
    .orderBy('seq', 'desc')
    .limit(1)
    .executeTakeFirst();
  const row = {
    seq: (last?.seq ?? 0) + 1,
    id: entry.id,
    kind: entry.kind,
    subject_kind: entry.subjectKind,
    subject_id: entry.subjectId,
    payload: canonicalJson(entry.payload),
    happened_at: entry.happenedAt,
    recorded_at: entry.recordedAt,
    person_id: entry.personId,
    device: entry.device,
    previous_hash: last?.hash ?? FIRST_HASH,
  };
  await db
    .insertInto('entry')
    .values({ ...row, hash: hashEntry(row) })
    .execute();
}
