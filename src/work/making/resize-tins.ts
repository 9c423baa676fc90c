import { type Exact, exact, gramsFromMicrograms, ZERO } from '../../core/quantity/index.ts';
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
 * What becomes more goes into the first product: whole tins at their aim, of what does not stay in the bowl, and not more
 * than tins, lids and labels are there for. What becomes less is taken from the first product, then from the next, until
 * what is left fills the tins that are.
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
  if (!read.ok || !first) return { tins: kept, missing: 0, productName: '' };
  if (isUg < wasUg)
    return { tins: takeAway(kept, read.value, wasUg - isUg), missing: 0, productName: first.name };
  const wanted = filledBy(first, isUg - wasUg)
    .div(first.aimGrams)
    .floor()
    .toNumber();
  const more = Math.min(wanted, Math.max(0, (await countRoom(context, first)) - first.units));
  return {
    tins: kept.map((tin) => (tin.productId === first.productId ? { ...tin, is: tin.was + more } : tin)),
    missing: wanted - more,
    productName: first.name,
  };
}

/** Of these grams, those that do not stay in the bowl. */
const filledBy = ({ details }: WantedTin, grossUg: number): Exact =>
  gramsFromMicrograms(grossUg).times(exact(100).minus(details.bowlLossPercent)).div(100);

/** Whole tins, so many that what is missing is surely not asked for any more. */
function takeAway(tins: readonly ResizedTin[], wanted: readonly WantedTin[], lessUg: number): ResizedTin[] {
  let missing = wanted[0] ? filledBy(wanted[0], lessUg) : ZERO;
  return tins.map((tin) => {
    const aimGrams = wanted.find(({ productId }) => productId === tin.productId)?.aimGrams;
    if (aimGrams === undefined || !missing.gt(0)) return tin;
    const fewer = Math.min(tin.was, missing.div(aimGrams).ceil().toNumber());
    missing = missing.minus(exact(aimGrams).times(fewer));
    return { ...tin, is: tin.was - fewer };
  });
}

async function countRoom({ storage: { db } }: Context, { tin, lid, label }: WantedTin): Promise<number> {
  const parts = [tin, lid, label].flatMap((part) => (part ? [part.id] : []));
  const lots = await listLotsAtHand(db, { itemIds: parts });
  return Math.min(...parts.map((id) => sumOnHand(lots, id)), Number.MAX_SAFE_INTEGER);
}
