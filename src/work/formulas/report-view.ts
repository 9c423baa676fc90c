import type { z } from 'zod';
import type { formulas } from '../../contract/index.ts';
import { done } from '../../core/problem.ts';
import { isReviewClose } from '../../core/safety/index.ts';
import {
  type FiledReport,
  listFormulas,
  listReportFormulas,
  listReportRanges,
  type Reader,
  listReports as readReports,
} from '../../storage/index.ts';
import { workshopToday } from '../local-date.ts';
import type { UseCase } from '../use-case.ts';
import { listOutweighed } from './list-outweighed.ts';

export type ReportDetails = z.output<typeof formulas.reportDetails>;

export const listReports: UseCase<'listReports'> = async (context) => {
  const today = await workshopToday(context);
  const { db } = context.storage;
  const reports = await readAllReports(db);
  const names = new Map((await listFormulas(db)).map(({ id, name }) => [id, name]));
  return done(
    reports.map((report) => {
      const { row, details } = report;
      return {
        id: row.id,
        version: row.version,
        details,
        file: fileOf(row),
        isPast: details.reviewBy < today,
        isClose: isReviewClose(details.reviewBy, today),
        outweighed: listOutweighed(report, reports, names, today),
      };
    }),
  );
};

const fileOf = (row: FiledReport) =>
  row.file_name === null || row.file_sha256 === null
    ? null
    : { name: row.file_name, bytes: Number(row.file_bytes), sha256: row.file_sha256 };

export interface KnownReport {
  readonly row: FiledReport;
  readonly details: ReportDetails;
  readonly materialNames: ReadonlyMap<string, string>;
}

type KeptDetails = Omit<ReportDetails, 'formulaIds' | 'ranges' | 'productIds'> & {
  readonly productIds?: ReportDetails['productIds'];
};

/** Those that were entered before a report could name products name none. */
const withProducts = (kept: KeptDetails) => ({ ...kept, productIds: kept.productIds ?? [] });

/** Every report with what it covers, in three queries. */
export async function readAllReports(db: Reader): Promise<KnownReport[]> {
  const rows = await readReports(db);
  const formulas = await listReportFormulas(db);
  const ranges = await listReportRanges(
    db,
    rows.map((row) => row.id),
  );
  return rows.map((row) => {
    const own = ranges.filter((range) => range.report_id === row.id);
    return {
      row,
      details: {
        ...withProducts(JSON.parse(row.details) as KeptDetails),
        formulaIds: formulas.filter((pair) => pair.report_id === row.id).map((pair) => pair.formula_id),
        ranges: own.map((range) => ({
          materialId: range.material_id,
          leastPercent: range.least_percent,
          mostPercent: range.most_percent,
        })),
      },
      materialNames: new Map(own.map((range) => [range.material_id, range.material_name])),
    };
  });
}
