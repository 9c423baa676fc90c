import type { z } from 'zod';
import type { formulas, Market } from '../../contract/index.ts';
import { done, problem, type Result, refused } from '../../core/problem.ts';
import type { ReportVerdict } from '../../core/safety/index.ts';
import { findRevision } from '../../storage/index.ts';
import { thingNotFound } from '../record.ts';
import type { UseCase } from '../use-case.ts';
import { judgeSale } from './judge-sale.ts';
import { listQuestions } from './list-questions.ts';
import { ALL_MARKETS, marketsToJudge, readSoldIn, type SoldIn } from './read-sold-in.ts';
import { type Checked, type CheckedGroup, runCheck } from './run-check.ts';
import { answerMarkets, sayAnswer } from './say-check.ts';
import { questionsByUnknown, text, textOrNull, viewMarket } from './view-market.ts';

type RevisionCheck = z.output<typeof formulas.revisionCheck>;

export const checkRevision: UseCase<'checkRevision'> = async (context, { params: { id = '' }, query }) => {
  const { db } = context.storage;
  const revision = await findRevision(db, id);
  if (!revision) return refused(thingNotFound('id', id));
  const sold = await readSoldIn(db, revision.formula_id);
  const markets = query.markets === undefined ? done(marketsToJudge(sold)) : readMarkets(query.markets);
  if (!markets.ok) return markets;
  const checked = await runCheck(context, id, markets.value);
  return checked.ok ? done(viewCheck(checked.value, sold)) : checked;
};

function readMarkets(text: string): Result<Market[]> {
  const markets = [...new Set(text.split(',').map((market) => market.trim()))];
  const known: readonly string[] = ALL_MARKETS;
  const unknown = markets.find((market) => !known.includes(market));
  return unknown === undefined
    ? done(markets as Market[])
    : refused(problem('value-not-one-of', 'markets', { found: unknown, allowed: ALL_MARKETS.join(', ') }));
}

function viewCheck(checked: Checked, sold: SoldIn): RevisionCheck {
  const { answer, reasons } = judgeSale(checked);
  const answers = answerMarkets(checked);
  const open = listQuestions(checked);
  const questions = questionsByUnknown(open);
  const rows = checked.groups.flatMap(({ answer }) =>
    answer.markets.map((market) => viewMarket(market, answer.supplier, questions)),
  );
  return {
    revisionId: checked.opened.revision.id,
    answer,
    sentence: sayAnswer(checked, answers),
    sold: { products: [...sold.products], markets: [...sold.markets] },
    reasons: reasons.map((reason) => reason.says),
    markets: answers.flatMap((told) =>
      rows.filter((row) => row.market === told.market).map((row) => ({ ...row, ...told })),
    ),
    report: viewReport(checked),
    open,
  };
}

/** Where several reports cover several markets, the one that stops most is shown. */
function viewReport({ groups, today }: Checked): RevisionCheck['report'] {
  const [shown] = groups
    .filter((group) => group.report !== undefined)
    .sort((one, other) => countBroken(other) - countBroken(one));
  const report = shown?.report;
  if (!report) return null;
  return {
    reference: report.details.reference,
    reviewBy: report.details.reviewBy,
    isPast: report.details.reviewBy < today,
    rows: (shown.answer.report?.materials ?? []).map(viewRow),
  };
}

const countBroken = ({ answer }: CheckedGroup): number =>
  (answer.report?.materials ?? []).filter((row) => row.verdict !== 'within').length;

const viewRow = (row: ReportVerdict): NonNullable<RevisionCheck['report']>['rows'][number] => ({
  material: row.name,
  percent: text(row.percent),
  leastPercent: textOrNull(row.leastPercent),
  mostPercent: textOrNull(row.mostPercent),
  verdict: row.verdict === 'below' ? 'under' : row.verdict,
});
