import type { Selectable } from 'kysely';
import type { CustomerTable } from './schema.ts';
import type { Reader } from './storage.ts';

export type CustomerRow = Selectable<CustomerTable>;

/** The only table with customers' names: ledger and orders keep a number, so that a person can be erased. */
export const listCustomers = (db: Reader): Promise<CustomerRow[]> =>
  db.selectFrom('customer').selectAll().orderBy('is_erased').orderBy('name').execute();

export const findCustomer = (db: Reader, id: string): Promise<CustomerRow | undefined> =>
  db.selectFrom('customer').selectAll().where('id', '=', id).executeTakeFirst();

export async function insertCustomer(db: Reader, row: CustomerRow): Promise<void> {
  await db.insertInto('customer').values(row).execute();
}

export async function updateCustomer(db: Reader, row: CustomerRow, seenVersion: number): Promise<boolean> {
  const changed = await db
    .updateTable('customer')
    .set({ name: row.name, address: row.address, is_erased: row.is_erased, version: seenVersion + 1 })
    .where('id', '=', row.id)
    .where('version', '=', seenVersion)
    .returningAll()
    .executeTakeFirst();
  return changed !== undefined;
}

/**
 * Whatever else a customer's orders hold in words: notes, reasons, tracking numbers, and the salts without which nobody
 * can tell from the chain what was typed.
 */
export async function eraseOrdersText(db: Reader, customerId: string): Promise<void> {
  const orders = db.selectFrom('customer_order').select('id').where('customer_id', '=', customerId);
  const entries = db
    .selectFrom('entry')
    .select('id')
    .where((where) =>
      where.or([
        where.and([where('subject_kind', '=', 'customer'), where('subject_id', '=', customerId)]),
        where.and([where('subject_kind', '=', 'order'), where('subject_id', 'in', orders)]),
      ]),
    );
  const dispatches = db.selectFrom('dispatch').select('id').where('order_id', 'in', orders);
  await db.deleteFrom('request_salt').where('entry_id', 'in', entries).execute();
  await db.deleteFrom('dispatch_tracking').where('dispatch_id', 'in', dispatches).execute();
  await db
    .updateTable('customer_order')
    .set((order) => ({ note: '', cancelled_because: '', version: order('version', '+', 1) }))
    .where('customer_id', '=', customerId)
    .returningAll()
    .execute();
}
