import type { labels, Market } from '../../contract/index.ts';
import { done, type Problem, problem, type Result, refused } from '../../core/problem.ts';
import {
  layoutCutSheet,
  layoutOnSheet,
  type PieceLayout,
  type PrintDocument,
} from '../../print/layout/index.ts';
import {
  findLabelPrint,
  findLabelSheet,
  giveUp,
  insertLabelPrint,
  orGiveUp,
  type Reader,
  sha256,
} from '../../storage/index.ts';
import { labelPrintWords, printWords, say } from '../../words/index.ts';
import type { Context } from '../context.ts';
import { gatherRun, type RunRecords } from '../filling/run-records.ts';
import { inside } from '../inside.ts';
import { workshopZone } from '../local-date.ts';
import { painter } from '../painter.ts';
import { record, thingNotFound, viewId } from '../record.ts';
import type { RequestOf, UseCase } from '../use-case.ts';
import { hashWords } from './hash-words.ts';
import type { LaidPiece } from './lay-out-pieces.ts';
import { readPrintedDesign } from './printed-design.ts';
import { composeRunLabel } from './run-label.ts';

interface Wish {
  readonly market: Market;
  readonly copies: number;
  readonly design: labels.PrintedDesign;
}

type Body = RequestOf<'printRunLabels'>['body'];

/**
 * Labels are printed by a person, who is written down with what was printed on what, and with the hash of the file of one
 * copy, however many are asked for: nothing can be weighed in while this is written, and two hundred take seconds. For
 * sale only when nothing is missing. The paper itself is fetched by the number of its print, which writes nothing: a link
 * on another site can start nothing.
 */
export const printRunLabels: UseCase<'printRunLabels'> = (context, { params: { id = '' }, body }) =>
  record(
    context,
    body.stamp,
    async (tx, tell) => {
      const within = inside(context, tx);
      const records = (await gatherRun(tx, id)) ?? giveUp(thingNotFound('id', id));
      const { market, copies } = body;
      const { pieces: laid, ingredients } = orGiveUp(await layOut(within, records, market));
      const planned = await planPrint(tx, laid, body);
      const design = carriesIngredients(laid, planned) ? { ...planned, ingredients } : planned;
      const one = orGiveUp(await paint(records, laid, { market, copies: 1, design }));
      orGiveUp(await place(records, laid, { market, copies, design }));
      const print = { market, copies, sha256: sha256(one) };
      await tell({
        kind: 'label-printed',
        subjectKind: 'filling-run',
        subjectId: id,
        payload: { number: records.head.number, ...print, design },
      });
      const row = { entry_id: body.stamp.id, filling_run_id: id, design: JSON.stringify(design), ...print };
      await insertLabelPrint(tx, row);
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
  const market = print.market as Market;
  const design = readPrintedDesign(print.design);
  const found = await layOut(context, records, market);
  if (!found.ok) return found;
  const laid = found.value.pieces;
  const one = await paint(records, laid, { market, copies: 1, design });
  if (!one.ok || sha256(one.value) !== print.sha256) return refused(problem('label-changed-since', number));
  const { copies } = print;
  const bytes = copies === 1 ? one : await paint(records, laid, { market, copies, design });
  return bytes.ok ? done({ fileName: `label-${number}-${market}.pdf`, bytes: bytes.value }) : bytes;
};

/** Everything of the label in this market; refused while something is missing, but for a trial. */
async function layOut(
  context: Context,
  records: RunRecords,
  market: Market,
): Promise<Result<{ readonly pieces: readonly LaidPiece[]; readonly ingredients: string }>> {
  const { missing, pieces, text } = await composeRunLabel(context, records, market);
  if (pieces.length > 0 && (missing.length === 0 || records.head.purpose !== 'sale'))
    return done({ pieces, ingredients: text?.ingredientList.join(', ') ?? '' });
  const timeZone = await workshopZone(context);
  return refused(...missing.map((each) => notComplete(market, say(each, { timeZone }))));
}

const notComplete = (market: string, reason: string): Problem =>
  problem('label-not-complete', 'label', { parameters: { market, reason } });

const carriesIngredients = (laid: readonly LaidPiece[], { pieces }: labels.PrintedDesign): boolean =>
  laid.some(
    ({ piece }) =>
      pieces.some(({ id }) => id === piece.id) &&
      piece.texts.some(({ element }) => element === 'ingredients'),
  );

/** What is to be printed on what, as it stands with the print from then on. */
async function planPrint(
  tx: Reader,
  laid: readonly LaidPiece[],
  { pieces: wanted, sheetId, firstPosition }: Body,
): Promise<labels.PrintedDesign> {
  const all = laid.map(({ piece }) => ({ id: piece.id, role: piece.role, words: hashWords(piece) }));
  const unknown = wanted.filter((id) => !all.some((piece) => piece.id === id));
  if (unknown.length > 0) {
    const allowed = all.map(({ id }) => id).join(', ');
    giveUp(...unknown.map((found) => problem('label-piece-unknown', 'pieces', { found, allowed })));
  }
  const stuckOn = all.filter(({ role }) => role !== 'leaflet');
  const pieces = wanted.length === 0 ? stuckOn : all.filter(({ id }) => wanted.includes(id));
  if (sheetId === null) return { pieces, sheet: null, firstPosition: 1 };
  const row = (await findLabelSheet(tx, sheetId)) ?? giveUp(thingNotFound('sheetId', sheetId));
  const { name, geometry, offsetMm } = JSON.parse(row.details) as labels.LabelSheetDetails;
  return { pieces, sheet: { id: sheetId, name, geometry, offsetMm }, firstPosition };
}

/** Dated by the run, so that the same label is the same file, and its hash tells whether anything changed. */
async function paint(
  records: RunRecords,
  laid: readonly LaidPiece[],
  wish: Wish,
): Promise<Result<Uint8Array>> {
  const document = await place(records, laid, wish);
  if (!document.ok) return document;
  const { paintDocument } = await painter();
  return done(await paintDocument(document.value, records.head.started_at));
}

async function place(
  { head, details }: RunRecords,
  laid: readonly LaidPiece[],
  { copies, design: { pieces, sheet, firstPosition } }: Wish,
): Promise<Result<PrintDocument>> {
  const chosen = laid.filter(({ piece }) => pieces.some(({ id }) => id === piece.id));
  const problems = chosen.flatMap(({ layout }) => (layout.ok ? [] : layout.problems));
  if (problems.length > 0) return { ok: false, problems };
  const layouts = chosen.flatMap(({ layout }): PieceLayout[] => (layout.ok ? [layout.value] : []));
  const sheetTitle = printWords.label.sheet.title(details.name, head.number);
  if (sheet === null) {
    const { loadFaces } = await painter();
    return layoutCutSheet(layouts, { title: sheetTitle, copies }, loadFaces());
  }
  const what = chosen.map(({ piece }) => labelPrintWords.roles[piece.role]).join(', ');
  const title = labelPrintWords.sheet.title(sheetTitle, what);
  return layoutOnSheet(layouts, sheet.geometry, { title, copies, firstPosition, offsetMm: sheet.offsetMm });
}
