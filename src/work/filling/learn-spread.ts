import type { orders } from '../../contract/index.ts';
import { type PooledSpread, poolSpread } from '../../core/filling/index.ts';
import { type Exact, exact } from '../../core/quantity/index.ts';
import {
  listClosedRuns,
  listFillWeights,
  type Reader,
  type RunHead,
  type SignedWeight,
} from '../../storage/index.ts';
import { readProductDetails } from '../read-product-details.ts';
import { netGramsOf } from './net-grams-of.ts';

export interface LearntSpread {
  readonly spread: PooledSpread;
  readonly from: 'product' | 'container';
  readonly runs: readonly { readonly head: RunHead; readonly tins: number }[];
}

/** How it goes these days: so many runs back (house rule). */
const LAST_RUNS = 10;
/** Two runs of five tins are the least that tells a spread (house rule). */
const LEAST_DEGREES = 8;

/**
 * How this workshop's hands spread their fills: of earlier runs of the product, else of whatever went into the same
 * container with the same content. As they were filled first, before anything was filled up or taken out. null: too few.
 */
export async function learnSpread(
  db: Reader,
  productId: string,
  { tinId, declaredGrams }: orders.ProductDetails,
): Promise<LearntSpread | null> {
  const heads = await listClosedRuns(db);
  const alike = heads.filter((head) => {
    const details = readProductDetails(head.product_details);
    return details.tinId === tinId && exact(details.declaredGrams).eq(declaredGrams);
  });
  return tellingOf(await poolOwnRuns(db, productId)) ?? tellingOf(await pool(db, alike, 'container'));
}

/** Of earlier runs of the product alone, however few tins they had; null: no two. */
export async function poolOwnRuns(db: Reader, productId: string): Promise<LearntSpread | null> {
  const heads = await listClosedRuns(db);
  return pool(
    db,
    heads.filter((head) => head.product_id === productId),
    'product',
  );
}

const tellingOf = (learnt: LearntSpread | null): LearntSpread | null =>
  learnt === null || learnt.spread.degreesOfFreedom < LEAST_DEGREES ? null : learnt;

async function pool(
  db: Reader,
  all: readonly RunHead[],
  from: LearntSpread['from'],
): Promise<LearntSpread | null> {
  const heads = all.slice(0, LAST_RUNS);
  const weights = await listFillWeights(
    db,
    heads.map((head) => head.id),
  );
  const runs = heads.flatMap((head) => {
    const nets = firstNetsOf(weights.filter((row) => row.filling_run_id === head.id));
    return nets.length > 1 ? [{ head, nets }] : [];
  });
  const spread = poolSpread(runs.map(({ nets }) => nets));
  if (spread === null) return null;
  return { spread, from, runs: runs.map(({ head, nets }) => ({ head, tins: nets.length })) };
}

/** A slip of the pen is no fill, and of a tin struck before its fate was asked nobody knows whether it was one. */
const firstNetsOf = (weights: readonly SignedWeight[]): Exact[] =>
  weights
    .filter((row) => row.refill_of === null)
    .filter((row) => !row.is_struck || (row.fate !== null && row.fate !== 'slip'))
    .map(netGramsOf);
