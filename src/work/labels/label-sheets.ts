import { labels } from '../../contract/index.ts';
import { done, refused } from '../../core/problem.ts';
import { checkSheet, layoutSheetTrial, positionAfter } from '../../print/layout/index.ts';
import {
  findLabelSheet,
  findLastPrintOn,
  giveUp,
  insertLabelSheet,
  type LabelSheetRow,
  listLabelSheets as listRows,
  type Reader,
  updateLabelSheet,
  type Writer,
} from '../../storage/index.ts';
import { painter } from '../painter.ts';
import { changedMeanwhile, record, thingNotFound, viewId } from '../record.ts';
import type { UseCase } from '../use-case.ts';
import { readPrintedDesign } from './printed-design.ts';

const readSheet = (json: string): labels.LabelSheetDetails =>
  labels.labelSheetDetails.parse(JSON.parse(json));

export const listLabelSheets: UseCase<'listLabelSheets'> = async ({ storage: { db } }) => {
  const sheets = [];
  for (const { id, version, details: json } of await listRows(db)) {
    const details = readSheet(json);
    sheets.push({ id, version, details, nextPosition: await findNextPosition(db, id, details) });
  }
  return done(sheets);
};

/** A sheet is begun by what was last printed on one of its kind; one that was measured anew since begins anew. */
async function findNextPosition(
  db: Reader,
  id: string,
  { geometry }: labels.LabelSheetDetails,
): Promise<number> {
  const print = await findLastPrintOn(db, id);
  if (!print) return 1;
  const { sheet, pieces, firstPosition } = readPrintedDesign(print.design);
  if (sheet?.id !== id || positionsOf(sheet.geometry) !== positionsOf(geometry)) return 1;
  return positionAfter(geometry, firstPosition, print.copies * pieces.length);
}

const positionsOf = ({ columns, rows }: labels.LabelSheetDetails['geometry']): string => `${columns} ${rows}`;

export const saveLabelSheet: UseCase<'saveLabelSheet'> = (context, { body }) =>
  record(
    context,
    body.stamp,
    async (tx, tell) => {
      const { details } = body;
      const wrong = checkSheet(details.geometry);
      if (wrong.length > 0)
        giveUp(...wrong.map((each) => ({ ...each, where: `details.geometry.${each.where}` })));
      const id = body.id ?? context.machine.newId();
      await tell({
        kind: body.id ? 'label-sheet-changed' : 'label-sheet-added',
        subjectKind: 'label-sheet',
        subjectId: id,
        payload: details,
      });
      const row = { id, name: details.name, details: JSON.stringify(details), version: 1 };
      if (body.id) await change(tx, row, body.version);
      else await insertLabelSheet(tx, row);
      return id;
    },
    viewId,
  );

async function change(tx: Writer, row: LabelSheetRow, seen: number | undefined): Promise<void> {
  const current = (await findLabelSheet(tx, row.id)) ?? giveUp(thingNotFound('id', row.id));
  if (seen === undefined || !(await updateLabelSheet(tx, row, seen)))
    giveUp(changedMeanwhile(row.name, seen, current.version, current.name));
}

/** The outlines alone, on plain paper: held against the sheet and a window, it shows how far the printer is off. */
export const getSheetTrialPdf: UseCase<'getSheetTrialPdf'> = async (context, { params: { id = '' } }) => {
  const row = await findLabelSheet(context.storage.db, id);
  if (!row) return refused(thingNotFound('id', id));
  const { name, geometry, offsetMm } = readSheet(row.details);
  const { loadFaces, paintDocument } = await painter();
  const trial = layoutSheetTrial(geometry, { title: name, offsetMm }, loadFaces());
  if (!trial.ok) return trial;
  const bytes = await paintDocument(trial.value, context.machine.now());
  return done({ fileName: `trial-sheet.pdf`, bytes });
};
