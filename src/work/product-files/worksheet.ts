import type { productFiles } from '../../contract/index.ts';
import { done, type Result } from '../../core/problem.ts';
import { findProductFile, lastWrittenAt, listProducts, type Reader } from '../../storage/index.ts';
import { printWords } from '../../words/index.ts';
import type { AskedContext } from '../context.ts';
import { checkRevision } from '../formulas/check-revision.ts';
import { listRevisionsInForce, openRevision, viewRevision, viewRevisions } from '../formulas/index.ts';
import { saying } from '../saying.ts';
import type { UseCase } from '../use-case.ts';
import { workshopDetails } from '../workshop-details.ts';
import { paintWritten } from './lay-out-written.ts';
import { readPoints } from './points-of-departure.ts';
import { readFileDetails } from './read-file-data.ts';
import { type WorksheetData, worksheetChapters } from './worksheet-chapters.ts';
import { entry } from './write-chapter.ts';
import { plainName } from './zip-folder.ts';

export interface Worksheet {
  readonly data: WorksheetData;
  readonly paper: productFiles.WrittenPaper;
  readonly fileName: string;
}

export async function readWorksheet(context: AskedContext, id: string): Promise<Result<Worksheet>> {
  const { db } = context.storage;
  const opened = await openRevision(db, id);
  if (!opened.ok) return opened;
  const revision = await viewRevision(db, id);
  if (!revision.ok) return revision;
  const check = await checkRevision(context, { params: { id }, query: {}, body: undefined });
  if (!check.ok) return check;
  const heads = (await listRevisionsInForce(db)).filter((head) =>
    opened.value.baseIds.includes(head.formula_id),
  );
  const data: WorksheetData = {
    opened: opened.value,
    revision: revision.value,
    bases: await viewRevisions(db, heads),
    check: check.value,
    points: await readPoints(db),
    functions: await readFunctions(db, opened.value.formula.id),
  };
  const { name } = opened.value.formula;
  const { number } = revision.value;
  const { names } = printWords.written;
  return done({
    data,
    fileName: `${names.worksheet}-${plainName(name).replace(/\s+/g, '-').toLowerCase()}-${number}`,
    paper: {
      title: saying('sheet-title', { formula: name, number }),
      subtitle: saying('pf-prepared'),
      sentence: saying('sheet-says', {
        formula: name,
        number,
        n: check.value.open.filter(({ decided }) => decided === null).length,
      }),
      asOf: (await lastWrittenAt(db)) ?? context.machine.now(),
      facts: [
        entry(saying('sheet-fact-materials'), String(opened.value.expanded.materials.length)),
        entry(saying('sheet-fact-points'), String(data.points.length)),
      ],
      missing: [],
      chapters: worksheetChapters(data),
    },
  });
}

/** Written once in a product's file, and true of its formula. */
async function readFunctions(db: Reader, formulaId: string): Promise<Map<string, string>> {
  const functions = new Map<string, string>();
  for (const { id, formula_id } of await listProducts(db)) {
    if (formula_id !== formulaId) continue;
    const file = readFileDetails((await findProductFile(db, id))?.details);
    for (const { materialId, text } of file.functions) functions.set(materialId, text);
  }
  return functions;
}

export const getWorksheet: UseCase<'getWorksheet'> = async (context, { params: { id = '' } }) => {
  const sheet = await readWorksheet(context, id);
  return sheet.ok ? done(sheet.value.paper) : sheet;
};

export const getWorksheetPdf: UseCase<'getWorksheetPdf'> = async (context, { params: { id = '' } }) => {
  const sheet = await readWorksheet(context, id);
  if (!sheet.ok) return sheet;
  return paintWritten(`${sheet.value.fileName}.pdf`, sheet.value.paper, await workshopDetails(context));
};
