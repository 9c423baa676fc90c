import {
  type AskedProduct,
  type Checked,
  type FormulaQuestion,
  isOfLot,
  judgeFormula,
  type SignedDecision,
  withLotDecisions,
} from '../../check/index.ts';
import type { Market } from '../../contract/index.ts';
import { done, type Result } from '../../core/problem.ts';
import { listDecisions } from '../../storage/index.ts';
import type { Context } from '../context.ts';
import { workshopToday } from '../local-date.ts';
import { type LotLookup, openRevision } from './open-revision.ts';
import { readAllReports } from './report-view.ts';

export interface CheckOptions {
  /** What really went into a batch, instead of the formula. */
  readonly weighed?: LotLookup;
  /** Those that count, where not all do. */
  readonly decisions?: readonly SignedDecision[];
  /** Products that it is judged for, where they are known. */
  readonly products?: readonly AskedProduct[];
}

/**
 * A revision against law, IFRA and the assessor's report, for these markets, as if its first unit were supplied today.
 */
export async function runCheck(
  context: Context,
  revisionId: string,
  markets: readonly Market[],
  options: CheckOptions = {},
): Promise<Result<Checked>> {
  const { weighed } = options;
  const question = await readQuestion(context, revisionId, markets, options);
  if (!question.ok) return question;
  if (weighed === undefined) return done(judgeFormula(question.value));
  const counting = await decisionsWithLots(context, revisionId, question.value, weighed);
  return done(judgeFormula({ ...question.value, decisions: counting, isWeighed: true }));
}

/** Nearly always no lot raised anything that was decided: then the formula is not opened a second time. */
async function decisionsWithLots(
  context: Context,
  revisionId: string,
  question: FormulaQuestion,
  { certified = new Map() }: LotLookup,
): Promise<readonly SignedDecision[]> {
  const { decisions, markets } = question;
  if (certified.size === 0 || !decisions.some(({ unknown_key }) => isOfLot(unknown_key))) return decisions;
  const written = await readQuestion(context, revisionId, markets, { decisions });
  return written.ok ? withLotDecisions(written.value, [...certified.values()]) : decisions;
}

/** What the check of a revision is asked: as it is written, or as it was weighed. */
export async function readQuestion(
  context: Context,
  revisionId: string,
  markets: readonly Market[],
  { weighed, decisions, products = [] }: CheckOptions = {},
): Promise<Result<FormulaQuestion>> {
  const { db } = context.storage;
  const opened = await openRevision(db, revisionId, weighed);
  if (!opened.ok) return opened;
  return done({
    opened: opened.value,
    markets,
    today: await workshopToday(context),
    reports: await readAllReports(db),
    decisions: decisions ?? (await listDecisions(db, revisionId)),
    products,
  });
}
