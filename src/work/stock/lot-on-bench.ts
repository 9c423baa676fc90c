import { problem } from '../../core/problem.ts';
import {
  findPlace,
  giveUp,
  type LotAtHand,
  listLotsAtHand,
  type Reader,
  shelfPlaceId,
  sumByPlace,
  type Writer,
} from '../../storage/index.ts';
import { thingNotFound } from '../record.ts';

export async function findLotAtHand(db: Reader, id: string): Promise<LotAtHand | undefined> {
  return (await listLotsAtHand(db, { lotIds: [id] }))[0];
}

export async function lotToChange(tx: Writer, id: string): Promise<LotAtHand> {
  return (await findLotAtHand(tx, id)) ?? giveUp(thingNotFound('id', id));
}

export interface Standing {
  readonly place_id: string;
  readonly place_name: string;
  readonly place_kind: string;
  readonly quantity: number;
}

/**
 * How much of the lot stands at the place that somebody means: the one named, or the only one where the lot stands.
 * Where it stands in several, nobody guesses. Nowhere at all: the shelf.
 */
export async function standingMeant(
  tx: Writer,
  lot: LotAtHand,
  placeId: string | undefined,
  where: string,
): Promise<Standing> {
  const wanted = placeId ?? onlyPlaceId(lot, where) ?? (await shelfPlaceId(tx));
  const place = (await findPlace(tx, wanted)) ?? giveUp(thingNotFound(where, wanted));
  const sum = (await sumByPlace(tx, lot.id)).find((row) => row.place_id === wanted);
  return { place_id: place.id, place_name: place.name, place_kind: place.kind, quantity: sum?.quantity ?? 0 };
}

function onlyPlaceId(lot: LotAtHand, where: string): string | undefined {
  const holding = lot.places.filter((place) => place.quantity > 0);
  if (holding.length > 1)
    giveUp(
      problem('place-not-said', where, {
        found: holding.length,
        parameters: { item: lot.item_name, lot: lot.number },
      }),
    );
  return holding[0]?.place_id;
}
