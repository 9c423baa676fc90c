import { problem } from '../core/problem.ts';
import { giveUp, listClaimsOf, type Reader } from '../storage/index.ts';

/** What a tablet brought back late has to be answered first: nobody knows before whether it is in the bowl. */
export async function refuseOpenClaims(
  tx: Reader,
  kind: 'batch' | 'filling-run',
  id: string,
  where: string,
): Promise<void> {
  const open = (await listClaimsOf(tx, kind, id)).filter(({ answer }) => answer === null);
  if (open.length > 0) giveUp(problem('claims-open', where, { found: open.length }));
}
