import type { Stamp } from '../../contract/index.ts';
import { problem } from '../../core/problem.ts';
import { findRun, giveUp, type RunHead, type Writer } from '../../storage/index.ts';
import { refuseBefore, thingNotFound } from '../record.ts';

/** A run that is still being filled; what is closed takes no more weights. */
export async function openRun(tx: Writer, id: string, stamp: Stamp): Promise<RunHead> {
  const run = await findRun(tx, id);
  if (!run) giveUp(thingNotFound('id', id));
  if (run.is_closed) {
    giveUp(
      problem('run-not-filling', `filling run ${run.number}`, {
        found: run.verdict ?? 'closed',
        allowed: 'filling',
      }),
    );
  }
  refuseBefore(stamp, run.started_at, `filling run ${run.number}`);
  return run;
}
