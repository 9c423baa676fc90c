import { type LotAtHand, listLotsAtHand, listReleases, type Writer } from '../../storage/index.ts';
import { walkLots } from '../trace/walk-lots.ts';

/**
 * What was made of this lot and would keep longer than it does by the date that it is given now: bases, bowls, and tins
 * that nobody has decided yet. The date of released tins is printed on them; their next release finds it too late.
 */
export async function listOutlasting(
  tx: Writer,
  lot: LotAtHand,
  bestBefore: string | null,
): Promise<LotAtHand[]> {
  if (bestBefore === null || bestBefore === lot.best_before || lot.unit !== 'g') return [];
  const { reached } = await walkLots(tx, [lot.id], 'forward');
  const made = await listLotsAtHand(tx, { lotIds: reached.map((row) => row.lotId) });
  const runIds = made.flatMap(({ filling_run_id }) => filling_run_id ?? []);
  const decided = new Set((await listReleases(tx, runIds)).map((row) => row.filling_run_id));
  return made.filter(({ item_kind, best_before, filling_run_id }) =>
    item_kind === 'product'
      ? best_before !== null && best_before > bestBefore && !decided.has(filling_run_id ?? '')
      : best_before === null || best_before > bestBefore,
  );
}
