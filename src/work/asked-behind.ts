import { listLotsOfBatches, listOpenClaims, type Reader } from '../storage/index.ts';
import { walkLots } from './trace/walk-lots.ts';

/** Lots whose own batch, or one anywhere behind them, has a question of a tablet that nobody has answered: that batch's number. */
export type AskedBehind = ReadonlyMap<string, string>;

/** What is in such a lot nobody knows before somebody answers. Most days there is no question, and nothing is walked. */
export async function findAskedBehind(db: Reader): Promise<AskedBehind> {
  const open = (await listOpenClaims(db)).filter((claim) => claim.subject_kind === 'batch');
  const made = await listLotsOfBatches(db, [...new Set(open.map((claim) => claim.subject_id))]);
  const asked = new Map(made.map((lot) => [lot.id, lot.batch_number]));
  const { steps } = await walkLots(db, [...asked.keys()], 'forward');
  for (const { usedLotId, madeLotId } of steps) {
    const behind = asked.get(usedLotId);
    if (behind !== undefined && !asked.has(madeLotId)) asked.set(madeLotId, behind);
  }
  return asked;
}
