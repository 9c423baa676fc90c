import type { orders } from '../../contract/index.ts';
import { type Problem, problem } from '../../core/problem.ts';
import { findMaterials, giveUp, type LotAtHand, listLotsAtHand, type Writer } from '../../storage/index.ts';
import { isUsable, spreadOverPlaces, type Taking } from '../lot-use.ts';

/** What one kind of packaging loses in a run. */
export interface PackagingNeed {
  readonly part: 'tin' | 'lid' | 'label';
  readonly itemId: string;
  readonly used: number;
  readonly spoilt: number;
}

export interface Issue extends Taking {
  readonly lot: LotAtHand;
  readonly kind: 'used' | 'broken';
}

type Spoilt = Readonly<Record<'spoiltTins' | 'spoiltLids' | 'spoiltLabels', number>>;

/** Spoilt pieces of a part that the product does not have are a slip of the pen. */
export function listPackagingNeeds(
  { tinId, lidId, labelId }: orders.ProductDetails,
  units: number,
  { spoiltTins, spoiltLids, spoiltLabels }: Spoilt,
): PackagingNeed[] {
  const parts = [
    { part: 'tin', itemId: tinId, spoilt: spoiltTins, where: 'spoiltTins' },
    { part: 'lid', itemId: lidId, spoilt: spoiltLids, where: 'spoiltLids' },
    { part: 'label', itemId: labelId, spoilt: spoiltLabels, where: 'spoiltLabels' },
  ] as const;
  return parts.flatMap(({ where, ...need }) => {
    if (need.itemId !== null) return [{ ...need, itemId: need.itemId, used: units }];
    if (need.spoilt > 0) giveUp(problem('part-not-in-product', where, { found: need.spoilt, allowed: 0 }));
    return [];
  });
}

/** Takes tins, lids and labels first-expired-first-out; names every kind of which too few are there. */
export async function issuePackaging(
  tx: Writer,
  needs: readonly PackagingNeed[],
  day: string,
): Promise<Issue[]> {
  const itemIds = needs.map((need) => need.itemId);
  const lots = (await listLotsAtHand(tx, { itemIds })).filter((lot) => isUsable(lot, day));
  const short: Problem[] = [];
  const issues: Issue[] = [];
  for (const need of needs) {
    const own = lots.filter((lot) => lot.item_id === need.itemId);
    const there = own.reduce((sum, lot) => sum + lot.on_hand, 0);
    if (there < need.used + need.spoilt) short.push(await tooFew(tx, need, there));
    else issues.push(...issueOne(own, need));
  }
  if (short.length > 0) giveUp(...short);
  return issues;
}

async function tooFew(tx: Writer, need: PackagingNeed, there: number): Promise<Problem> {
  const [material] = await findMaterials(tx, [need.itemId]);
  return problem('packaging-short', material?.name ?? need.part, {
    found: there,
    allowed: need.used + need.spoilt,
    parameters: { part: need.part },
  });
}

function issueOne(lots: readonly LotAtHand[], need: PackagingNeed): Issue[] {
  const wanted = [
    { kind: 'used' as const, quantity: need.used },
    { kind: 'broken' as const, quantity: need.spoilt },
  ];
  const issues: Issue[] = [];
  for (const lot of lots) {
    let places = lot.places;
    for (const want of wanted) {
      const left = places.reduce((sum, place) => sum + place.quantity, 0);
      const takings = spreadOverPlaces({ ...lot, places }, Math.min(want.quantity, left));
      want.quantity -= takings.reduce((sum, taking) => sum + taking.quantity, 0);
      places = lessTaken(places, takings);
      issues.push(...takings.map((taking) => ({ ...taking, lot, kind: want.kind })));
    }
  }
  return issues;
}

const lessTaken = (places: LotAtHand['places'], takings: readonly Taking[]): LotAtHand['places'] =>
  places.map((place) => ({
    ...place,
    quantity: place.quantity - (takings.find((taking) => taking.place_id === place.place_id)?.quantity ?? 0),
  }));
