import type { z } from 'zod';
import type { formulas, Market, orders } from '../contract/index.ts';
import type { ReportVerdict } from '../core/safety/index.ts';
import { answerOpenedOrigins } from './answer-opened-origins.ts';
import type { AskedProduct, Checked, CheckedGroup } from './checked.ts';
import { judgeSale } from './judge-sale.ts';
import { listQuestions } from './list-questions.ts';
import { noteMarket } from './note-market.ts';
import { answerEverywhere, answerMarkets, sayAnswer } from './say-check.ts';
import { tellWater } from './tell-water.ts';
import { questionsByUnknown, text, textOrNull, viewMarket } from './view-market.ts';
import { viewMemory } from './view-memory.ts';

export type RevisionCheck = z.output<typeof formulas.revisionCheck>;

/** Where a formula ends up on sale. */
export interface SoldIn {
  /** Products that are filled from the formula, or from one that it goes into. */
  readonly products: readonly AskedProduct[];
  /** Every market that one of them is sold in; none where there is no product. */
  readonly markets: readonly Market[];
  /** How their labels list what scents them; none where there is no product. */
  readonly scentOnLabel: readonly ScentOnLabel[];
}

export type ScentOnLabel = orders.ProductDetails['scentOnLabel'];

/** The check as a page shows it; `everywhere`: the same for every market that the tables know. */
export function viewCheck(checked: Checked, everywhere: Checked, sold: SoldIn): RevisionCheck {
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
    sold: { products: sold.products.map(({ name }) => name), markets: [...sold.markets] },
    everywhere: answerEverywhere(everywhere),
    reasons: reasons.map((reason) => reason.says),
    memory: viewMemory(checked, open),
    shelf: [],
    markets: answers.flatMap((told) =>
      rows
        .filter((row) => row.market === told.market)
        .map((row) => ({ ...row, ...told, notes: noteMarket(told.market, checked) })),
    ),
    report: viewReport(checked),
    open,
    lotQuestions: [],
    water: viewWater(checked),
    origins: answerOpenedOrigins(checked.opened),
  };
}

function viewWater({ opened }: Checked): RevisionCheck['water'] {
  const { says, cautions } = tellWater(opened);
  return { says: [...says], cautions: [...cautions] };
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
