import type { z } from 'zod';
import { type making, type Saying, saying } from '../../contract/index.ts';
import { type Exact, exact, toText } from '../../core/quantity/index.ts';
import { type BatchHead, findProduct, listBatchTins, listLotsAtHand } from '../../storage/index.ts';
import type { Context } from '../context.ts';
import { workshopToday } from '../local-date.ts';
import { isUsable } from '../lot-use.ts';
import { gramsText } from '../quantity-text.ts';
import { readProductDetails } from '../read-product-details.ts';
import { workshopDetails } from '../workshop-details.ts';
import { sumOnHand } from './find-limits.ts';

type Room = NonNullable<z.output<typeof making.worstCase>>['ways'][number]['room'];

export interface AddedShare {
  readonly lotItemId: string;
  readonly name: string;
  readonly grams: Exact;
}

/** Whether what would have to come to the batch is there: the stock of each, the bowl, and tins for what becomes more. */
export async function tellRoom(
  context: Context,
  head: BatchHead,
  shares: readonly AddedShare[],
  masses: { readonly total: Exact; readonly added: Exact },
): Promise<Room> {
  return [
    ...(await tellStock(context, shares)),
    ...(await tellBowl(context, masses)),
    ...(await tellTins(context, head, masses.added)),
  ];
}

async function tellStock(context: Context, shares: readonly AddedShare[]): Promise<Room> {
  const day = await workshopToday(context);
  const itemIds = [...new Set(shares.map(({ lotItemId }) => lotItemId))];
  const lots = (await listLotsAtHand(context.storage.db, { itemIds })).filter((lot) => isUsable(lot, day));
  return shares.map(({ lotItemId, name, grams }) => {
    const have = gramsText(sumOnHand(lots, lotItemId));
    return roomOf(
      exact(have).gte(grams),
      saying('room-stock', { item: name, haveGrams: have, needGrams: toText(grams.toDecimalPlaces(3, 0)) }),
    );
  });
}

async function tellBowl(
  context: Context,
  { total, added }: { readonly total: Exact; readonly added: Exact },
): Promise<Room> {
  const { bowlGrams } = await workshopDetails(context);
  if (bowlGrams === '') return [];
  const sum = total.plus(added);
  const facts = { togetherGrams: toText(sum), bowlGrams };
  return [roomOf(sum.lte(bowlGrams), saying('room-bowl', facts))];
}

/** Of the first product that it was made for: as many whole tins as the grams that come to it would fill. */
async function tellTins({ storage: { db } }: Context, head: BatchHead, added: Exact): Promise<Room> {
  const [first] = await listBatchTins(db, head.id);
  const product = first && (await findProduct(db, first.product_id));
  if (!first || !product) return [];
  const { name, declaredGrams, tinId } = readProductDetails(product.details);
  const more = added.div(declaredGrams).ceil().toNumber();
  const have = sumOnHand(await listLotsAtHand(db, { itemIds: [tinId] }), tinId);
  return [
    roomOf(
      have >= first.units + more,
      saying('room-tins', { product: name, more, have, planned: first.units }),
    ),
  ];
}

const roomOf = (isThere: boolean, says: Saying): Room[number] => ({ isThere, says });
