import { sql } from 'kysely';
import type { Reader } from './storage.ts';

/** `madeLotId` was made, in a batch or a filling run, with some of `usedLotId`. */
export interface MadeFrom {
  readonly usedLotId: string;
  readonly madeLotId: string;
  /** How much of it went in, micrograms or pieces. */
  readonly quantity: number;
}

type Direction = 'forward' | 'back';

/**
 * One step along the making, from each of these lots: forward to what was made of them, or back to what they were made
 * of. What was poured back (a struck addition) cancels: only a lot with a net use counts.
 */
export async function stepAlong(
  db: Reader,
  lotIds: readonly string[],
  direction: Direction,
): Promise<MadeFrom[]> {
  if (lotIds.length === 0) return [];
  return [
    ...(await stepThrough(db, lotIds, direction, 'batch_id')),
    ...(await stepThrough(db, lotIds, direction, 'filling_run_id')),
  ];
}

async function stepThrough(
  db: Reader,
  lotIds: readonly string[],
  direction: Direction,
  making: 'batch_id' | 'filling_run_id',
): Promise<MadeFrom[]> {
  const known = direction === 'forward' ? 'used.lot_id' : 'made.lot_id';
  let query = db
    .selectFrom('movement as used')
    .innerJoin('movement as made', `made.${making}`, `used.${making}`)
    .select(['used.lot_id as usedLotId', 'made.lot_id as madeLotId'])
    .where('used.kind', 'in', ['used', 'returned'])
    .where('made.kind', '=', 'made')
    .where(known, 'in', lotIds)
    .groupBy(['used.lot_id', 'made.lot_id'])
    .having((having) => having.fn.sum('used.quantity'), '<', 0);
  // What a filling run moves may name its batch too; it is a step of the run, not of the batch.
  if (making === 'batch_id') query = query.where(isWithoutRun('used')).where(isWithoutRun('made'));
  const rows = await query.select((select) => select.fn.sum<number>('used.quantity').as('net')).execute();
  return rows.map((row) => ({
    usedLotId: row.usedLotId,
    madeLotId: row.madeLotId,
    quantity: -Number(row.net),
  }));
}

/** Asked so that no index answers: half of all movements have no run, and looking through them took 30 ms a step. */
const isWithoutRun = (movement: 'used' | 'made') =>
  sql<boolean>`coalesce(${sql.ref(`${movement}.filling_run_id`)}, '') = ''`;

export interface LastUse {
  readonly lotId: string;
  /** The instant of the newest entry by which some of it went in. */
  readonly usedAt: string;
}

/** When these lots were last used in one of these batches or in this filling run. */
export async function listLastUses(
  db: Reader,
  lotIds: readonly string[],
  { batchIds, runId }: { readonly batchIds: readonly string[]; readonly runId: string },
): Promise<LastUse[]> {
  if (lotIds.length === 0 || batchIds.length === 0) return [];
  const rows = await db
    .selectFrom('movement')
    .innerJoin('entry', 'entry.id', 'movement.entry_id')
    .select('movement.lot_id as lotId')
    .select((query) => query.fn.max('entry.happened_at').as('usedAt'))
    .where('movement.lot_id', 'in', lotIds)
    .where('movement.kind', '=', 'used')
    .where((where) =>
      where.or([
        where('movement.filling_run_id', '=', runId),
        where.and([where('movement.filling_run_id', 'is', null), where('movement.batch_id', 'in', batchIds)]),
      ]),
    )
    .groupBy('movement.lot_id')
    .execute();
  return rows.map(({ lotId, usedAt }) => ({ lotId, usedAt }));
}

export interface SentTins {
  readonly lotId: string;
  readonly lotNumber: string;
  readonly orderId: string;
  readonly orderNumber: number;
  readonly customerId: string | null;
  readonly units: number;
  readonly sentAt: string;
}

