import type { Selectable } from 'kysely';
import type { ProductTable } from './schema.ts';
import type { Reader } from './storage.ts';

export type ProductRow = Selectable<ProductTable>;

export const findProduct = (db: Reader, id: string): Promise<ProductRow | undefined> =>
  db.selectFrom('product').selectAll().where('id', '=', id).executeTakeFirst();

/** Every product with its formula's name, by name. */
export const listProducts = (db: Reader): Promise<(ProductRow & { formula_name: string })[]> =>
  db
    .selectFrom('product')
    .innerJoin('formula', 'formula.id', 'product.formula_id')
    .selectAll('product')
    .select('formula.name as formula_name')
    .orderBy('product.name')
    .execute();

export async function insertProduct(db: Reader, row: ProductRow): Promise<void> {
  await db.insertInto('product').values(row).execute();
}

/** Changes the row only where it still has the version that the writer saw; says whether it did. */
export async function updateProduct(db: Reader, row: ProductRow, seenVersion: number): Promise<boolean> {
  const changed = await db
    .updateTable('product')
    .set({ formula_id: row.formula_id, name: row.name, details: row.details, version: seenVersion + 1 })
    .where('id', '=', row.id)
    .where('version', '=', seenVersion)
    .returningAll()
    .executeTakeFirst();
  return changed !== undefined;
}
