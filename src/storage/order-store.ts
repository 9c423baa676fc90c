import type { Selectable } from 'kysely';
import type { CustomerOrderTable, OrderLineTable, ReservationTable } from './schema.ts';
import type { Reader } from './storage.ts';

export type OrderRow = Selectable<CustomerOrderTable>;
export type OrderLineRow = Selectable<OrderLineTable>;

export const findOrder = (db: Reader, id: string): Promise<OrderRow | undefined> =>
  db.selectFrom('customer_order').selectAll().where('id', '=', id).executeTakeFirst();

export const listOrders = (db: Reader): Promise<OrderRow[]> =>
  db.selectFrom('customer_order').selectAll().orderBy('wanted_by').orderBy('number').execute();

export const listOrderLines = (db: Reader, orderIds: readonly string[]): Promise<OrderLineRow[]> =>
  db.selectFrom('order_line').selectAll().where('order_id', 'in', orderIds).orderBy('position').execute();

export async function nextOrderNumber(db: Reader): Promise<number> {
  const row = await db
    .selectFrom('customer_order')
    .select((query) => query.fn.max('number').as('last'))
    .executeTakeFirst();
  return (row?.last ?? 100) + 1;
}

export async function insertOrder(
  db: Reader,
  order: OrderRow,
  lines: readonly OrderLineRow[],
): Promise<void> {
  await db.insertInto('customer_order').values(order).execute();
  await db
    .insertInto('order_line')
    .values([...lines])
    .execute();
}

export async function updateOrder(db: Reader, order: OrderRow, seenVersion: number): Promise<boolean> {
  const changed = await db
    .updateTable('customer_order')
    .set({
      customer_id: order.customer_id,
      placed_on: order.placed_on,
      wanted_by: order.wanted_by,
      note: order.note,
      cancelled: order.cancelled,
      cancelled_because: order.cancelled_because,
      version: seenVersion + 1,
    })
    .where('id', '=', order.id)
    .where('version', '=', seenVersion)
    .returningAll()
    .executeTakeFirst();
  return changed !== undefined;
}

/** Replaces the lines that nothing refers to yet; lines with reservations or dispatches are kept by their id. */
export async function replaceOrderLines(
  db: Reader,
  orderId: string,
  lines: readonly OrderLineRow[],
): Promise<void> {
  const kept = lines.map((line) => line.id);
  await db
    .deleteFrom('order_line')
    .where('order_id', '=', orderId)
    .where('id', 'not in', kept)
    .returningAll()
    .execute();
  for (const line of lines) {
    await db
      .insertInto('order_line')
      .values(line)
      .onConflict((conflict) =>
        conflict.column('id').doUpdateSet({ position: line.position, units: line.units }),
      )
      .returningAll()
      .execute();
  }
}

export interface LotUnits {
  readonly order_line_id: string;
  readonly lot_id: string;
  readonly lot_number: string;
  readonly units: number;
}

/** What is kept for each line, lot by lot. */
export const listReserved = (db: Reader, lineIds: readonly string[]): Promise<LotUnits[]> =>
  db
    .selectFrom('reservation')
    .innerJoin('lot', 'lot.id', 'reservation.lot_id')
    .select(['order_line_id', 'lot_id', 'lot.number as lot_number'])
    .select((query) => query.fn.sum<number>('reservation.units').as('units'))
    .where('order_line_id', 'in', lineIds)
    .groupBy(['order_line_id', 'lot_id', 'lot.number'])
    .having((query) => query.fn.sum('reservation.units'), '>', 0)
    .execute();

/** What went out for each line, lot by lot. */
export async function listSent(db: Reader, lineIds: readonly string[]): Promise<LotUnits[]> {
  const rows = await db
    .selectFrom('movement')
    .innerJoin('lot', 'lot.id', 'movement.lot_id')
    .select(['order_line_id', 'lot_id', 'lot.number as lot_number'])
    .select((query) => query.fn.sum<number>('movement.quantity').as('moved'))
    .where('order_line_id', 'in', lineIds)
    .groupBy(['order_line_id', 'lot_id', 'lot.number'])
    .execute();
  return rows.map((row) => ({
    order_line_id: row.order_line_id ?? '',
    lot_id: row.lot_id,
    lot_number: row.lot_number,
    units: -Number(row.moved),
  }));
}

/** Units of each product lot that are kept for any order. */
export const listReservedByLot = (db: Reader): Promise<{ lot_id: string; units: number }[]> =>
  db
    .selectFrom('reservation')
    .select('lot_id')
    .select((query) => query.fn.sum<number>('units').as('units'))
    .groupBy('lot_id')
    .having((query) => query.fn.sum('units'), '>', 0)
    .execute();

export async function insertReservations(
  db: Reader,
  rows: readonly Selectable<ReservationTable>[],
): Promise<void> {
  if (rows.length > 0)
    await db
      .insertInto('reservation')
      .values([...rows])
      .execute();
}
