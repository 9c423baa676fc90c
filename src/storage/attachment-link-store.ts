import type { Selectable } from 'kysely';
import type { AttachmentRow } from './report-store.ts';
import type { AttachmentLinkTable } from './schema.ts';
import type { Reader } from './storage.ts';

export type AttachmentLinkRow = Selectable<AttachmentLinkTable>;

export interface LinkedAttachment {
  readonly id: string;
  readonly entry_id: string;
  readonly heading: string;
  readonly name: string;
  readonly sha256: string;
  readonly size: number;
  /** The first bytes: they tell what it is. */
  readonly head: Uint8Array;
  readonly happened_at: string;
  readonly person_name: string;
}

/** What lies with it, by heading: of each file under each heading the last word counts. */
export async function listLinkedAttachments(
  db: Reader,
  subjectKind: string,
  subjectId: string,
): Promise<LinkedAttachment[]> {
  const rows = await db
    .selectFrom('attachment_link')
    .innerJoin('entry', 'entry.id', 'attachment_link.entry_id')
    .innerJoin('attachment', 'attachment.id', 'attachment_link.attachment_id')
    .leftJoin('person', 'person.id', 'entry.person_id')
    .select(['attachment.id', 'attachment.name', 'attachment.sha256'])
    .select((query) => query.fn<number>('length', ['attachment.bytes']).as('size'))
    .select((query) =>
      query.fn<Uint8Array>('substr', ['attachment.bytes', query.lit(1), query.lit(8)]).as('head'),
    )
    .select(['attachment_link.entry_id', 'attachment_link.heading', 'attachment_link.is_taken_out'])
    .select(['entry.happened_at', 'person.name as person_name'])
    .where('attachment_link.subject_kind', '=', subjectKind)
    .where('attachment_link.subject_id', '=', subjectId)
    .orderBy('entry.seq')
    .execute();
  const last = new Map(rows.map((row) => [`${row.heading} ${row.id}`, row]));
  return [...last.values()]
    .filter((row) => row.is_taken_out === 0)
    .map(({ is_taken_out: _, ...row }) => ({
      ...row,
      size: Number(row.size),
      person_name: row.person_name ?? '',
    }));
}

/** Its bytes go, and with them whoever is to be seen; name and hash stay. */
export async function emptyAttachment(db: Reader, id: string): Promise<void> {
  await db
    .updateTable('attachment')
    .set({ bytes: new Uint8Array() })
    .where('id', '=', id)
    .returningAll()
    .execute();
}

export interface StruckPhoto {
  readonly entry_id: string;
  readonly heading: string;
  readonly name: string;
  readonly reason: string;
  readonly struck_at: string;
  readonly struck_by: string;
  readonly happened_at: string;
  readonly person_name: string;
}

/** Photographs of a batch's steps that were struck: who took them, who took them out and why. */
export async function listStruckPhotos(db: Reader, batchId: string): Promise<StruckPhoto[]> {
  const rows = await db
    .selectFrom('attachment_link')
    .innerJoin('strike', 'strike.struck_entry_id', 'attachment_link.entry_id')
    .innerJoin('entry as struck', 'struck.id', 'strike.entry_id')
    .innerJoin('entry', 'entry.id', 'attachment_link.entry_id')
    .innerJoin('attachment', 'attachment.id', 'attachment_link.attachment_id')
    .leftJoin('person', 'person.id', 'entry.person_id')
    .leftJoin('person as striker', 'striker.id', 'struck.person_id')
    .select(['attachment_link.entry_id', 'attachment_link.heading', 'attachment.name', 'strike.reason'])
    .select(['struck.happened_at as struck_at', 'striker.name as struck_by'])
    .select(['entry.happened_at', 'person.name as person_name'])
    .where('attachment_link.subject_kind', '=', 'step')
    .where('attachment_link.subject_id', '=', batchId)
    .orderBy('struck.seq')
    .execute();
  return rows.map((row) => ({
    ...row,
    struck_by: row.struck_by ?? '',
    person_name: row.person_name ?? '',
  }));
}

export async function insertAttachment(db: Reader, row: AttachmentRow): Promise<void> {
  await db.insertInto('attachment').values(row).execute();
}

export async function insertAttachmentLink(db: Reader, row: AttachmentLinkRow): Promise<void> {
  await db.insertInto('attachment_link').values(row).execute();
}
