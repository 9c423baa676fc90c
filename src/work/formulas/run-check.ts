import { type Checked, judgeFormula } from '../../check/index.ts';
import type { Market } from '../../contract/index.ts';
import type { FormulaLookup } from '../../core/formula/index.ts';
import { done, type Result } from '../../core/problem.ts';
import { listDecisions } from '../../storage/index.ts';
import type { Context } from '../context.ts';
import { workshopToday } from '../local-date.ts';
import { openRevision } from './open-revision.ts';
import { readAllReports } from './report-view.ts';

/**
 * A revision against law, IFRA and the assessor's report, for these markets, as if its first unit were supplied today.
 * `weighed`: what really went into a batch, instead of the formula.
 */
export async function runCheck(
  context: Context,
  revisionId: string,
  markets: readonly Market[],
  weighed?: FormulaLookup,
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
      decisions: await listDecisions(db, revisionId),
      isWeighed: weighed !== undefined,
    }),
  );
}
