import { type Checked, judgeFormula, type SignedDecision } from '../../check/index.ts';
import type { Market } from '../../contract/index.ts';
import { done, type Result } from '../../core/problem.ts';
import { listDecisions } from '../../storage/index.ts';
import type { Context } from '../context.ts';
import { workshopToday } from '../local-date.ts';
import { type LotLookup, openRevision } from './open-revision.ts';
import { readAllReports } from './report-view.ts';

/**
 * A revision against law, IFRA and the assessor's report, for these markets, as if its first unit were supplied today.
 * `weighed`: what really went into a batch, instead of the formula; `decisions`: those that count, where not all do.
 */
export async function runCheck(
  context: Context,
  revisionId: string,
  markets: readonly Market[],
  weighed?: LotLookup,
  decisions?: readonly SignedDecision[],
): Promise<Result<Checked>> {
  const { db } = context.storage;
  const opened = await openRevision(db, revisionId, weighed);
  if (!opened.ok) return opened;
  return done(
    judgeFormula({
      opened: opened.value,
      markets,
      today: await workshopToday(context),
      reports: await readAllReports(db),
      decisions: decisions ?? (await listDecisions(db, revisionId)),
      isWeighed: weighed !== undefined,
    }),
  );
}
