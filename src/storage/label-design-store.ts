import type { Selectable } from 'kysely';
import type { LabelCountTable, LabelDesignTable, LabelPrintTable, LabelSheetTable } from './schema.ts';
import type { Reader } from './storage.ts';

export type LabelDesignRow = Selectable<LabelDesignTable>;
export type LabelSheetRow = Selectable<LabelSheetTable>;
export type LabelCountRow = Selectable<LabelCountTable>;

export const listLabelDesigns = (db: Reader): Promise<LabelDesignRow[]> =>
  db.selectFrom('label_design').selectAll().orderBy('product_id').execute();

export const listLabelSheets = (db: Reader): Promise<LabelSheetRow[]> =>
  db.selectFrom('label_sheet').selectAll().orderBy('name').orderBy('id').execute();

export const findLabelSheet = (db: Reader, id: string): Promise<LabelSheetRow | undefined> =>
  db.selectFrom('label_sheet').selectAll().where('id', '=', id).executeTakeFirst();

export async function insertLabelSheet(db: Reader, row: LabelSheetRow): Promise<void> {
  await db.insertInto('label_sheet').values(row).execute();
}

/** Changes the row only where it still has the version that the writer saw; says whether it did. */
export async function updateLabelSheet(
  db: Reader,
  { id, name, details }: LabelSheetRow,
  seenVersion: number,
): Promise<boolean> {
  const changed = await db
    .updateTable('label_sheet')
    .set({ name, details, version: seenVersion + 1 })
    .where('id', '=', id)
    .where('version', '=', seenVersion)
    .returningAll()
    .executeTakeFirst();
  return changed !== undefined;
}

export async function insertLabelCount(db: Reader, row: LabelCountRow): Promise<void> {
  await db.insertInto('label_count').values(row).execute();
}

export type SignedLabelCount = LabelCountRow & { readonly happened_at: string; readonly person_name: string };

/** Every count of this run, in the order of counting: of each kind the last one stands. */
export async function listLabelCounts(db: Reader, runId: string): Promise<SignedLabelCount[]> {
  const rows = await db
    .selectFrom('label_count')
    .innerJoin('entry', 'entry.id', 'label_count.entry_id')
    .leftJoin('person', 'person.id', 'entry.person_id')
    .selectAll('label_count')
    .select(['entry.happened_at', 'person.name as person_name'])
    .where('label_count.filling_run_id', '=', runId)
    .orderBy('entry.seq')
    .execute();
  return rows.map((row) => ({ ...row, person_name: row.person_name ?? '' }));
}

export type SignedLabelPrint = Selectable<LabelPrintTable> & {
  readonly happened_at: string;
  readonly person_name: string;
};

/** Every print of this run, the newest first. */
export async function listLabelPrints(db: Reader, runId: string): Promise<SignedLabelPrint[]> {
  const rows = await db
    .selectFrom('label_print')
    .innerJoin('entry', 'entry.id', 'label_print.entry_id')
    .leftJoin('person', 'person.id', 'entry.person_id')
    .selectAll('label_print')
    .select(['entry.happened_at', 'person.name as person_name'])
    .where('label_print.filling_run_id', '=', runId)
    .orderBy('entry.seq', 'desc')
    .execute();
  return rows.map((row) => ({ ...row, person_name: row.person_name ?? '' }));
}

/** What was last printed on sheets of this kind: its id stands in the design of the print. */
export const findLastPrintOn = (
  db: Reader,
  sheetId: string,
): Promise<Pick<Selectable<LabelPrintTable>, 'copies' | 'design'> | undefined> =>
  db
    .selectFrom('label_print')
    .innerJoin('entry', 'entry.id', 'label_print.entry_id')
    .select(['label_print.copies', 'label_print.design'])
    .where('label_print.design', 'like', `%"sheet":{"id":"${sheetId}"%`)
    .orderBy('entry.seq', 'desc')
    .limit(1)
    .executeTakeFirst();
