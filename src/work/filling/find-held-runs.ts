import { listRunsAtHand } from '../../storage/index.ts';
import type { Context } from '../context.ts';
import { checkRelease } from './release-checks.ts';
import { gatherRuns } from './run-records.ts';
import type { Check } from './run-shapes.ts';

/** By run: what is not passed of those that are filled and that nobody has decided yet. */
export type HeldRuns = ReadonlyMap<string, readonly Check[]>;

/** Whoever counts on such tins has to know that they are held. Few wait at once, so each is looked at in full. */
export async function findHeldRuns(context: Context): Promise<HeldRuns> {
  const { db } = context.storage;
  const waiting = (await listRunsAtHand(db, 0)).filter((run) => run.is_closed && run.verdict === null);
  const held = new Map<string, readonly Check[]>();
  for (const records of waiting.length === 0 ? [] : await gatherRuns(db, waiting)) {
    const failing = (await checkRelease(context, records)).filter((each) => !each.isPassed);
    if (failing.length > 0) held.set(records.head.id, failing);
  }
  return held;
}
