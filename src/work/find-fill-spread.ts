import type { steps } from '../contract/index.ts';
import type { Reader } from '../storage/index.ts';
import { poolOwnRuns } from './filling/learn-spread.ts';

/** Within the newest runs of a product that are filled to their end, not between them: how far tins of one filling lie from each other. */
export async function findFillSpread(db: Reader, productId: string): Promise<steps.AirTin['spread']> {
  const learnt = await poolOwnRuns(db, productId);
  if (!learnt) return null;
  const { spread } = learnt;
  return {
    runs: spread.groups,
    tins: spread.count,
    degreesOfFreedom: spread.degreesOfFreedom,
    standardDeviationGrams: spread.standardDeviation.toNumber(),
  };
}
