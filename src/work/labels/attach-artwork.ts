import { Buffer } from 'node:buffer';
import { done, type Problem, problem, refused } from '../../core/problem.ts';
import {
  findAttachment,
  findProduct,
  giveUp,
  insertAttachment,
  insertAttachmentLink,
  sha256,
} from '../../storage/index.ts';
import { isWhole, kindOfFile } from '../attached-file.ts';
import { record, thingNotFound } from '../record.ts';
import type { UseCase } from '../use-case.ts';

/** A full label at the resolution of a good printer needs less (common practice, no source). */
const LARGEST_BYTES = 8_000_000;

function judgePicture(name: string, bytes: Buffer): Problem | undefined {
  if (bytes.length > LARGEST_BYTES)
    return problem('artwork-too-large', 'base64', {
      found: Math.ceil(bytes.length / 1_000_000),
      allowed: LARGEST_BYTES / 1_000_000,
      parameters: { file: name },
    });
  const kind = kindOfFile(bytes);
  const isPicture = (kind === 'png' || kind === 'jpeg') && isWhole(kind, bytes);
  return isPicture ? undefined : problem('artwork-not-picture', 'base64', { found: name });
}

/** A picture for labels lies with its product; which label shows it is said in the design. */
export const attachLabelArtwork: UseCase<'attachLabelArtwork'> = (context, { params: { id = '' }, body }) =>
  record(
    context,
    body.stamp,
    async (tx, tell) => {
      if (!(await findProduct(tx, id))) giveUp(thingNotFound('id', id));
      const bytes = Buffer.from(body.base64, 'base64');
      const refusal = judgePicture(body.name, bytes);
      if (refusal) giveUp(refusal);
      const file = { id: context.machine.newId(), name: body.name, sha256: sha256(bytes) };
      await tell({
        kind: 'label-artwork-attached',
        subjectKind: 'attachment',
        subjectId: file.id,
        payload: { ...file, productId: id, bytes: bytes.length },
      });
      await insertAttachment(tx, { ...file, entry_id: body.stamp.id, bytes });
      await insertAttachmentLink(tx, {
        entry_id: body.stamp.id,
        attachment_id: file.id,
        subject_kind: 'label-design',
        subject_id: id,
        heading: 'artwork',
        is_taken_out: 0,
      });
      return file.id;
    },
    async (fileId) => {
      const file = await findAttachment(context.storage.db, fileId);
      return file
        ? done({ id: file.id, name: file.name, bytes: file.bytes.length, sha256: file.sha256 })
        : refused(thingNotFound('id', fileId));
    },
  );
