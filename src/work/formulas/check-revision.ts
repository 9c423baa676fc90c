import type { z } from 'zod';
import type { formulas, Market, Saying } from '../../contract/index.ts';
import { done, problem, type Result, refused } from '../../core/problem.ts';
import { exact, toText } from '../../core/quantity/index.ts';
import type { CheckedVerdict, MarketCheck, ReportVerdict, SupplierVerdict } from '../../core/safety/index.ts';
import { say } from '../../words/index.ts';
import { saying } from '../saying.ts';
import type { UseCase } from '../use-case.ts';
import { answerOf, type SaleAnswer } from './answer-check.ts';
import { listQuestions } from './list-questions.ts';
import { listReasons } from './list-reasons.ts';
import { whyUnknown } from './list-unknowns.ts';
import { type Checked, type CheckedGroup, runCheck } from './run-check.ts';

type RevisionCheck = z.output<typeof formulas.revisionCheck>;

export const checkRevision: UseCase<'checkRevision'> = async (context, { params: { id = '' }, query }) => {
  const markets = readMarkets(query.markets);
  if (!markets.ok) return markets;
  const checked = await runCheck(context, id, markets.value);
  return checked.ok ? done(viewCheck(checked.value)) : checked;
};

const MARKETS: readonly string[] = ['GB', 'NI', 'EU'] satisfies Market[];

function readMarkets(text: string): Result<Market[]> {
  const markets = [...new Set(text.split(',').map((market) => market.trim()))];
  const unknown = markets.find((market) => !MARKETS.includes(market));
  return unknown === undefined
    ? done(markets as Market[])
    : refused(problem('value-not-one-of', 'markets', { found: unknown, allowed: MARKETS.join(', ') }));
}

function viewCheck(checked: Checked): RevisionCheck {
  const reasons = listReasons(checked);
  const answer = answerOf(reasons);
  return {
    revisionId: checked.opened.revision.id,
    answer,
    sentence: sentenceOf(checked, answer, reasons.filter((reason) => reason.blocks !== 'no').length),
    reasons: reasons.map((reason) => reason.says),
    markets: checked.groups.flatMap(({ answer }) =>
      answer.markets.map((market) => viewMarket(market, answer.supplier)),
    ),
    report: viewReport(checked),
    open: listQuestions(checked),
  };
}

const SENTENCES: Readonly<Record<SaleAnswer, string>> = {
  yes: 'check-yes',
  no: 'check-no',
  decide: 'check-decide',
};

const sentenceOf = ({ opened, groups }: Checked, answer: SaleAnswer, n: number): Saying =>
  saying(SENTENCES[answer], {
    formula: opened.formula.name,
    number: opened.revision.number,
    markets: groups.flatMap((group) => group.markets).join(', '),
    n,
  });

const text = (value: number): string => toText(exact(value));
const textOrNull = (value: number | undefined): string | null => (value === undefined ? null : text(value));

const viewMarket = (
  { market, verdicts, sumOfShares, naming }: MarketCheck,
  supplier: readonly SupplierVerdict[],
): RevisionCheck['markets'][number] => ({
  // The United States are no market of a revision: the question was asked for these three only.
  market: market as Market,
  verdicts: [...verdicts.map(viewVerdict), ...supplier.map(viewSupplierVerdict)],
  sumOfShares: sumOfShares ?? null,
  named: naming.named.map((row) => ({
    labelName: row.labelName,
    percent: text(row.percent),
    thresholdPercent: text(row.thresholdPercent),
    entry: String(row.entry),
    members: [...row.members],
  })),
});

const viewVerdict = (row: CheckedVerdict): RevisionCheck['markets'][number]['verdicts'][number] => ({
  name: row.name,
  verdict: row.verdict,
  typicalPercent: text(row.typicalPercent ?? row.percent),
  mostPercent: text(row.percent),
  limitPercent: textOrNull(row.limitPercent),
  kind: row.kind ?? null,
  entry: row.entry ?? null,
  edition: row.edition ?? null,
  source: row.source ?? null,
  confidence: weakest(row.confidence, row.amountConfidence),
  fromMaterials: [...(row.fromMaterials ?? [])],
  reason: row.verdict === 'unknown' ? say(whyUnknown(row)) : null,
});

/** What a supplier allows does not differ by market, and stands with each market's limits all the same. */
const viewSupplierVerdict = (row: SupplierVerdict): RevisionCheck['markets'][number]['verdicts'][number] => ({
  name: row.name,
  verdict: row.verdict,
  typicalPercent: text(row.percent),
  mostPercent: text(row.percent),
  limitPercent: text(row.limitPercent),
  kind: 'supplier',
  entry: null,
  edition: null,
  source: row.source,
  confidence: 'supplier',
  fromMaterials: [row.name],
  reason: null,
});

/** Strongest first (as contract/fields ranks them). A verdict is as strong as the weaker of rule and amount. */
const CONFIDENCES = ['report', 'supplier', 'read', 'read-secondary', 'computed', 'derived', 'memory'];

function weakest(...words: readonly (string | undefined)[]): string | null {
  const ranks = words.filter((word) => word !== undefined).map((word) => CONFIDENCES.indexOf(word));
  return ranks.length === 0 ? null : (CONFIDENCES[Math.max(...ranks)] ?? null);
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
