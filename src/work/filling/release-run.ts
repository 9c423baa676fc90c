import { type Problem, problem } from '../../core/problem.ts';
import {
  findRun,
  giveUp,
  insertLotStatus,
  insertRelease,
  type RunHead,
  type Writer,
} from '../../storage/index.ts';
import { inside } from '../inside.ts';
import { workshopZone } from '../local-date.ts';
import { record, refuseBefore, thingNotFound } from '../record.ts';
import { refuseOpenClaims } from '../refuse-open-claims.ts';
import type { UseCase } from '../use-case.ts';
import { checkRelease, failedChecks } from './release-checks.ts';
import { gatherRuns } from './run-records.ts';
import { viewRun } from './run-view.ts';

/** A named person's decision, once for each run; released only where every check is passed. */
export const releaseRun: UseCase<'releaseRun'> = (context, { body, params }) =>
  record(
    context,
    body.stamp,
    async (tx, tell) => {
      const { stamp, verdict, reason } = body;
      const run = await undecidedRun(tx, params.id ?? '');
      const [records] = await gatherRuns(tx, [run]);
      if (!records?.close) throw new Error(`filling run ${run.number} has no closing`);
      refuseBefore(stamp, records.close.happened_at, `filling run ${run.number}`);
      await refuseOpenClaims(tx, 'batch', run.batch_id, `batch ${run.batch_number}`);
      await refuseOpenClaims(tx, 'filling-run', run.id, `filling run ${run.number}`);
      const checks = await checkRelease(inside(context, tx), records);
      const refusals =
        verdict === 'released'
          ? failedChecks(checks, await workshopZone(inside(context, tx)))
          : unexplained(reason);
      if (refusals.length > 0) giveUp(...refusals);
      const lotId = records.close.lot_id;
      await tell({
        kind: `run-${verdict}`,
        subjectKind: 'filling-run',
        subjectId: run.id,
        payload: { number: run.number, verdict, reason, checks, lotId },
      });
      await insertRelease(tx, {
        entry_id: stamp.id,
        filling_run_id: run.id,
        verdict,
        reason,
        checks: JSON.stringify(checks),
      });
      if (lotId !== null)
        await insertLotStatus(tx, { entry_id: stamp.id, lot_id: lotId, status: verdict, reason });
      return run.id;
    },
    (id) => viewRun(context, id),
  );

async function undecidedRun(tx: Writer, id: string): Promise<RunHead> {
  const run = await findRun(tx, id);
  if (!run) giveUp(thingNotFound('id', id));
  const where = `filling run ${run.number}`;
  if (run.verdict !== null) giveUp(problem('run-decided-already', where, { found: run.verdict }));
  if (!run.is_closed) giveUp(problem('run-still-filling', where));
  return run;
}

const unexplained = (reason: string): Problem[] =>
  reason === '' ? [problem('reject-reason-missing', 'reason')] : [];
