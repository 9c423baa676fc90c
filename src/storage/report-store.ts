import type { Selectable } from 'kysely';
import type { AttachmentTable, ReportFormulaTable, ReportRangeTable, ReportTable } from './schema.ts';
import type { Reader } from './storage.ts';

export type ReportRow = Selectable<ReportTable>;
export type ReportRangeRow = Selectable<ReportRangeTable>;
export type AttachmentRow = Selectable<AttachmentTable>;

/** What lies with a report, without its bytes. */
export interface FiledReport extends ReportRow {
  readonly file_name: string | null;
  readonly file_sha256: string | null;
  readonly file_bytes: number | null;
}

export const listReports = (db: Reader): Promise<FiledReport[]> =>
  db
    .selectFrom('report')
    .leftJoin('attachment', 'attachment.id', 'report.attachment_id')
    .selectAll('report')
    .select(['attachment.name as file_name', 'attachment.sha256 as file_sha256'])
    .select((query) => query.fn<number | null>('length', ['attachment.bytes']).as('file_bytes'))
    .orderBy('report.review_by')
    .orderBy('report.reference')
    .execute();

export const findReport = (db: Reader, id: string): Promise<ReportRow | undefined> =>
  db.selectFrom('report').selectAll().where('id', '=', id).executeTakeFirst();

export const listReportFormulas = (db: Reader): Promise<Selectable<ReportFormulaTable>[]> =>
  db.selectFrom('report_formula').selectAll().orderBy('report_id').orderBy('formula_id').execute();

/** Ranges of these reports with the materials' names. */
export const listReportRanges = (
  db: Reader,
  reportIds: readonly string[],
): Promise<(ReportRangeRow & { material_name: string })[]> =>
  db
    .selectFrom('report_range')
    .innerJoin('material', 'material.id', 'report_range.material_id')
    .selectAll('report_range')
    .select('material.name as material_name')
    .where('report_id', 'in', reportIds)
    .orderBy('material.name')
    .execute();

export interface ReportParts {
  readonly formulaIds: readonly string[];
  readonly ranges: readonly Omit<ReportRangeRow, 'report_id'>[];
}

export async function insertReport(db: Reader, row: ReportRow, parts: ReportParts): Promise<void> {
  await db.insertInto('report').values(row).execute();
  await insertParts(db, row.id, parts);
}

/** Changes the row only where it still has the version that the writer saw; says whether it did. */
export async function updateReport(
  db: Reader,
  row: ReportRow,
  parts: ReportParts,
  seenVersion: number,
): Promise<boolean> {
  const { id, attachment_id: _, ...rest } = row;
  const changed = await db
    .updateTable('report')
    .set({ ...rest, version: seenVersion + 1 })
    .where('id', '=', id)
    .where('version', '=', seenVersion)
    .returningAll()
    .executeTakeFirst();
  if (!changed) return false;
  await db.deleteFrom('report_formula').where('report_id', '=', id).returningAll().execute();
  await db.deleteFrom('report_range').where('report_id', '=', id).returningAll().execute();
  await insertParts(db, id, parts);
  return true;
}

async function insertParts(db: Reader, reportId: string, { formulaIds, ranges }: ReportParts): Promise<void> {
  if (formulaIds.length > 0)
    await db
      .insertInto('report_formula')
      .values(formulaIds.map((formulaId) => ({ report_id: reportId, formula_id: formulaId })))
      .execute();
  if (ranges.length > 0)
    await db
      .insertInto('report_range')
      .values(ranges.map((range) => ({ ...range, report_id: reportId })))
      .execute();
}

/** An earlier file stays in the table of attachments, which keeps all of them. */
export async function attachToReport(db: Reader, reportId: string, attachment: AttachmentRow): Promise<void> {
  await db.insertInto('attachment').values(attachment).execute();
  await db
    .updateTable('report')
    .set({ attachment_id: attachment.id })
    .where('id', '=', reportId)
    .returningAll()
    .execute();
}

export const findAttachment = (db: Reader, id: string): Promise<AttachmentRow | undefined> =>
  db.selectFrom('attachment').selectAll().where('id', '=', id).executeTakeFirst();
