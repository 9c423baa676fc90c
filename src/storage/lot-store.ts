import type { Selectable } from 'kysely';
import { type LotAtHand, listLotsAtHand } from './lot-at-hand-store.ts';
import type { FirmWordTable, LotStatusTable, LotTable } from './schema.ts';
import type { Reader } from './storage.ts';

export type LotRow = Selectable<LotTable>;

export async function insertLot(db: Reader, row: LotRow): Promise<void> {
  await db.insertInto('lot').values(row).execute();
}

/** What may be corrected of a lot; the entry of the correction keeps what stood there before. */
export async function updateLotFacts(
  db: Reader,
  row: Pick<LotRow, 'id' | 'supplier_lot' | 'best_before' | 'paid' | 'received'>,
  seenVersion: number,
): Promise<boolean> {
  const { id, ...facts } = row;
  const changed = await db
    .updateTable('lot')
    .set({ ...facts, version: seenVersion + 1 })
    .where('id', '=', id)
    .where('version', '=', seenVersion)
    .returningAll()
    .executeTakeFirst();
  return changed !== undefined;
}

export async function insertLotStatus(db: Reader, row: Selectable<LotStatusTable>): Promise<void> {
  await db.insertInto('lot_status').values(row).execute();
}

export async function insertFirmWord(db: Reader, row: Selectable<FirmWordTable>): Promise<void> {
  await db.insertInto('firm_word').values(row).execute();
}

const OPENING = 'L-';

/** The workshop's own running number: L-0001, L-0002 ... Numbers grow by length first, so that L-10000 follows L-9999. */
export async function nextLotNumber(db: Reader): Promise<string> {
  const row = await db
    .selectFrom('lot')
    .select('number')
    .where('number', 'like', `${OPENING}%`)
    .orderBy((order) => order.fn<number>('length', ['number']), 'desc')
    .orderBy('number', 'desc')
    .limit(1)
    .executeTakeFirst();
  const last = Number(row?.number.slice(OPENING.length) ?? 0);
  return `${OPENING}${String(last + 1).padStart(4, '0')}`;
}

/** Lots of which something stands anywhere but among the retained samples; of these items, or of all. */
export async function listStandingLotIds(db: Reader, itemIds?: readonly string[]): Promise<string[]> {
  const query = db
    .selectFrom('movement')
    .innerJoin('place', 'place.id', 'movement.place_id')
    .innerJoin('lot', 'lot.id', 'movement.lot_id')
    .select('movement.lot_id')
    .where('place.kind', '!=', 'retained')
    .groupBy('movement.lot_id')
    .having((having) => having.fn.sum('movement.quantity'), '>', 0);
  const rows = await (itemIds === undefined ? query : query.where('lot.item_id', 'in', itemIds)).execute();
  return rows.map((row) => row.lot_id);
}

/** Every lot that still stands, the first to end first. */
export const listStandingLots = async (db: Reader, itemIds?: readonly string[]): Promise<LotAtHand[]> =>
  listLotsAtHand(db, { lotIds: await listStandingLotIds(db, itemIds) });

/** What batches made: their lots, with the number of the batch. */
export async function listLotsOfBatches(
  db: Reader,
  batchIds: readonly string[],
): Promise<{ readonly id: string; readonly batch_number: string }[]> {
  if (batchIds.length === 0) return [];
  return db
    .selectFrom('lot')
    .innerJoin('batch', 'batch.id', 'lot.batch_id')
    .select(['lot.id', 'batch.number as batch_number'])
    .where('lot.batch_id', 'in', batchIds)
    .execute();
}

export interface FullMark {
  readonly item_kind: string;
  readonly item_id: string;
  /** The most that ever stood of it at one time, retained samples left out. */
  readonly most: number;
}

export async function listFullMarks(db: Reader): Promise<FullMark[]> {
  const rows = await db
    .selectFrom((from) =>
      from
        .selectFrom('movement')
        .innerJoin('lot', 'lot.id', 'movement.lot_id')
        .innerJoin('place', 'place.id', 'movement.place_id')
        .innerJoin('entry', 'entry.id', 'movement.entry_id')
        .select(['lot.item_kind', 'lot.item_id'])
        .select((query) =>
          query.fn
            .sum<number>('movement.quantity')
            .over((over) => over.partitionBy(['lot.item_kind', 'lot.item_id']).orderBy('entry.seq'))
            .as('standing'),
        )
        .where('place.kind', '!=', 'retained')
        .as('course'),
    )
    .select(['item_kind', 'item_id'])
    .select((query) => query.fn.max('course.standing').as('most'))
    .groupBy(['item_kind', 'item_id'])
    .execute();
  return rows.map((row) => ({ ...row, most: Number(row.most) }));
}
