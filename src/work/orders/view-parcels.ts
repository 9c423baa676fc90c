import type { z } from 'zod';
import type { orders } from '../../contract/index.ts';
import { listDispatches, listMovementsOfDispatches, type Reader } from '../../storage/index.ts';

type ParcelView = z.output<typeof orders.parcelView>;

/** The parcels of each order, the first sent first. One whose tins came all back holds nothing. */
export async function viewParcels(
  db: Reader,
  orderIds: readonly string[],
): Promise<Map<string, ParcelView[]>> {
  const heads = await listDispatches(db, orderIds);
  const moved = await listMovementsOfDispatches(
    db,
    heads.map((head) => head.id),
  );
  const parcels = new Map<string, ParcelView[]>();
  for (const head of heads) {
    const lots = new Map<string, { lotId: string; lotNumber: string; units: number }>();
    for (const row of moved.filter((one) => one.dispatch_id === head.id)) {
      const units = (lots.get(row.lot_id)?.units ?? 0) - row.quantity;
      lots.set(row.lot_id, { lotId: row.lot_id, lotNumber: row.lot_number, units });
    }
    const own = [...lots.values()].filter((lot) => lot.units > 0);
    const view = {
      id: head.id,
      sentAt: head.happened_at,
      by: head.person_name,
      tracking: head.tracking,
      isTakenBack: own.length === 0,
      lots: own,
    };
    parcels.set(head.order_id, [...(parcels.get(head.order_id) ?? []), view]);
  }
  return parcels;
}
