import {
  insertLot,
  insertLotStatus,
  insertMovements,
  type LotAtHand,
  type MovementRow,
  retainedPlaceId,
  shelfPlaceId,
  type Writer,
} from '../../storage/index.ts';
import type { Context } from '../context.ts';
import { spreadOverPlaces, type Taking } from '../lot-use.ts';
import { newMovement } from '../new-movement.ts';
import type { PartCount } from './count-parts.ts';
import type { Issue } from './issue-packaging.ts';
import type { RunRecords } from './run-records.ts';
import type { SharedBowl } from './share-bowl.ts';

/** All that the closing of a run books, worked out before anything is written. */
export interface Closing extends SharedBowl {
  readonly records: RunRecords;
  readonly bowl: LotAtHand;
  readonly units: number;
  readonly filledUg: number;
  readonly retainedUg: number;
  readonly leftUg: number;
  /** In tins that were put aside: thrown away, or kept to be tried. */
  readonly binnedUg: number;
  readonly trialUg: number;
  readonly counts: readonly PartCount[];
  readonly issues: readonly Issue[];
  /** null: no tin was filled. */
  readonly lotId: string | null;
  readonly day: string;
  readonly bestBefore: string | null;
}

type Given = Pick<MovementRow, 'lot_id' | 'place_id' | 'kind' | 'quantity'> & Partial<MovementRow>;

/**
 * The bowl's lot gives what is in the tins (used), the sample (moved to its place) and what is lost (binned); what was
 * found above the ledger is counted in first. Packaging is used or broken; the tins become a lot in quarantine.
 */
export async function bookClosing(
  context: Context,
  tx: Writer,
  closing: Closing,
  entryId: string,
): Promise<void> {
  const of = (given: Given) =>
    newMovement(context, entryId, { filling_run_id: closing.records.head.id, ...given });
  const shelf = await shelfPlaceId(tx);
  await insertMovements(tx, bookBowl(closing, shelf).map(of));
  await insertMovements(
    tx,
    closing.issues.map((issue) =>
      of({ lot_id: issue.lot.id, place_id: issue.place_id, kind: issue.kind, quantity: -issue.quantity }),
    ),
  );
  if (closing.retainedUg > 0) {
    const place_id = await retainedPlaceId(tx);
    const sample = { lot_id: closing.bowl.id, place_id, kind: 'moved', quantity: closing.retainedUg };
    await insertMovements(tx, [of(sample)]);
  }
  if (closing.lotId === null) return;
  await writeTins(tx, closing, closing.lotId, entryId);
  const tins = { lot_id: closing.lotId, place_id: shelf, kind: 'made', quantity: closing.units };
  await insertMovements(tx, [of(tins)]);
}

function bookBowl(closing: Closing, shelf: string): Given[] {
  const { bowl, foundUg, filledUg, retainedUg, lostUg, binnedUg, trialUg } = closing;
  const found = {
    lot_id: bowl.id,
    place_id: shelf,
    kind: 'counted',
    quantity: foundUg,
    reason: 'errors of the weighings',
  };
  const bowlNow = foundUg === 0 ? bowl : withFound(bowl, shelf, foundUg);
  const [filled = [], retained = [], lost = [], binned = [], trial = []] = takeInTurn(bowlNow, [
    filledUg,
    retainedUg,
    lostUg,
    binnedUg,
    trialUg,
  ]);
  const taken = (kind: string) => (taking: Taking) => ({
    lot_id: bowl.id,
    place_id: taking.place_id,
    kind,
    quantity: -taking.quantity,
  });
  return [
    ...(foundUg === 0 ? [] : [found]),
    ...filled.map(taken('used')),
    ...retained.map(taken('moved')),
    ...lost.map(taken('binned')),
    ...binned.map((taking) => ({ ...taken('binned')(taking), reason: 'tins put aside' })),
    ...trial.map((taking) => ({ ...taken('tester')(taking), reason: 'tins put aside' })),
  ];
}

function withFound(bowl: LotAtHand, placeId: string, found: number): LotAtHand {
  const known = bowl.places.some((place) => place.place_id === placeId);
  const places = bowl.places.map((place) =>
    place.place_id === placeId ? { ...place, quantity: place.quantity + found } : place,
  );
  const extra = { place_id: placeId, place_kind: 'shelf', quantity: found };
  return { ...bowl, places: known ? places : [...places, extra], on_hand: bowl.on_hand + found };
}

/** Takes one quantity after the other, each from what the one before it left. */
function takeInTurn(bowl: LotAtHand, quantities: readonly number[]): Taking[][] {
  let places = bowl.places;
  return quantities.map((quantity) => {
    const takings = spreadOverPlaces({ ...bowl, places }, quantity);
    places = places.map((place) => {
      const taken = takings.find((taking) => taking.place_id === place.place_id)?.quantity ?? 0;
      return { ...place, quantity: place.quantity - taken };
    });
    return takings;
  });
}

async function writeTins(tx: Writer, closing: Closing, id: string, entryId: string): Promise<void> {
  const { head } = closing.records;
  await insertLot(tx, {
    id,
    entry_id: entryId,
    number: head.number,
    item_kind: 'product',
    item_id: head.product_id,
    unit: 'pieces',
    since: closing.day,
    found_at_opening: 0,
    supplier: '',
    supplier_lot: null,
    best_before: closing.bestBefore,
    keep_until: null,
    firm_from: null,
    firm_to: null,
    paid: null,
    received: closing.units,
    batch_id: head.batch_id,
    filling_run_id: head.id,
    version: 1,
  });
  await insertLotStatus(tx, { entry_id: entryId, lot_id: id, status: 'quarantine', reason: '' });
}
