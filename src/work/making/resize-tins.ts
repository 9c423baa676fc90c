import { exact, gramsFromMicrograms } from '../../core/quantity/index.ts';
import { type BatchHead, listBatchTins, listLotsAtHand, listScales } from '../../storage/index.ts';
import type { Context } from '../context.ts';
import { sumOnHand } from './find-limits.ts';
import { readTins, type WantedTin } from './read-tins.ts';

export interface ResizedTin {
  readonly productId: string;
  readonly productName: string;
  readonly was: number;
  readonly is: number;
}

export interface ResizedTins {
  readonly tins: readonly ResizedTin[];
  /** Tins that the grams would fill and that tin, lid or label are missing for: it stays as a leftover. */
  readonly missing: number;
  readonly productName: string;
}

/**
 * What becomes more, or less, goes into the first product: whole tins at their aim, of what does not stay in the bowl,
 * and not more than tins, lids and labels are there for.
 */
export async function resizeTins(
  context: Context,
  head: BatchHead,
  { wasUg, isUg }: { readonly wasUg: number; readonly isUg: number },
): Promise<ResizedTins> {
  const { db } = context.storage;
  const rows = await listBatchTins(db, head.id);
  const wishes = rows.map((row) => ({ productId: row.product_id, units: row.units }));
  const read = await readTins(db, head.formula_id, wishes, await listScales(db));
  const kept = rows.map(({ product_id, product_name, units }) => ({
    productId: product_id,
    productName: product_name,
    was: units,
    is: units,
  }));
  const [first] = read.ok ? read.value : [];
  if (!first) return { tins: kept, missing: 0, productName: '' };
  const wanted = countMore(first, isUg - wasUg);
  const room = wanted > 0 ? await countRoom(context, first) : 0;
  const more = wanted > 0 ? Math.min(wanted, Math.max(0, room - first.units)) : wanted;
  return {
    tins: kept.map((tin) =>
      tin.productId === first.productId ? { ...tin, is: Math.max(0, tin.was + more) } : tin,
    ),
    missing: wanted > 0 ? wanted - more : 0,
    productName: first.name,
  };
}

/** More: what surely fills them. Fewer: what surely no longer does. */
function countMore({ aimGrams, details }: WantedTin, moreUg: number): number {
  const filled = gramsFromMicrograms(moreUg).times(exact(100).minus(details.bowlLossPercent)).div(100);
  return filled.div(aimGrams).floor().toNumber();
}

async function countRoom({ storage: { db } }: Context, { tin, lid, label }: WantedTin): Promise<number> {
  const parts = [tin, lid, label].flatMap((part) => (part ? [part.id] : []));
  const lots = await listLotsAtHand(db, { itemIds: parts });
  return Math.min(...parts.map((id) => sumOnHand(lots, id)), Number.MAX_SAFE_INTEGER);
}
