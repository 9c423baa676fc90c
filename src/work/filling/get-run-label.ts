import { done, problem, refused } from '../../core/problem.ts';
import { labelToSvg, layoutLabel } from '../../print/layout/index.ts';
import { canonicalJson, insertLabelPrint, listLabelPrints, sha256, writeOnce } from '../../storage/index.ts';
import { say } from '../../words/index.ts';
import type { Context } from '../context.ts';
import { painter } from '../painter.ts';
import { thingNotFound } from '../record.ts';
import type { UseCase } from '../use-case.ts';
import { viewElement } from './compose-label.ts';
import { composeRunLabel } from './run-label.ts';
import { gatherRun, type RunRecords } from './run-records.ts';

/** The label, element by element, with both faces drawn at true size as far as there is something to draw. */
export const getRunLabel: UseCase<'getRunLabel'> = async (context, { params: { id = '' }, query }) => {
  const records = await gatherRun(context.storage.db, id);
  if (!records) return refused(thingNotFound('id', id));
  const { text, missing, label } = await composeRunLabel(context, records, query.market);
  const { loadFaces } = await painter();
  const layout = label && layoutLabel(label, loadFaces());
  const svg = layout?.ok ? labelToSvg(layout.value) : { front: '', back: '' };
  return done({
    market: query.market,
    elements: text ? text.elements.map(viewElement) : [],
    missing: [...missing],
    figureHeightMm: text?.figureHeightMm ?? 0,
    frontSvg: svg.front,
    backSvg: svg.back,
  });
};

/**
 * The label as a PDF at true size; for sale only when nothing is missing. That it was printed is written down with the
 * hash of the file; the same label printed again is not a new one.
 */
export const getRunLabelPdf: UseCase<'getRunLabelPdf'> = async (context, { params: { id = '' }, query }) => {
  const records = await gatherRun(context.storage.db, id);
  if (!records) return refused(thingNotFound('id', id));
  const { label, missing } = await composeRunLabel(context, records, query.market);
  if (!label || (missing.length > 0 && records.head.purpose === 'sale')) {
    return refused(
      ...missing.map((each) =>
        problem('label-not-complete', 'label', {
          parameters: { market: query.market, reason: say(each) },
        }),
      ),
    );
  }
  const { copies, market } = query;
  // Dated by the run, so that the same label is the same file, and its hash tells whether anything changed.
  const { paintLabelPdf } = await painter();
  const bytes = await paintLabelPdf(label, { createdAt: records.head.started_at, copies });
  if (!bytes.ok) return bytes;
  const print = { market, copies, sha256: sha256(bytes.value) };
  const written = await writePrint(context, records, print);
  if (!written.ok) return written;
  return done({ fileName: `label-${records.head.number}-${market}.pdf`, bytes: bytes.value });
};

interface Print {
  readonly market: string;
  readonly copies: number;
  readonly sha256: string;
}

/** Nobody signs a print: it is asked for by a link, and the program writes down what it gave. */
async function writePrint(context: Context, { head }: RunRecords, print: Print) {
  const at = context.machine.now();
  const before = await listLabelPrints(context.storage.db, head.id);
  const last = before.filter((row) => row.market === print.market).at(-1);
  if (last?.sha256 === print.sha256 && last.copies === print.copies) return done(null);
  const asked = { text: canonicalJson(print), salt: null };
  const stamp = { id: context.machine.newId(), at, by: null, device: 'this program', asked };
  return writeOnce(context.storage, stamp, at, async (tx, tell) => {
    await tell({
      kind: 'label-printed',
      subjectKind: 'filling-run',
      subjectId: head.id,
      payload: { number: head.number, ...print },
    });
    await insertLabelPrint(tx, { entry_id: stamp.id, filling_run_id: head.id, ...print });
  });
}
