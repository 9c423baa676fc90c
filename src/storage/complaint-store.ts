import type { Selectable } from 'kysely';
import type { ComplaintTable, ComplaintWordTable } from './schema.ts';
import type { Reader } from './storage.ts';

export type ComplaintRow = Selectable<ComplaintTable>;
export type ComplaintWordRow = Selectable<ComplaintWordTable>;

export interface SignedComplaint extends ComplaintRow {
  readonly product_name: string;
  /** JSON of the product's details as they are now. */
  readonly product_details: string;
  /** The batch number on the tin, and the lot of its tins; null where no batch is known. */
  readonly run_number: string | null;
  readonly lot_id: string | null;
  readonly happened_at: string;
  readonly person_name: string;
}

const selectComplaints = (db: Reader) =>
  db
    .selectFrom('complaint')
    .innerJoin('product', 'product.id', 'complaint.product_id')
    .innerJoin('entry', 'entry.id', 'complaint.entry_id')
    .leftJoin('person', 'person.id', 'entry.person_id')
    .leftJoin('filling_run', 'filling_run.id', 'complaint.filling_run_id')
    .leftJoin('run_close', 'run_close.filling_run_id', 'complaint.filling_run_id')
    .selectAll('complaint')
    .select(['product.name as product_name', 'product.details as product_details'])
    .select(['filling_run.number as run_number', 'run_close.lot_id'])
    .select(['entry.happened_at', 'person.name as person_name'])
    .orderBy('complaint.received_on', 'desc')
    .orderBy('entry.seq', 'desc');

const signed = <Row extends { person_name: string | null }>(row: Row) => ({
  ...row,
  person_name: row.person_name ?? '',
});

/** Of these products, or of all; the newest first. */
export async function listComplaints(db: Reader, productIds?: readonly string[]): Promise<SignedComplaint[]> {
  const query = selectComplaints(db);
  const rows = await (productIds ? query.where('complaint.product_id', 'in', productIds) : query).execute();
  return rows.map(signed);
}

export async function findComplaint(db: Reader, id: string): Promise<SignedComplaint | undefined> {
  const row = await selectComplaints(db).where('complaint.id', '=', id).executeTakeFirst();
  return row && signed(row);
}

export async function insertComplaint(db: Reader, row: ComplaintRow): Promise<void> {
  await db.insertInto('complaint').values(row).execute();
}

export type SignedComplaintWord = ComplaintWordRow & {
  readonly happened_at: string;
  readonly person_name: string;
};

/** What was said of these complaints since, in the order in which it was written. */
export async function listComplaintWords(
  db: Reader,
  complaintIds: readonly string[],
): Promise<SignedComplaintWord[]> {
  if (complaintIds.length === 0) return [];
  const rows = await db
    .selectFrom('complaint_word')
    .innerJoin('entry', 'entry.id', 'complaint_word.entry_id')
    .leftJoin('person', 'person.id', 'entry.person_id')
    .selectAll('complaint_word')
    .select(['entry.happened_at', 'person.name as person_name'])
    .where('complaint_id', 'in', complaintIds)
    .orderBy('entry.seq')
    .execute();
  return rows.map(signed);
}

export async function insertComplaintWord(db: Reader, row: ComplaintWordRow): Promise<void> {
  await db.insertInto('complaint_word').values(row).execute();
}
