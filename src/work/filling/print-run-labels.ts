import type { Market } from '../../contract/index.ts';
import { done, type Problem, problem, type Result, refused } from '../../core/problem.ts';
import { findLabelPrint, giveUp, insertLabelPrint, orGiveUp, sha256 } from '../../storage/index.ts';
import { say } from '../../words/index.ts';
import type { Context } from '../context.ts';
import { inside } from '../inside.ts';
import { workshopZone } from '../local-date.ts';
import { painter } from '../painter.ts';
import { record, thingNotFound, viewId } from '../record.ts';
import type { UseCase } from '../use-case.ts';
import { composeRunLabel } from './run-label.ts';
import { gatherRun, type RunRecords } from './run-records.ts';

interface Wish {
  readonly market: Market;
  readonly copies: number;
}

/**
 * Labels are printed by a person, who is written down with the hash of the file of one copy, however many are asked for:
 * nothing can be weighed in while this is written, and two hundred take seconds. For sale only when nothing is missing.
 * The paper itself is fetched by the number of its print, which writes nothing: a link on another site can start nothing.
 */
export const printRunLabels: UseCase<'printRunLabels'> = (context, { params: { id = '' }, body }) =>
  record(
    context,
    body.stamp,
    async (tx, tell) => {
      const within = inside(context, tx);
      const records = (await gatherRun(tx, id)) ?? giveUp(thingNotFound('id', id));
      const { market, copies } = body;
      const print = {
        market,
        copies,
        sha256: sha256(orGiveUp(await paint(within, records, { market, copies: 1 }))),
      };
      await tell({
        kind: 'label-printed',
        subjectKind: 'filling-run',
        subjectId: id,
        payload: { number: records.head.number, ...print },
      });
      await insertLabelPrint(tx, { entry_id: body.stamp.id, filling_run_id: id, design: null, ...print });
      return id;
    },
    () => viewId(body.stamp.id),
  );

/** The labels of one print, as a PDF at true size: drawn again, and only if they are still what was printed. */
export const getLabelPrintPdf: UseCase<'getLabelPrintPdf'> = async (context, { params: { id = '' } }) => {
  const { db } = context.storage;
  const print = await findLabelPrint(db, id);
  const records = print && (await gatherRun(db, print.filling_run_id));
  if (!print || !records) return refused(thingNotFound('id', id));
  const { number } = records.head;
  const market = print.market as Wish['market'];
  const one = await paint(context, records, { market, copies: 1 });
  if (!one.ok) return one;
  if (sha256(one.value) !== print.sha256) return refused(problem('label-changed-since', number));
  const bytes = print.copies === 1 ? one : await paint(context, records, { market, copies: print.copies });
  if (!bytes.ok) return bytes;
  return done({ fileName: `label-${number}-${market}.pdf`, bytes: bytes.value });
};

async function paint(
  context: Context,
  records: RunRecords,
  { market, copies }: Wish,
): Promise<Result<Uint8Array>> {
  const { head } = records;
  const { label, missing } = await composeRunLabel(context, records, market);
  if (!label || (missing.length > 0 && head.purpose === 'sale')) {
    const timeZone = await workshopZone(context);
    const reasons = missing.map((each) => say(each, { timeZone }));
    return refused(...reasons.map((reason) => notComplete(market, reason)));
  }
  // Dated by the run, so that the same label is the same file, and its hash tells whether anything changed.
  const { paintLabelPdf } = await painter();
  return paintLabelPdf(label, { createdAt: head.started_at, copies });
}

const notComplete = (market: string, reason: string): Problem =>
  problem('label-not-complete', 'label', { parameters: { market, reason } });
