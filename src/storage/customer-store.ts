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
