import type { steps } from '../contract/index.ts';
import { poolSpread } from '../core/filling/index.ts';
import { gramsFromMicrograms } from '../core/quantity/index.ts';
import { listFillWeights, listRunsOfProduct, type Reader } from '../storage/index.ts';

/** A season of one product: older ones were filled by another hand (common practice, no source). */
const NEWEST_RUNS = 6;

/** Within the newest runs of a product, not between them: how far tins of one filling lie from each other. */
export async function findFillSpread(
  db: Reader,
  productId: string,
  exceptRunId?: string,
): Promise<steps.AirTin['spread']> {
  const runs = (await listRunsOfProduct(db, productId))
    .filter((run) => run.id !== exceptRunId)
    .slice(0, NEWEST_RUNS);
  const weights = (
    await listFillWeights(
      db,
      runs.map((run) => run.id),
    )
  ).filter((row) => !row.is_struck && !row.is_refilled);
  const pooled = poolSpread(
    runs.map((run) =>
      weights
        .filter((row) => row.filling_run_id === run.id)
        .map((row) => gramsFromMicrograms(row.gross_ug - row.tare_ug)),
    ),
  );
  return pooled
    ? {
        runs: pooled.groups,
        tins: pooled.count,
        degreesOfFreedom: pooled.degreesOfFreedom,
        standardDeviationGrams: pooled.standardDeviation.toNumber(),
      }
    : null;
}
