import { problem } from '../../core/problem.ts';
import {
  findMaterial,
  findPlace,
  giveUp,
  insertLot,
  insertLotStatus,
  insertMovements,
  type LotRow,
  type MaterialRow,
  nextLotNumber,
  shelfPlaceId,
  type Writer,
} from '../../storage/index.ts';
import type { Context } from '../context.ts';
import { newMovement } from '../new-movement.ts';
import { thingNotFound } from '../record.ts';
import { unitOfMaterial } from './read-quantity.ts';

export async function materialTakenIn(tx: Writer, id: string): Promise<MaterialRow> {
  return (await findMaterial(tx, id)) ?? giveUp(thingNotFound('materialId', id));
}

/** Where new goods come to stand: the shelf, unless somebody says otherwise. Retained samples are of what is made here. */
export async function placeTakenIn(tx: Writer, id: string | undefined): Promise<string> {
  if (id === undefined) return shelfPlaceId(tx);
  const place = await findPlace(tx, id);
  if (!place) giveUp(thingNotFound('placeId', id));
  if (place.kind === 'retained') giveUp(problem('retained-not-for-goods', 'placeId', { found: place.name }));
  return place.id;
}

export interface TakenIn {
  readonly material: MaterialRow;
  readonly placeId: string;
  /** Micrograms or pieces. */
  readonly quantity: number;
  readonly since: string;
  readonly supplier: string;
  readonly supplierLot: string | null;
  readonly bestBefore: string | null;
  readonly paid: string | null;
  readonly foundAtOpening: boolean;
}

/** The lot that goods become, under the workshop's own next number. */
export async function planLot(
  context: Context,
  tx: Writer,
  taken: TakenIn,
): Promise<Omit<LotRow, 'entry_id'>> {
  return {
    id: context.machine.newId(),
    number: await nextLotNumber(tx),
    item_kind: 'material',
    item_id: taken.material.id,
    unit: unitOfMaterial(taken.material.kind),
    since: taken.since,
    found_at_opening: taken.foundAtOpening ? 1 : 0,
    supplier: taken.supplier,
    supplier_lot: taken.supplierLot,
    best_before: taken.bestBefore,
    keep_until: null,
    firm_from: null,
    firm_to: null,
    paid: taken.paid,
    received: taken.quantity,
    batch_id: null,
    filling_run_id: null,
    version: 1,
  };
}

export interface Arrival {
  readonly entryId: string;
  readonly lot: Omit<LotRow, 'entry_id'>;
  readonly placeId: string;
  readonly status: 'quarantine' | 'released';
  readonly reason: string;
  readonly kind: 'received' | 'counted';
}

/** Called after the entry was told: lot, its first status, its first movement. */
export async function writeArrival(context: Context, tx: Writer, arrival: Arrival): Promise<void> {
  const { entryId, lot, placeId, status, reason, kind } = arrival;
  await insertLot(tx, { ...lot, entry_id: entryId });
  await insertLotStatus(tx, { entry_id: entryId, lot_id: lot.id, status, reason });
  await insertMovements(tx, [
    newMovement(context, entryId, {
      lot_id: lot.id,
      place_id: placeId,
      kind,
      quantity: lot.received,
      reason,
    }),
  ]);
}
