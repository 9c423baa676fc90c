import { problem } from '../../core/problem.ts';
import {
  emptyAttachment,
  emptyLog,
  findBatch,
  giveUp,
  insertAttachmentLink,
  insertStrike,
  listLinkedAttachments,
  listStruckPhotos,
} from '../../storage/index.ts';
import { record, thingNotFound } from '../record.ts';
import type { UseCase } from '../use-case.ts';
import { viewBatch } from './batch-view.ts';

/**
 * A photograph that should not be there is struck, at any time: that it was taken, by whom, its hash and why it went stay.
 * Its picture goes from the file, since somebody may be seen on it. Source: Regulation (EU) 2016/679, Article 17 (from
 * memory, check).
 */
export const strikeStepPhoto: UseCase<'strikeStepPhoto'> = (context, { body, params }) =>
  record(
    context,
    body.stamp,
    async (tx, tell) => {
      const batch = await findBatch(tx, params.id ?? '');
      if (!batch) giveUp(thingNotFound('id', params.id ?? ''));
      const { stamp, entryId, reason } = body;
      const struck = (await listStruckPhotos(tx, batch.id)).find((row) => row.entry_id === entryId);
      if (struck) giveUp(problem('entry-struck-already', 'entryId', { found: struck.happened_at }));
      const photo = (await listLinkedAttachments(tx, 'step', batch.id)).find(
        (row) => row.entry_id === entryId,
      );
      if (!photo) giveUp(thingNotFound('entryId', entryId));
      await tell({
        kind: 'entry-struck',
        subjectKind: 'batch',
        subjectId: batch.id,
        payload: { struckEntryId: entryId, reason, attachmentId: photo.id, sha256: photo.sha256 },
      });
      await insertStrike(tx, { entry_id: stamp.id, struck_entry_id: entryId, reason });
      await insertAttachmentLink(tx, {
        entry_id: stamp.id,
        attachment_id: photo.id,
        subject_kind: 'step',
        subject_id: batch.id,
        heading: photo.heading,
        is_taken_out: 1,
      });
      await emptyAttachment(tx, photo.id);
      return batch.id;
    },
    async (id) => {
      await emptyLog(context.storage);
      return viewBatch(context, id);
    },
  );
