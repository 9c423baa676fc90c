import type { stock } from '../../contract/index.ts';
import { type LotAtHand, listLotsAtHand, listReservedByLot, type Reader } from '../../storage/index.ts';
import { amountText } from '../quantity-text.ts';

export type LotView = stock.LotView;

/** Lots as the pages show them; one query more than reading them. */
export async function viewLots(db: Reader, lots: readonly LotAtHand[], today: string): Promise<LotView[]> {
  const kept = new Map((await listReservedByLot(db)).map((row) => [row.lot_id, Number(row.units)]));
  return lots.map((lot) => viewLot(lot, today, kept.get(lot.id) ?? 0));
}

export async function viewLotsById(db: Reader, lotIds: readonly string[], today: string): Promise<LotView[]> {
  return viewLots(db, await listLotsAtHand(db, { lotIds }), today);
}

export const viewLot = (lot: LotAtHand, today: string, kept: number): LotView => ({
  id: lot.id,
  number: lot.number,
  itemKind: lot.item_kind as LotView['itemKind'],
  itemId: lot.item_id,
  itemName: lot.item_name,
  unit: lot.unit as LotView['unit'],
  onHand: amountText(lot.on_hand, lot.unit),
  placeIds: lot.places.map((place) => place.place_id),
  reserved: amountText(kept, lot.unit),
  status: lot.status as LotView['status'],
  statusReason: lot.status_reason,
  version: lot.version,
  since: lot.since,
  foundAtOpening: lot.found_at_opening === 1,
  supplier: lot.supplier,
  supplierLot: lot.supplier_lot,
  bestBefore: lot.best_before,
  keepUntil: lot.keep_until,
  isExpired: lot.best_before !== null && lot.best_before < today,
  firmFrom: lot.firm_from,
  firmTo: lot.firm_to,
  paid: lot.paid,
  cameIn: amountText(lot.received, lot.unit),
  paidFor: lot.paid === null ? null : amountText(lot.received, lot.unit),
  batchId: lot.batch_id,
  fillingRunId: lot.filling_run_id,
});
