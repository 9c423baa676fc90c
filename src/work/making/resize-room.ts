import type { making } from '../../contract/index.ts';
import { type Exact, exact, gramsFromMicrograms, sumOf, toText } from '../../core/quantity/index.ts';
import { type BatchHead, listLotsAtHand } from '../../storage/index.ts';
import type { Context } from '../context.ts';
import { workshopToday } from '../local-date.ts';
import { isUsable } from '../lot-use.ts';
import { gramsText } from '../quantity-text.ts';
import { saying } from '../saying.ts';
import { findStoppedBehind } from '../stopped-behind.ts';
import { workshopDetails } from '../workshop-details.ts';
import { sumOnHand } from './find-limits.ts';
import { type LineThen, sumThen } from './lay-out-resize.ts';
import { findOlderBases } from './older-bases.ts';
import type { ResizedTins } from './resize-tins.ts';

type Room = making.ResizeOffer['room'];

/** Whether what is still to weigh is on the shelf, and whether the bowl holds it all; more than the tins take is left over. */
export async function tellResizeRoom(
  context: Context,
  head: BatchHead,
  lines: readonly LineThen[],
  tins: ResizedTins,
): Promise<Room> {
  return [
    ...(await tellStock(context, head, lines)),
    ...(await tellBowl(context, sumThen(lines))),
    ...(tins.missing > 0
      ? [
          {
            isThere: true,
            says: saying('room-left-over', { missing: tins.missing, product: tins.productName }),
          },
        ]
      : []),
  ];
}

/** Only what becomes more than it was, and is not there, is in the way: the rest was planned. */
async function tellStock(context: Context, head: BatchHead, lines: readonly LineThen[]): Promise<Room> {
  const day = await workshopToday(context);
  const open = lines.filter(({ leftUg }) => leftUg > 0);
  const itemIds = [...new Set(open.map(({ line }) => line.item_id))];
  const { db } = context.storage;
  const usable = (await listLotsAtHand(db, { itemIds })).filter((lot) => isUsable(lot, day, head.purpose));
  const older = head.purpose === 'sale' ? await findOlderBases(db, usable) : new Set<string>();
  const stopped = await findStoppedBehind(db);
  const lots = usable.filter((lot) => !older.has(lot.id) && !stopped.has(lot.id));
  return itemIds.map((itemId) => {
    const own = open.filter(({ line }) => line.item_id === itemId);
    const need: Exact = sumOf(own.map(({ leftUg }) => gramsFromMicrograms(leftUg)));
    const have = gramsText(sumOnHand(lots, itemId));
    const item = own[0]?.line.item_name ?? '';
    return {
      isThere: exact(have).gte(need),
      says: saying('room-stock', { item, haveGrams: have, needGrams: toText(need) }),
    };
  });
}

async function tellBowl(context: Context, sum: Exact): Promise<Room> {
  const { bowlGrams } = await workshopDetails(context);
  if (bowlGrams === '') return [];
  const facts = { togetherGrams: toText(sum), bowlGrams };
  return [{ isThere: sum.lte(bowlGrams), says: saying('room-bowl', facts) }];
}
