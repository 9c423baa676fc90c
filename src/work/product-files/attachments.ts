import { Buffer } from 'node:buffer';
import { done, problem, refused } from '../../core/problem.ts';
import {
  findAttachment,
  findProduct,
  giveUp,
  insertAttachment,
  insertAttachmentLink,
  listLinkedAttachments,
  sha256,
} from '../../storage/index.ts';
import { judgeAttached, kindOfFile } from '../attached-file.ts';
import { record, thingNotFound, viewId } from '../record.ts';
import type { UseCase } from '../use-case.ts';

export const fileUnderHeading: UseCase<'fileUnderHeading'> = (context, { params: { id = '' }, body }) =>
  record(
    context,
    body.stamp,
    async (tx, tell) => {
      if (!(await findProduct(tx, id))) giveUp(thingNotFound('id', id));
      const bytes = Buffer.from(body.base64, 'base64');
      const refusal = judgeAttached(body.name, bytes);
      if (refusal) giveUp(refusal);
      const { stamp, heading, name } = body;
      const file = { id: context.machine.newId(), name, sha256: sha256(bytes) };
      await tell({
        kind: 'product-file-attached',
        subjectKind: 'attachment',
        subjectId: file.id,
        payload: { ...file, productId: id, heading, bytes: bytes.length },
      });
      await insertAttachment(tx, { ...file, entry_id: stamp.id, bytes });
      await insertAttachmentLink(tx, {
        entry_id: stamp.id,
        attachment_id: file.id,
        subject_kind: 'product',
        subject_id: id,
        heading,
        is_taken_out: 0,
      });
      return file.id;
    },
    async (fileId) => {
      const file = await findAttachment(context.storage.db, fileId);
      if (!file) return refused(thingNotFound('id', fileId));
      const kind = kindOfFile(file.bytes) ?? 'pdf';
      return done({ id: file.id, name: file.name, kind, bytes: file.bytes.length, sha256: file.sha256 });
    },
  );

/** The file itself stays: what was shown to somebody once can be shown again. */
export const takeFileOut: UseCase<'takeFileOut'> = (context, { params: { id = '' }, body }) =>
  record(
    context,
    body.stamp,
    async (tx, tell) => {
      const { stamp, heading, attachmentId } = body;
      const files = await listLinkedAttachments(tx, 'product', id);
      if (!files.some((file) => file.id === attachmentId && file.heading === heading))
        giveUp(problem('file-not-under-heading', 'attachmentId', { found: attachmentId }));
      await tell({
        kind: 'product-file-taken-out',
        subjectKind: 'attachment',
        subjectId: attachmentId,
        payload: { productId: id, heading },
      });
      await insertAttachmentLink(tx, {
        entry_id: stamp.id,
        attachment_id: attachmentId,
        subject_kind: 'product',
        subject_id: id,
        heading,
        is_taken_out: 1,
      });
      return attachmentId;
    },
    viewId,
  );

export const getAttachment: UseCase<'getAttachment'> = async (
  { storage: { db } },
  { params: { id = '' } },
) => {
  const file = await findAttachment(db, id);
  // A photograph that was struck has no picture any more.
  if (!file || file.bytes.length === 0) return refused(thingNotFound('id', id));
  const kind = kindOfFile(file.bytes);
  const media = kind === 'png' || kind === 'jpeg' ? (`image/${kind}` as const) : undefined;
  return done({ fileName: file.name, bytes: new Uint8Array(file.bytes), ...(media && { media }) });
};
