import { Buffer } from 'node:buffer';
import { done, type Problem, problem, refused } from '../../core/problem.ts';
import { attachToReport, findAttachment, findReport, giveUp, sha256 } from '../../storage/index.ts';
import { kindOfFile } from '../attached-file.ts';
import { record, thingNotFound, viewId } from '../record.ts';
import type { UseCase } from '../use-case.ts';

/** A report with its pictures is a few megabytes; this much still fits a backup (common practice, no source). */
const LARGEST_BYTES = 20_000_000;

export const attachReportFile: UseCase<'attachReportFile'> = (context, { body, params }) =>
  record(
    context,
    body.stamp,
    async (tx, tell) => {
      const report = await findReport(tx, params.id ?? '');
      if (!report) giveUp(thingNotFound('id', params.id ?? ''));
      const bytes = Buffer.from(body.base64, 'base64');
      const refusal = judgeFile(body.name, bytes);
      if (refusal) giveUp(refusal);
      const attachment = { id: context.machine.newId(), name: body.name, sha256: sha256(bytes) };
      await tell({
        kind: 'report-file-attached',
        subjectKind: 'report',
        subjectId: report.id,
        payload: { ...attachment, bytes: bytes.length },
      });
      await attachToReport(tx, report.id, { ...attachment, entry_id: body.stamp.id, bytes });
      return report.id;
    },
    viewId,
  );

export function judgeFile(name: string, bytes: Buffer): Problem | undefined {
  if (bytes.length > LARGEST_BYTES)
    return problem('file-too-large', 'base64', {
      found: Math.ceil(bytes.length / 1_000_000),
      allowed: LARGEST_BYTES / 1_000_000,
      parameters: { file: name },
    });
  return kindOfFile(bytes) === 'pdf' ? undefined : problem('file-not-pdf', 'base64', { found: name });
}

export const getReportFile: UseCase<'getReportFile'> = async (
  { storage: { db } },
  { params: { id = '' } },
) => {
  const report = await findReport(db, id);
  if (!report) return refused(thingNotFound('id', id));
  const file = report.attachment_id === null ? undefined : await findAttachment(db, report.attachment_id);
  if (!file) return refused(problem('report-without-file', `report ${report.reference}`));
  return done({ fileName: file.name, bytes: new Uint8Array(file.bytes) });
};
