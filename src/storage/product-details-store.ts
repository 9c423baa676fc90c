import type { Reader } from './storage.ts';

/** Tables that hold one JSON of details for each product, under a version. */
type Table = 'label_design' | 'product_file';

export interface DetailsOfProduct {
  readonly product_id: string;
  readonly version: number;
  readonly details: string;
}

export const findDetailsOf = (
  db: Reader,
  table: Table,
  productId: string,
): Promise<DetailsOfProduct | undefined> =>
  db
    .selectFrom(table)
    .select(['product_id', 'version', 'details'])
    .where('product_id', '=', productId)
    .executeTakeFirst();

export const findLabelDesign = (db: Reader, productId: string): Promise<DetailsOfProduct | undefined> =>
  findDetailsOf(db, 'label_design', productId);

export const findProductFile = (db: Reader, productId: string): Promise<DetailsOfProduct | undefined> =>
  findDetailsOf(db, 'product_file', productId);

/** Writes the row where the writer saw none, or changes it where it still has the version that was seen; says whether it did. */
export async function keepDetailsOf(
  db: Reader,
  table: Table,
  { productId, details, seen }: { productId: string; details: string; seen: number | null },
): Promise<boolean> {
  const current = await findDetailsOf(db, table, productId);
  if (!current && seen === null) {
    await db.insertInto(table).values({ product_id: productId, version: 1, details }).execute();
    return true;
  }
  if (!current || seen === null) return false;
  const changed = await db
    .updateTable(table)
    .set({ details, version: seen + 1 })
    .where('product_id', '=', productId)
    .where('version', '=', seen)
    .returningAll()
    .executeTakeFirst();
  return changed !== undefined;
}
