import { type Problem, problem } from '../core/problem.ts';
import { type LotAtHand, listLotsNotReleased, type NotReleasedLot, type Reader } from '../storage/index.ts';
import { walkLots } from './trace/walk-lots.ts';

/** Lots that something went into which is not released now, each with one lot that stops it. */
export type StoppedBehind = ReadonlyMap<string, NotReleasedLot>;

/**
 * What may not be used, promised, given away or sent although it is released itself: a lot anywhere behind it was
 * blocked, rejected, or put back into quarantine since. Only what is released ever goes into anything, so the few lots
 * that are not are walked forward, once for everything.
 */
export async function findStoppedBehind(db: Reader): Promise<StoppedBehind> {
  const notReleased = new Map((await listLotsNotReleased(db)).map((lot) => [lot.id, lot]));
  const { steps } = await walkLots(db, [...notReleased.keys()], 'forward');
  const stopped = new Map<string, NotReleasedLot>();
  for (const { usedLotId, madeLotId } of steps) {
    const cause = notReleased.get(usedLotId) ?? stopped.get(usedLotId);
    if (cause && !stopped.has(madeLotId)) stopped.set(madeLotId, cause);
  }
  return stopped;
}

export function whyStoppedBehind(lot: LotAtHand, stoppedBehind: StoppedBehind): Problem | undefined {
  const stopped = stoppedBehind.get(lot.id);
  return (
    stopped &&
    problem('lot-behind-stopped', lot.number, {
      found: stopped.number,
      parameters: { item: stopped.item_name, reason: stopped.status_reason },
    })
  );
}
