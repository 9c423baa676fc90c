import { type AskedProduct, findCoveringReport, type OpenedRevision } from '../../check/index.ts';
import type { Market } from '../../contract/index.ts';
import type { Reader } from '../../storage/index.ts';
import { type KnownReport, readAllReports } from '../formulas/report-view.ts';

export interface CoveringReport {
  readonly report: KnownReport;
  readonly markets: readonly Market[];
}

export interface ReportsOfProduct {
  /** The reports that belong into the product's file, each with the markets that it is asked for. */
  readonly covering: readonly CoveringReport[];
  /** Markets of the product that no report covers. */
  readonly marketsMissing: readonly Market[];
  /** None covers it, and this one would if it did not name other products. */
  readonly ofOthers: KnownReport | null;
}

/** Market by market the report that check and release ask, so that the file never names another one. */
export async function findReportsOf(
  db: Reader,
  asked: { readonly product: AskedProduct; readonly opened: OpenedRevision; readonly today: string },
  markets: readonly Market[],
): Promise<ReportsOfProduct> {
  const reports = await readAllReports(db);
  const idIn = (market: Market, products: readonly AskedProduct[]): string | undefined =>
    findCoveringReport(reports, { ...asked, products }, market)?.row.id;
  const covering = reports.flatMap((report) => {
    const own = markets.filter((market) => idIn(market, [asked.product]) === report.row.id);
    return own.length === 0 ? [] : [{ report, markets: own }];
  });
  const marketsMissing = markets.filter((market) => idIn(market, [asked.product]) === undefined);
  const [other] = covering.length > 0 ? [] : marketsMissing.flatMap((market) => idIn(market, []) ?? []);
  return {
    covering,
    marketsMissing,
    ofOthers: reports.find(({ row }) => row.id === other) ?? null,
  };
}
