import { done, type Problem, problem } from '../../core/problem.ts';
import {
  findPlace,
  giveUp,
  insertMovements,
  type LotAtHand,
  listReservedByLot,
  type MovementRow,
  orGiveUp,
  type PlaceRow,
  type Writer,
} from '../../storage/index.ts';
import type { Context } from '../context.ts';
import { findOldLabels, whyTooOld } from '../filling/find-old-labels.ts';
import { inside } from '../inside.ts';
import { workshopToday } from '../local-date.ts';
import { lotTooSmall, whyNotUsable } from '../lot-use.ts';
import { newMovement } from '../new-movement.ts';
import { amountText } from '../quantity-text.ts';
import { record, thingNotFound } from '../record.ts';
import { findStoppedBehind, whyStoppedBehind } from '../stopped-behind.ts';
import type { RequestOf, UseCase } from '../use-case.ts';
import { findLotAtHand, lotToChange, type Standing, standingMeant } from './lot-on-bench.ts';
import { readQuantity, type Unit } from './read-quantity.ts';

type Body = RequestOf<'moveLot'>['body'];

/** What a person books by hand: a tester, a gift, own use, a breakage, waste, or a move to another place. */
export const moveLot: UseCase<'moveLot'> = (context, { body, params }) =>
  record(
    context,
    body.stamp,
    async (tx, tell) => {
      const lot = await lotToChange(tx, params.id ?? '');
      const quantity = orGiveUp(readQuantity(body.quantity, lot.unit as Unit));
      const from = await standingMeant(tx, lot, body.fromPlaceId, 'fromPlaceId');
      const to = await placeMovedTo(tx, body, from);
      const today = await workshopToday(inside(context, tx));
      const refusal =
        judgeEnough(lot, from, quantity) ??
        (await judgeSupply(inside(context, tx), lot, { kind: body.kind, to, today })) ??
        (from.place_kind === 'retained' ? undefined : await judgeKept(tx, lot, body.kind, quantity));
      if (refusal) giveUp(refusal);
      await tell({
        kind: `lot-${body.kind}`,
        subjectKind: 'lot',
        subjectId: lot.id,
        payload: { quantity, unit: lot.unit, from: from.place_id, to: to?.id ?? null, reason: body.reason },
      });
      await insertMovements(tx, movementsOf(context, body, lot, { quantity, from, to }));
      return lot.id;
    },
    async (id) => {
      const lot = await findLotAtHand(context.storage.db, id);
      return done({ onHand: amountText(lot?.on_hand ?? 0, lot?.unit ?? 'g') });
    },
  );

interface Move {
  readonly quantity: number;
  readonly from: Standing;
  readonly to: PlaceRow | null;
}

function movementsOf(context: Context, body: Body, lot: LotAtHand, move: Move): MovementRow[] {
  const booked = (placeId: string, quantity: number) =>
    newMovement(context, body.stamp.id, {
      lot_id: lot.id,
      place_id: placeId,
      kind: body.kind,
      quantity,
      reason: body.reason,
    });
  const out = booked(move.from.place_id, -move.quantity);
  return move.to === null ? [out] : [out, booked(move.to.id, move.quantity)];
}

async function placeMovedTo(tx: Writer, body: Body, from: Standing): Promise<PlaceRow | null> {
  const { kind, toPlaceId } = body;
  if (kind !== 'moved') {
    if (toPlaceId !== undefined) giveUp(problem('only-moves-arrive', 'toPlaceId', { found: kind }));
    return null;
  }
  if (toPlaceId === undefined) giveUp(problem('field-missing', 'toPlaceId', { allowed: 'string' }));
  const place = (await findPlace(tx, toPlaceId)) ?? giveUp(thingNotFound('toPlaceId', toPlaceId));
  if (place.id === from.place_id) giveUp(problem('moved-nowhere', 'toPlaceId', { found: place.name }));
  return place;
}

function judgeEnough(lot: LotAtHand, from: Standing, quantity: number): Problem | undefined {
  if (quantity <= from.quantity) return undefined;
  if (quantity > lot.on_hand) return lotTooSmall(lot, quantity);
  return problem('place-too-small', `lot ${lot.number}`, {
    found: amountText(quantity, lot.unit),
    allowed: amountText(from.quantity, lot.unit),
    parameters: { place: from.place_name, item: lot.item_name, unit: lot.unit },
  });
}

const IS_SUPPLY: ReadonlySet<string> = new Set(['tester', 'gift']);
const SELLS: ReadonlySet<string> = new Set(['stall', 'shop']);

interface Supply {
  readonly kind: Body['kind'];
  readonly to: PlaceRow | null;
  readonly today: string;
}

/**
 * A tin given away is made available on the market as a tin sold is, "whether in return for payment or free of charge"
 * (Regulation (EC) No 1223/2009, Article 2(1)(g)): released and within its date only, no lot behind it stopped, its label not
 * overtaken by newer law, and so is what goes to a stall.
 */
async function judgeSupply(
  context: Context,
  lot: LotAtHand,
  { kind, to, today }: Supply,
): Promise<Problem | undefined> {
  const isSupplied = IS_SUPPLY.has(kind) || (to !== null && SELLS.has(to.kind));
  if (!isSupplied || lot.item_kind === 'material') return undefined;
  return (
    whyNotUsable(lot, today, 'sale') ??
    whyStoppedBehind(lot, await findStoppedBehind(context.storage.db)) ??
    whyTooOld(lot, (await findOldLabels(context, [lot])).get(lot.id))
  );
}

/** Tins kept for orders are not given away; that some broke is a fact, and nobody is asked. */
async function judgeKept(
  tx: Writer,
  lot: LotAtHand,
  kind: Body['kind'],
  quantity: number,
): Promise<Problem | undefined> {
  if (!IS_SUPPLY.has(kind) && kind !== 'own-use') return undefined;
  const row = (await listReservedByLot(tx)).find((kept) => kept.lot_id === lot.id);
  const free = lot.on_hand - Number(row?.units ?? 0);
  return quantity > free
    ? problem('lot-kept-for-orders', `lot ${lot.number}`, {
        found: amountText(quantity, lot.unit),
        allowed: amountText(Math.max(free, 0), lot.unit),
        parameters: { item: lot.item_name, unit: lot.unit },
      })
    : undefined;
}
