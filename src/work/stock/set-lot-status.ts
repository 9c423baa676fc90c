import { type Problem, problem } from '../../core/problem.ts';
import { giveUp, insertLotStatus, type LotAtHand, listReleases, type Writer } from '../../storage/index.ts';
import type { Context } from '../context.ts';
import { checkRelease, failedChecks } from '../filling/release-checks.ts';
import { gatherRun } from '../filling/run-records.ts';
import { inside } from '../inside.ts';
import { workshopZone } from '../local-date.ts';
import { record, viewId } from '../record.ts';
import type { RequestOf, UseCase } from '../use-case.ts';
import { lotToChange } from './lot-on-bench.ts';

type Status = RequestOf<'setLotStatus'>['body']['status'];

/** What was rejected is not used again before somebody has looked at it anew, in quarantine. */
const MAY_BECOME: Readonly<Record<Status, readonly Status[]>> = {
  quarantine: ['released', 'rejected', 'blocked'],
  released: ['quarantine', 'blocked', 'rejected'],
  blocked: ['released', 'quarantine', 'rejected'],
  rejected: ['quarantine'],
};

export const setLotStatus: UseCase<'setLotStatus'> = (context, { body, params }) =>
  record(
    context,
    body.stamp,
    async (tx, tell) => {
      const lot = await lotToChange(tx, params.id ?? '');
      const refusal =
        judgeChange(lot, body.status, body.reason) ?? (await judgeRelease(tx, lot, body.status));
      if (refusal) giveUp(refusal);
      if (body.status === 'released') await refuseUnfitTins(inside(context, tx), lot);
      await tell({
        kind: `lot-${body.status}`,
        subjectKind: 'lot',
        subjectId: lot.id,
        payload: { before: lot.status, after: body.status, reason: body.reason },
      });
      await insertLotStatus(tx, {
        entry_id: body.stamp.id,
        lot_id: lot.id,
        status: body.status,
        reason: body.reason,
      });
      return lot.id;
    },
    viewId,
  );

function judgeChange(lot: LotAtHand, status: Status, reason: string): Problem | undefined {
  const allowed = MAY_BECOME[lot.status as Status];
  if (!allowed.includes(status))
    return problem('status-not-from-there', `lot ${lot.number}`, {
      found: status,
      allowed: allowed.join(', '),
      parameters: { now: lot.status },
    });
  const isPlainRelease = lot.status === 'quarantine' && status === 'released';
  return reason === '' && !isPlainRelease
    ? problem('status-reason-missing', 'reason', { found: status, parameters: { lot: lot.number } })
    : undefined;
}

/** A base is released by the word that it is firm, tins by the release of their filling run: neither is passed by here. */
async function judgeRelease(tx: Writer, lot: LotAtHand, status: Status): Promise<Problem | undefined> {
  if (status !== 'released') return undefined;
  const parameters = { item: lot.item_name };
  if (lot.formula_kind === 'base' && lot.firm_from !== null && lot.firm_said_at === null)
    return problem('lot-wants-firm-word', `lot ${lot.number}`, { found: lot.firm_from, parameters });
  if (lot.item_kind !== 'product') return undefined;
  const releases = await listReleases(tx, [lot.filling_run_id ?? '']);
  return releases.some((release) => release.verdict === 'released')
    ? undefined
    : problem('lot-wants-run-release', `lot ${lot.number}`, { parameters });
}

/** Tins that were stopped come back by the same checks that let them go first, as of today. */
async function refuseUnfitTins(within: Context, lot: LotAtHand): Promise<void> {
  if (lot.item_kind !== 'product' || lot.filling_run_id === null) return;
  const records = await gatherRun(within.storage.db, lot.filling_run_id);
  if (!records) throw new Error(`lot ${lot.number} names a filling run that is not there`);
  const problems = failedChecks(await checkRelease(within, records), await workshopZone(within));
  if (problems.length > 0) giveUp(...problems);
}
