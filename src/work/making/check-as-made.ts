import { type AskedProduct, type Checked, listStanding } from '../../check/index.ts';
import type { Market } from '../../contract/index.ts';
import type { Result } from '../../core/problem.ts';
import type { Context } from '../context.ts';
import { type LotLookup, runCheck } from '../formulas/index.ts';

/**
 * The formula's check with the lots that were taken, or are to be, where one of them has a certificate: its figures go
 * before the remembered ones, to either side. `made`: as findMadeLookup or a plan has it; undefined: nothing differs.
 */
export async function checkAsMade(
  context: Context,
  revisionId: string,
  markets: readonly Market[],
  made: LotLookup | undefined,
  products: readonly AskedProduct[] = [],
): Promise<Result<Checked>> {
  const written = await runCheck(context, revisionId, markets, { products });
  const hasPaper = made?.certified !== undefined && made.certified.size > 0;
  if (!written.ok || !hasPaper) return written;
  return runCheck(context, revisionId, markets, {
    weighed: made,
    decisions: listStanding(written.value),
    products,
  });
}
