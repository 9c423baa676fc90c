import { gramsFromMicrograms } from '../../core/quantity/index.ts';
import { type LotAtHand, listScales, type Writer } from '../../storage/index.ts';
import { findWorstErrorUg } from '../scale-error.ts';

/**
 * By how much a bowl and what was taken out of it may seem to differ, in micrograms: the worst error of each weighing on
 * the run's scale, and of the yield on whichever scale weighed it worst.
 */
export async function findBowlSlackUg(
  tx: Writer,
  bowl: LotAtHand,
  run: { readonly scaleErrorUg: number; readonly weighings: number },
): Promise<number> {
  const yieldErrors = (await listScales(tx)).flatMap((scale) => {
    const error = findWorstErrorUg(scale, gramsFromMicrograms(Math.max(bowl.received, 1)));
    return error.ok ? [error.value] : [];
  });
  return run.weighings * run.scaleErrorUg + Math.max(0, ...yieldErrors);
}
