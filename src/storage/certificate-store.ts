import type { Selectable } from 'kysely';
import type { AttachmentRow } from './report-store.ts';
import type { LotCertificateTable } from './schema.ts';
import type { Reader } from './storage.ts';

export type LotCertificateRow = Selectable<LotCertificateTable>;

/** With who entered it when, and what lies with it, without its bytes. */
export interface SignedCertificate extends LotCertificateRow {
  readonly happened_at: string;
  readonly person_name: string;
  readonly file_name: string | null;
  readonly file_bytes: number | null;
}

export async function insertCertificate(
  db: Reader,
  row: LotCertificateRow,
  attachment: AttachmentRow | null,
): Promise<void> {
  if (attachment) await db.insertInto('attachment').values(attachment).execute();
  await db.insertInto('lot_certificate').values(row).execute();
}

/** All that was ever entered of one lot, the newest first. */
export const listCertificatesOfLot = (db: Reader, lotId: string): Promise<SignedCertificate[]> =>
  db
    .selectFrom('lot_certificate')
    .innerJoin('entry', 'entry.id', 'lot_certificate.entry_id')
    .innerJoin('person', 'person.id', 'entry.person_id')
    .leftJoin('attachment', 'attachment.id', 'lot_certificate.attachment_id')
    .selectAll('lot_certificate')
    .select(['entry.happened_at', 'person.name as person_name', 'attachment.name as file_name'])
    .select((query) => query.fn<number | null>('length', ['attachment.bytes']).as('file_bytes'))
    .where('lot_certificate.lot_id', '=', lotId)
    .orderBy('entry.seq', 'desc')
    .execute();

export const findCertificate = (db: Reader, id: string): Promise<LotCertificateRow | undefined> =>
  db.selectFrom('lot_certificate').selectAll().where('entry_id', '=', id).executeTakeFirst();

/** A certificate with the number of its lot. */
export interface CertificateOfLot extends LotCertificateRow {
  readonly lot_number: string;
  readonly item_id: string;
  /** When it was entered. */
  readonly happened_at: string;
}

/** All that was ever entered of these lots, the earliest first; of every lot where none are named. */
export async function listCertificates(db: Reader, lotIds?: readonly string[]): Promise<CertificateOfLot[]> {
  if (lotIds?.length === 0) return [];
  const all = db
    .selectFrom('lot_certificate')
    .innerJoin('entry', 'entry.id', 'lot_certificate.entry_id')
    .innerJoin('lot', 'lot.id', 'lot_certificate.lot_id')
    .selectAll('lot_certificate')
    .select(['lot.number as lot_number', 'lot.item_id', 'entry.happened_at'])
    .orderBy('entry.seq');
  return (lotIds ? all.where('lot_certificate.lot_id', 'in', lotIds) : all).execute();
}
