import { Buffer } from 'node:buffer';
import { type Problem, problem } from '../../core/problem.ts';
import {
  findBatch,
  giveUp,
  insertAttachment,
  insertAttachmentLink,
  listLinkedAttachments,
  sha256,
} from '../../storage/index.ts';
import { isWhole, kindOfFile } from '../attached-file.ts';
import { record, refuseBefore, thingNotFound } from '../record.ts';
import type { UseCase } from '../use-case.ts';
import { photoHeading } from './batch-screens.ts';
import { viewBatch } from './batch-view.ts';
import { stepAt } from './step-at.ts';

/** What a tablet shrinks a photograph to, and a little more; a dozen of a step still fit a backup (common practice, no source). */
const LARGEST_BYTES = 500_000;
const MOST_OF_A_STEP = 12;

/** A photograph lies with its step for good. It may be added when the batch is made: a crack is seen the day after. */
export const addStepPhoto: UseCase<'addStepPhoto'> = (context, { body, params }) =>
  record(
    context,
    body.stamp,
    async (tx, tell) => {
      const batch = await findBatch(tx, params.id ?? '');
      if (!batch) giveUp(thingNotFound('id', params.id ?? ''));
      refuseBefore(body.stamp, batch.started_at, `batch ${batch.number}`);
      const step = await stepAt(tx, batch.id, body.position);
      const bytes = Buffer.from(body.base64, 'base64');
      const refusal = judgePhoto(step.what, bytes);
      if (refusal) giveUp(refusal);
      const heading = photoHeading(step.position);
      const before = await listLinkedAttachments(tx, 'step', batch.id);
      if (before.filter((row) => row.heading === heading).length >= MOST_OF_A_STEP)
        giveUp(problem('photos-too-many', step.what, { allowed: MOST_OF_A_STEP }));
      const file = { id: context.machine.newId(), name: body.caption || step.what, sha256: sha256(bytes) };
      await tell({
        kind: 'step-photographed',
        subjectKind: 'batch',
        subjectId: batch.id,
        payload: { ...file, position: step.position, bytes: bytes.length },
      });
      await insertAttachment(tx, { ...file, entry_id: body.stamp.id, bytes });
      await insertAttachmentLink(tx, {
        entry_id: body.stamp.id,
        attachment_id: file.id,
        subject_kind: 'step',
        subject_id: batch.id,
        heading,
        is_taken_out: 0,
      });
      return batch.id;
    },
    (id) => viewBatch(context, id),
  );

function judgePhoto(where: string, bytes: Buffer): Problem | undefined {
  if (bytes.length > LARGEST_BYTES)
    return problem('photo-too-large', where, {
      found: Math.ceil(bytes.length / 1000),
      allowed: LARGEST_BYTES / 1000,
    });
  const kind = kindOfFile(bytes);
  const isPicture = (kind === 'png' || kind === 'jpeg') && isWhole(kind, bytes);
  return isPicture ? undefined : problem('photo-not-picture', where);
}
