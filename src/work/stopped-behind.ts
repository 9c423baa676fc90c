import { type Problem, problem } from '../core/problem.ts';
import { type LotAtHand, listLotsAtHand, type Reader } from '../storage/index.ts';
import { walkLots } from './trace/walk-lots.ts';

export const isStopped = (lot: LotAtHand): boolean => lot.status === 'blocked' || lot.status === 'rejected';

/**
 * Why tins may not be promised, given away or sent although they are released themselves: a lot anywhere behind them
 * was blocked or rejected since. Nothing where none was.
 */
export async function findStoppedBehind(db: Reader, lot: LotAtHand): Promise<Problem | undefined> {
  const { reached } = await walkLots(db, lot.id, 'back');
  if (reached.length === 0) return undefined;
  const behind = await listLotsAtHand(db, { lotIds: reached.map((row) => row.lotId) });
  const stopped = behind.find(isStopped);
  return (
    stopped &&
    problem('lot-behind-stopped', lot.number, {
      found: stopped.number,
      parameters: { item: stopped.item_name, reason: stopped.status_reason },
    })
  );
}
