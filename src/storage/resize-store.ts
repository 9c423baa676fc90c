import type { Selectable } from 'kysely';
import type {
  AdditionCloseTable,
  BatchResizeTable,
  BatchTargetTable,
  SpillTable,
} from './schema-weighing.ts';
import type { Reader } from './storage.ts';

export type BatchResizeRow = Selectable<BatchResizeTable>;
export type BatchTargetRow = Selectable<BatchTargetTable>;
export type SpillRow = Selectable<SpillTable>;

/** The batch was made larger or smaller, with what each of its lines asks for from here on. */
export async function insertResize(
  db: Reader,
  resize: BatchResizeRow,
  targets: readonly BatchTargetRow[],
): Promise<void> {
  await db.insertInto('batch_resize').values(resize).execute();
  await db
    .insertInto('batch_target')
    .values([...targets])
    .execute();
}

export async function insertAdditionClose(db: Reader, row: Selectable<AdditionCloseTable>): Promise<void> {
  await db.insertInto('addition_close').values(row).execute();
}

export async function insertSpill(db: Reader, row: SpillRow): Promise<void> {
  await db.insertInto('spill').values(row).execute();
}

export type SignedResize = BatchResizeRow & {
  /** Its place in the chain. */
  readonly seq: number;
  readonly happened_at: string;
  readonly person_name: string;
  readonly is_struck: boolean;
};

/** How often a batch was made larger or smaller, struck ones too, in the order of entry. */
export async function listResizes(db: Reader, batchId: string): Promise<SignedResize[]> {
  const rows = await db
    .selectFrom('batch_resize')
    .innerJoin('entry', 'entry.id', 'batch_resize.entry_id')
    .leftJoin('person', 'person.id', 'entry.person_id')
    .leftJoin('strike', 'strike.struck_entry_id', 'batch_resize.entry_id')
    .selectAll('batch_resize')
    .select(['entry.happened_at', 'entry.seq', 'person.name as person_name'])
    .select('strike.entry_id as strike_id')
    .where('batch_resize.batch_id', '=', batchId)
    .orderBy('entry.seq')
    .execute();
  return rows.map(({ person_name, strike_id, seq, ...row }) => ({
    ...row,
    seq: Number(seq),
    person_name: person_name ?? '',
    is_struck: strike_id !== null,
  }));
}

export type SignedSpill = SpillRow & {
  readonly happened_at: string;
  readonly person_name: string;
  readonly lot_number: string;
  readonly is_struck: boolean;
};

/** What was spilt of a batch before it went in, struck ones too, in the order of entry. */
export async function listSpills(db: Reader, batchId: string): Promise<SignedSpill[]> {
  const rows = await db
    .selectFrom('spill')
    .innerJoin('entry', 'entry.id', 'spill.entry_id')
    .innerJoin('lot', 'lot.id', 'spill.lot_id')
    .leftJoin('person', 'person.id', 'entry.person_id')
    .leftJoin('strike', 'strike.struck_entry_id', 'spill.entry_id')
    .selectAll('spill')
    .select(['entry.happened_at', 'person.name as person_name', 'lot.number as lot_number'])
    .select('strike.entry_id as strike_id')
    .where('spill.batch_id', '=', batchId)
    .orderBy('entry.seq')
    .execute();
  return rows.map(({ person_name, strike_id, ...row }) => ({
    ...row,
    person_name: person_name ?? '',
    is_struck: strike_id !== null,
  }));
}
