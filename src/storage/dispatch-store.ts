import type { Selectable } from 'kysely';
import type { DispatchTable, MovementTable } from './schema.ts';
import type { Reader } from './storage.ts';

export type DispatchRow = Selectable<DispatchTable>;

export const findDispatch = (db: Reader, id: string): Promise<DispatchRow | undefined> =>
  db.selectFrom('dispatch').selectAll().where('id', '=', id).executeTakeFirst();

export async function insertDispatch(db: Reader, row: DispatchRow, tracking: string): Promise<void> {
  await db.insertInto('dispatch').values(row).execute();
  await setTracking(db, row.id, tracking);
}

/** The number that stands now; an empty one takes it away. */
export async function setTracking(db: Reader, dispatchId: string, tracking: string): Promise<void> {
  await db.deleteFrom('dispatch_tracking').where('dispatch_id', '=', dispatchId).execute();
  if (tracking !== '')
    await db.insertInto('dispatch_tracking').values({ dispatch_id: dispatchId, tracking }).execute();
}

export interface DispatchHead {
  readonly id: string;
  readonly order_id: string;
  readonly happened_at: string;
  readonly person_name: string;
  readonly tracking: string;
}

/** Parcels of these orders, the first sent first. */
export async function listDispatches(db: Reader, orderIds: readonly string[]): Promise<DispatchHead[]> {
  if (orderIds.length === 0) return [];
  const rows = await db
    .selectFrom('dispatch')
    .innerJoin('entry', 'entry.id', 'dispatch.entry_id')
    .leftJoin('person', 'person.id', 'entry.person_id')
    .leftJoin('dispatch_tracking', 'dispatch_tracking.dispatch_id', 'dispatch.id')
    .select(['dispatch.id', 'dispatch.order_id', 'entry.happened_at', 'person.name as person_name'])
    .select('dispatch_tracking.tracking')
    .where('dispatch.order_id', 'in', orderIds)
    .orderBy('entry.seq')
    .execute();
  return rows.map((row) => ({ ...row, person_name: row.person_name ?? '', tracking: row.tracking ?? '' }));
}

/** What a parcel moved, in the order in which it was written. */
export const listMovementsOfDispatches = (
  db: Reader,
  dispatchIds: readonly string[],
): Promise<(Selectable<MovementTable> & { lot_number: string })[]> =>
  dispatchIds.length === 0
    ? Promise.resolve([])
    : db
        .selectFrom('movement')
        .innerJoin('lot', 'lot.id', 'movement.lot_id')
        .selectAll('movement')
        .select('lot.number as lot_number')
        .where('movement.dispatch_id', 'in', dispatchIds)
        .execute();
