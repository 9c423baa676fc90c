import { type LotAtHand, listLotsAtHand, listReservedByLot, type Reader } from '../../storage/index.ts';
import { isUsable } from '../lot-use.ts';

export interface FreeTins {
  readonly lot: LotAtHand;
  /** On hand and promised to nobody. */
  readonly free: number;
}

/** Tins of these products that may be promised: of released filling runs, within their date, not kept for anybody. */
export async function listFreeTins(
  db: Reader,
  productIds: readonly string[],
  today: string,
): Promise<FreeTins[]> {
  if (productIds.length === 0) return [];
  const lots = await listLotsAtHand(db, { itemIds: productIds });
  const kept = new Map((await listReservedByLot(db)).map((row) => [row.lot_id, Number(row.units)]));
  return lots
    .filter((lot) => lot.item_kind === 'product' && isUsable(lot, today))
    .map((lot) => ({ lot, free: lot.on_hand - (kept.get(lot.id) ?? 0) }))
    .filter((row) => row.free > 0);
}
