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

export async function insertAttachment(db: Reader, row: AttachmentRow): Promise<void> {
  await db.insertInto('attachment').values(row).execute();
}

export async function insertAttachmentLink(db: Reader, row: AttachmentLinkRow): Promise<void> {
  await db.insertInto('attachment_link').values(row).execute();
}
