import { netContentsTables } from '../../catalogue/index.ts';
import type { orders, stock } from '../../contract/index.ts';
import { adviseAim, findAim } from '../../core/filling/index.ts';
import { done, problem, type Result, refused } from '../../core/problem.ts';
import { type Exact, exact, smallest } from '../../core/quantity/index.ts';
import {
  findMaterials,
  findProduct,
  type MaterialRow,
  type Reader,
  type ScaleRow,
} from '../../storage/index.ts';
import { learnSpread } from '../filling/learn-spread.ts';
import { readProductDetails } from '../read-product-details.ts';
import { thingNotFound } from '../record.ts';
import { findWorstError } from '../scale-error.ts';

/** A product that the batch is to be filled into, with what one of its tins takes. */
export interface WantedTin {
  readonly productId: string;
  readonly name: string;
  readonly units: number;
  readonly details: orders.ProductDetails;
  readonly aimGrams: Exact;
  readonly tin: MaterialRow | undefined;
  readonly lid: MaterialRow | undefined;
  readonly label: MaterialRow | undefined;
}

type TinWish = { readonly productId: string; readonly units: number };

export async function readTins(
  db: Reader,
  formulaId: string,
  wishes: readonly TinWish[],
  scales: readonly ScaleRow[],
): Promise<Result<WantedTin[]>> {
  const tins: WantedTin[] = [];
  for (const [index, wish] of wishes.entries()) {
    const where = `size.tins[${index}].productId`;
    const product = await findProduct(db, wish.productId);
    if (!product) return refused(thingNotFound(where, wish.productId));
    if (tins.some((tin) => tin.productId === product.id))
      return refused(problem('product-twice', where, { found: product.name }));
    if (product.formula_id !== formulaId)
      return refused(problem('product-not-of-formula', where, { found: product.name }));
    const details = readProductDetails(product.details);
    const packaging = await findMaterials(
      db,
      [details.tinId, details.lidId, details.labelId].filter((id) => id !== null),
    );
    const partOf = (id: string | null) => packaging.find((row) => row.id === id);
    const tin = partOf(details.tinId);
    tins.push({
      ...wish,
      name: product.name,
      details,
      aimGrams: await findLearntAim(db, { productId: product.id, details, tareGrams: tareOf(tin) }, scales),
      tin,
      lid: partOf(details.lidId),
      label: partOf(details.labelId),
    });
  }
  return done(tins);
}

const tareOf = (tin: MaterialRow | undefined): string =>
  (tin && (JSON.parse(tin.details) as stock.MaterialDetails).tareGrams) || '0';

interface LearntTin {
  readonly productId: string;
  readonly details: orders.ProductDetails;
  readonly tareGrams: string;
}

/** As the run will aim: by the spread of earlier runs, where there is one, on the scale that asks for least. */
export async function findLearntAim(
  db: Reader,
  { productId, details, tareGrams }: LearntTin,
  scales: readonly ScaleRow[],
): Promise<Exact> {
  const bare = findTinAim(details, tareGrams, scales);
  const learnt = details.aimGrams === null ? await learnSpread(db, productId, details) : null;
  if (learnt === null) return bare;
  const load = exact(details.declaredGrams).plus(tareGrams);
  const aims = scales.flatMap((scale) => {
    const error = findWorstError(scale, load);
    if (!error.ok || load.gt(scale.capacity_grams)) return [];
    const advice = adviseAim(
      {
        declaredGrams: details.declaredGrams,
        basis: details.fillBasis,
        spreadGrams: learnt.spread.standardDeviation,
        tareSpreadGrams: null,
        errorGrams: error.value,
        readabilityGrams: scale.readability_grams,
      },
      netContentsTables,
    );
    return advice.ok ? [advice.value.aimGrams] : [];
  });
  const [first, ...rest] = aims;
  return first ? smallest(first, ...rest) : bare;
}

/**
 * As the product says; else the label and the worst error of the scale that weighs such a tin best. Without a scale the
 * label itself: the filling run asks for a scale and aims anew.
 */
export function findTinAim(
  details: orders.ProductDetails,
  tareGrams: string,
  scales: readonly ScaleRow[],
): Exact {
  if (details.aimGrams !== null) return exact(details.aimGrams);
  const load = exact(details.declaredGrams).plus(tareGrams);
  const aims = scales.flatMap((scale) => {
    const error = findWorstError(scale, load);
    return load.lte(scale.capacity_grams) && error.ok
      ? [findAim(details.declaredGrams, error.value, scale.readability_grams)]
      : [];
  });
  return (
    aims.reduce<Exact | undefined>(
      (least, aim) => (least === undefined || aim.lt(least) ? aim : least),
      undefined,
    ) ?? exact(details.declaredGrams)
  );
}
