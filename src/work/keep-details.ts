import { findDetailsOf, giveUp, keepDetailsOf, type Writer } from '../storage/index.ts';
import { changedMeanwhile } from './record.ts';

interface Kept {
  readonly productId: string;
  /** Of the product, for whoever has to be told that somebody else wrote meanwhile. */
  readonly name: string;
  readonly details: object;
  /** Version that the writer saw; null: there was none. */
  readonly seen: number | null;
}

/** What belongs to a product, one to one, as it was written over the version that was seen; else nothing is. */
export async function keepDetails(
  tx: Writer,
  table: Parameters<typeof keepDetailsOf>[1],
  { productId, name, details, seen }: Kept,
): Promise<void> {
  if (await keepDetailsOf(tx, table, { productId, details: JSON.stringify(details), seen })) return;
  const current = await findDetailsOf(tx, table, productId);
  giveUp(changedMeanwhile(name, seen, current?.version ?? 0, name));
}
