import { Temporal } from 'temporal-polyfill';
import { type Problem, problem } from '../../core/problem.ts';
import { giveUp, insertFirmWord, insertLotStatus, type LotAtHand } from '../../storage/index.ts';
import { inside } from '../inside.ts';
import { localDate, startOfDay, workshopZone } from '../local-date.ts';
import { isPastKeeping } from '../lot-use.ts';
import { record, refuseBefore, viewId } from '../record.ts';
import { refuseOpenClaims } from '../refuse-open-claims.ts';
import type { UseCase } from '../use-case.ts';
import { lotToChange } from './lot-on-bench.ts';

/**
 * A person says that a base or a bowl is firm, and it may be used. Earlier than its shortest setting time that takes a
 * remark. Past the day until which it is kept, the same word says that it was looked at again. Whatever a person put into
 * quarantine stays there: that it is firm does not answer why.
 */
export const sayFirm: UseCase<'sayFirm'> = (context, { body, params }) =>
  record(
    context,
    body.stamp,
    async (tx, tell) => {
      const lot = await lotToChange(tx, params.id ?? '');
      const zone = await workshopZone(inside(context, tx));
      if (lot.batch_id !== null) await refuseOpenClaims(tx, 'batch', lot.batch_id, `lot ${lot.number}`);
      refuseBefore(body.stamp, startOfDay(lot.since, zone), `lot ${lot.number}`);
      const now = context.machine.now();
      const today = localDate(now, zone);
      const refusal = whyNotFirm(lot, today) ?? judgeEarly(lot, now, body.remark);
      if (refusal) giveUp(refusal);
      await tell({
        kind: 'lot-firm',
        subjectKind: 'lot',
        subjectId: lot.id,
        payload: { remark: body.remark, saidOn: today, before: lot.status },
      });
      const row = { entry_id: body.stamp.id, lot_id: lot.id };
      await insertFirmWord(tx, { ...row, remark: body.remark, said_on: today });
      if (waitsForThisWord(lot))
        await insertLotStatus(tx, { ...row, status: 'released', reason: body.remark });
      return lot.id;
    },
    viewId,
  );

/** In the quarantine that it was made with, and nobody has changed its standing since. */
const waitsForThisWord = (lot: LotAtHand): boolean =>
  lot.status === 'quarantine' && lot.status_entry_id === lot.entry_id;

function whyNotFirm(lot: LotAtHand, today: string): Problem | undefined {
  const where = `lot ${lot.number}`;
  const parameters = { item: lot.item_name };
  if (lot.status === 'blocked' || lot.status === 'rejected')
    return problem('lot-not-to-be-firm', where, {
      found: lot.status,
      parameters: { ...parameters, reason: lot.status_reason },
    });
  if (isPastKeeping(lot, today)) return undefined;
  if (lot.firm_from === null) return problem('lot-never-sets', where, { parameters });
  return lot.firm_said_at === null
    ? undefined
    : problem('lot-firm-already', where, { found: lot.firm_said_at, parameters });
}

function judgeEarly(lot: LotAtHand, at: string, remark: string): Problem | undefined {
  if (lot.firm_from === null || lot.firm_said_at !== null || remark !== '') return undefined;
  return Temporal.Instant.compare(at, lot.firm_from) < 0
    ? problem('firm-too-early', 'remark', {
        found: at,
        allowed: lot.firm_from,
        parameters: { item: lot.item_name },
      })
    : undefined;
}
