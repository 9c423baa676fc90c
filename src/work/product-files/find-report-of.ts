import { type OpenedRevision, usesOf } from '../../check/index.ts';
import type { Market } from '../../contract/index.ts';
import type { Reader } from '../../storage/index.ts';
import { type KnownReport, readAllReports } from '../formulas/report-view.ts';

export interface ReportOfProduct {
  readonly report: KnownReport;
  /** It names products, and this one is not among them. */
  readonly isOfOthers: boolean;
  /** Markets of the product that it does not cover. */
  readonly marketsMissing: readonly Market[];
}

/**
 * The report that belongs into a product's file: of those that cover its formula and use, one that names the product
 * goes before one that names none, and the newest before older ones.
 */
export async function findReportOf(
  db: Reader,
  productId: string,
  { formula, details }: OpenedRevision,
  markets: readonly Market[],
): Promise<ReportOfProduct | null> {
  const covering = (await readAllReports(db)).filter(
    ({ details: report }) =>
      usesOf(details).every(({ use }) => report.uses.includes(use)) &&
      (formula.kind === 'base'
        ? report.baseFormulaId === formula.id
        : report.formulaIds.includes(formula.id)),
  );
  const rank = ({ details: { productIds = [] } }: KnownReport): number => {
    if (productIds.includes(productId)) return 0;
    return productIds.length === 0 ? 1 : 2;
  };
  const [report] = covering.sort(
    (one, other) => rank(one) - rank(other) || other.details.signedOn.localeCompare(one.details.signedOn),
  );
  if (!report) return null;
  return {
    report,
    isOfOthers: rank(report) === 2,
    marketsMissing: markets.filter((market) => !report.details.markets.includes(market)),
  };
}
