import { labels } from '../../contract/index.ts';
import { done, refused } from '../../core/problem.ts';
import { checkSheet, layoutSheetTrial } from '../../print/layout/index.ts';
import {
  findLabelSheet,
  giveUp,
  insertLabelSheet,
  type LabelSheetRow,
  listLabelSheets as listRows,
  updateLabelSheet,
  type Writer,
} from '../../storage/index.ts';
import { painter } from '../painter.ts';
import { changedMeanwhile, record, thingNotFound, viewId } from '../record.ts';
import type { UseCase } from '../use-case.ts';

const readSheet = (json: string): labels.LabelSheetDetails =>
  labels.labelSheetDetails.parse(JSON.parse(json));

export const listLabelSheets: UseCase<'listLabelSheets'> = async ({ storage: { db } }) => {
  const rows = await listRows(db);
  return done(rows.map(({ id, version, details }) => ({ id, version, details: readSheet(details) })));
};

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
