import type { Reader } from './storage.ts';

export interface SoldTins {
  readonly productId: string;
  readonly lotId: string;
  readonly runId: string | null;
  readonly units: number;
  readonly sentAt: string;
}

/** Tins of these products that went out with a parcel. One that did not go after all was taken back: no row. */
export async function listSold(db: Reader, productIds: readonly string[]): Promise<SoldTins[]> {
  if (productIds.length === 0) return [];
  const rows = await db
    .selectFrom('movement')
    .innerJoin('lot', 'lot.id', 'movement.lot_id')
    .innerJoin('dispatch', 'dispatch.id', 'movement.dispatch_id')
    .innerJoin('entry', 'entry.id', 'dispatch.entry_id')
    .select(['lot.item_id as productId', 'lot.id as lotId', 'lot.filling_run_id as runId'])
    .select('entry.happened_at as sentAt')
    .select((query) => query.fn.sum<number>('movement.quantity').as('quantity'))
    .where('lot.item_kind', '=', 'product')
    .where('lot.item_id', 'in', productIds)
    .where('movement.kind', '=', 'sold')
    .groupBy(['lot.item_id', 'lot.id', 'lot.filling_run_id', 'dispatch.id', 'entry.happened_at', 'entry.seq'])
    .having((query) => query.fn.sum('movement.quantity'), '<', 0)
    .orderBy('entry.seq')
    .orderBy('lot.id')
    .execute();
  return rows.map(({ quantity, ...row }) => ({ ...row, units: -Number(quantity) }));
}
