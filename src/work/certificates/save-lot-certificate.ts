import { Buffer } from 'node:buffer';
import { problem } from '../../core/problem.ts';
import {
  type AttachmentRow,
  giveUp,
  insertCertificate,
  type LotAtHand,
  listCertificatesOfLot,
  listLotsAtHand,
  orGiveUp,
  type SignedCertificate,
  sha256,
  type Writer,
} from '../../storage/index.ts';
import type { Context } from '../context.ts';
import { judgeFile } from '../formulas/report-file.ts';
import { inside } from '../inside.ts';
import { workshopToday } from '../local-date.ts';
import { record, thingNotFound, viewId } from '../record.ts';
import type { RequestOf, UseCase } from '../use-case.ts';
import { readCertificate } from './judge-certificate.ts';
import { paperOf } from './read-counting.ts';

type Body = RequestOf<'saveLotCertificate'>['body'];

/**
 * A supplier's paper on one lot: from now on its figures go before those of its material, beside what other papers on the
 * lot tell. Nothing is written over: a correction is a new paper instead of the one that it names.
 */
export const saveLotCertificate: UseCase<'saveLotCertificate'> = (context, { body, params }) =>
  record(
    context,
    body.stamp,
    async (tx, tell) => {
      const lot = await lotOf(tx, params.id ?? '');
      const details = orGiveUp(readCertificate(body, await workshopToday(inside(context, tx))));
      const corrected = await findCorrected(tx, lot.id, details.insteadOf);
      const attachment = readFile(context, body);
      const attachmentId = attachment?.id ?? (body.keepsFile ? (corrected?.attachment_id ?? null) : null);
      await tell({
        kind: 'certificate-entered',
        subjectKind: 'lot',
        subjectId: lot.id,
        payload: {
          reference: body.reference,
          datedOn: body.datedOn,
          details,
          file: attachment && { name: attachment.name, sha256: attachment.sha256 },
          keepsFile: body.keepsFile,
        },
      });
      await insertCertificate(
        tx,
        {
          entry_id: body.stamp.id,
          lot_id: lot.id,
          reference: body.reference,
          dated_on: body.datedOn,
          details: JSON.stringify(details),
          attachment_id: attachmentId,
        },
        attachment,
      );
      return lot.id;
    },
    viewId,
  );

/** Only what was bought to go into a mixture has a supplier's paper that says what is in it. */
async function lotOf(tx: Writer, id: string): Promise<LotAtHand> {
  const [lot] = await listLotsAtHand(tx, { lotIds: [id] });
  if (!lot) giveUp(thingNotFound('id', id));
  if (lot.item_kind !== 'material' || lot.unit !== 'g')
    giveUp(problem('certificate-of-ingredients', lot.number, { found: lot.item_name }));
  return lot;
}

function readFile(context: Context, { stamp, file }: Body): AttachmentRow | null {
  if (file === null) return null;
  const bytes = Buffer.from(file.base64, 'base64');
  const refusal = judgeFile(file.name, bytes);
  if (refusal) giveUp(refusal);
  return { id: context.machine.newId(), entry_id: stamp.id, name: file.name, sha256: sha256(bytes), bytes };
}

/** Once: two corrections of one paper would both count. */
async function findCorrected(
  tx: Writer,
  lotId: string,
  insteadOf: string | null,
): Promise<SignedCertificate | undefined> {
  if (insteadOf === null) return undefined;
  const rows = await listCertificatesOfLot(tx, lotId);
  const corrected = rows.find((row) => row.entry_id === insteadOf);
  if (!corrected) giveUp(thingNotFound('details.insteadOf', insteadOf));
  const newer = rows.find((row) => paperOf(row).details.insteadOf === insteadOf);
  if (newer)
    giveUp(
      problem('certificate-replaced-already', corrected.reference, {
        found: newer.reference,
        parameters: { by: newer.person_name },
      }),
    );
  return corrected;
}