/** Which of these lots' tins went out with which order. */
export async function listSentOfLots(db: Reader, lotIds: readonly string[]): Promise<SentTins[]> {
  if (lotIds.length === 0) return [];
  const rows = await db
    .selectFrom(sumSent(db, lotIds).as('sent'))
    .innerJoin('lot', 'lot.id', 'sent.lot_id')
    .innerJoin('dispatch', 'dispatch.id', 'sent.dispatch_id')
    .innerJoin('customer_order', 'customer_order.id', 'dispatch.order_id')
    .innerJoin('entry', 'entry.id', 'dispatch.entry_id')
    .select(['lot.id as lotId', 'lot.number as lotNumber', 'sent.quantity'])
    .select(['customer_order.id as orderId', 'customer_order.number as orderNumber'])
    .select(['customer_order.customer_id as customerId', 'entry.happened_at as sentAt'])
    .orderBy('customer_order.number')
    .execute();
  return rows.map(({ quantity, ...row }) => ({ ...row, units: -Number(quantity) }));
}

/** Summed before anything is looked up for it. A parcel that did not go after all was taken back: no row. */
const sumSent = (db: Reader, lotIds: readonly string[]) =>
  db
    .selectFrom('movement')
    .select(['lot_id', 'dispatch_id'])
    .select((query) => query.fn.sum<number>('quantity').as('quantity'))
    .where('lot_id', 'in', lotIds)
    .where('kind', '=', 'sold')
    .groupBy(['lot_id', 'dispatch_id'])
    .having((query) => query.fn.sum('quantity'), '<', 0);

/** Sums of a lot's movements by kind, over all places. */
export async function sumByKind(db: Reader, lotId: string): Promise<Map<string, number>> {
  const rows = await db
    .selectFrom('movement')
    .select('kind')
    .select((query) => query.fn.sum<number>('quantity').as('total'))
    .where('lot_id', '=', lotId)
    .groupBy('kind')
    .execute();
  return new Map(rows.map((row) => [row.kind, Number(row.total)]));
}

const holding = (letters: string): string => `%${letters.toLowerCase().replace(/[\\%_]/g, '\\$&')}%`;

/** Nobody types the noughts: lb-1 and LB 1 mean LB-0001. */
const asNumbered = (like: string): string =>
  like.replace(
    /^([a-z]+)[ -]?0*(\d{1,4})$/i,
    (_all, code: string, digits: string) => `${code}-${digits.padStart(4, '0')}`,
  );

/** `104`, `#104` and `order 104` are the number of an order. */
const orderNumberIn = (like: string): number | undefined => {
  const [, digits] = /^(?:order\s*)?#?\s*(\d{1,9})$/i.exec(like) ?? [];
  return digits === undefined ? undefined : Number(digits);
};

const sentWithOrder = (db: Reader, number: number) =>
  db
    .selectFrom('customer_order')
    .innerJoin('dispatch', 'dispatch.order_id', 'customer_order.id')
    .innerJoin('movement', 'movement.dispatch_id', 'dispatch.id')
    .select('movement.lot_id')
    .where('customer_order.number', '=', number);

/**
 * Lots whose number, supplier's number or item's name holds these letters, and those of which tins went out with the
 * order of this number; the newest first.
 */
export async function findLotIdsLike(db: Reader, like: string, most: number): Promise<string[]> {
  const matches = (
    column: 'lot.number' | 'lot.supplier_lot' | 'material.name' | 'formula.name' | 'product.name',
    letters = like,
  ) => sql<boolean>`lower(${sql.ref(column)}) like ${holding(letters)} escape '\\'`;
  const order = orderNumberIn(like);
  const rows = await db
    .selectFrom('lot')
    .innerJoin('entry', 'entry.id', 'lot.entry_id')
    .leftJoin('material', 'material.id', 'lot.item_id')
    .leftJoin('formula', 'formula.id', 'lot.item_id')
    .leftJoin('product', 'product.id', 'lot.item_id')
    .select('lot.id')
    .where((where) =>
      where.or([
        matches('lot.number'),
        matches('lot.number', asNumbered(like)),
        matches('lot.supplier_lot'),
        matches('material.name'),
        matches('formula.name'),
        matches('product.name'),
        ...(order === undefined ? [] : [where('lot.id', 'in', sentWithOrder(db, order))]),
      ]),
    )
    .orderBy('entry.seq', 'desc')
    .limit(most)
    .execute();
  return rows.map((row) => row.id);
}
