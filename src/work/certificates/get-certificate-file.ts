import { done, problem, refused } from '../../core/problem.ts';
import { findAttachment, findCertificate } from '../../storage/index.ts';
import { thingNotFound } from '../record.ts';
import type { UseCase } from '../use-case.ts';

export const getLotCertificateFile: UseCase<'getLotCertificateFile'> = async (
  { storage: { db } },
  { params: { id = '' } },
) => {
  const row = await findCertificate(db, id);
  if (!row) return refused(thingNotFound('id', id));
  const file = row.attachment_id === null ? undefined : await findAttachment(db, row.attachment_id);
  if (!file) return refused(problem('certificate-without-file', `certificate ${row.reference}`));
  return done({ fileName: file.name, bytes: new Uint8Array(file.bytes) });
};
