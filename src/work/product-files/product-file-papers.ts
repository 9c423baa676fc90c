import { done, type Result } from '../../core/problem.ts';
import type { PaperPicture } from '../../print/layout/index.ts';
import { findAttachment } from '../../storage/index.ts';
import { printWords } from '../../words/index.ts';
import type { AskedContext, Context } from '../context.ts';
import { getBatchSheet } from '../making/get-batch-sheet.ts';
import type { UseCase } from '../use-case.ts';
import { releasedBatches } from './file-batches.ts';
import { labelPdf, labelTextFile } from './file-labels.ts';
import { type Pictures, paintWritten, sayMoment } from './lay-out-written.ts';
import type { FileData } from './read-file-data.ts';
import { type FileView, viewFile } from './view-file.ts';
import { plainName, putFile, textFile, zipFolder } from './zip-folder.ts';

const { names } = printWords.written;

const fileNameOf = ({ productName }: FileView, ending: string): string =>
  `${names.file}-${plainName(productName).replace(/\s+/g, '-').toLowerCase()}.${ending}`;

export const getProductFile: UseCase<'getProductFile'> = async (context, { params: { id = '' } }) => {
  const file = await viewFile(context, id);
  return file.ok ? done(file.value.view) : file;
};

export const getProductFilePdf: UseCase<'getProductFilePdf'> = async (context, { params: { id = '' } }) => {
  const file = await viewFile(context, id);
  if (!file.ok) return file;
  const { view, data } = file.value;
  return paintWritten(fileNameOf(view, 'pdf'), view, data.house, await readPictures(context, view));
};

/** Pictures are shown under their heading; PDFs are named there and lie in the folder. */
async function readPictures({ storage: { db } }: Context, { chapters }: FileView): Promise<Pictures> {
  const pictures = new Map<string, PaperPicture[]>();
  for (const { key, files } of chapters) {
    for (const { id, name, kind } of files) {
      const file = kind === 'pdf' ? undefined : await findAttachment(db, id);
      const picture = file && { name, bytes: new Uint8Array(file.bytes) };
      if (picture) pictures.set(key, [...(pictures.get(key) ?? []), picture]);
    }
  }
  return pictures;
}

/** Everything that belongs to the file, by heading: to be shown to an authority, or sent to the assessor. */
export const getProductFileZip: UseCase<'getProductFileZip'> = async (context, { params: { id = '' } }) => {
  const file = await viewFile(context, id);
  if (!file.ok) return file;
  const { view, data } = file.value;
  const folder = await gather(context, view, data);
  if (!folder.ok) return folder;
  folder.value.set(names.index, textFile(indexOf(view, [...folder.value.keys()], data.house.timeZone)));
  return done({ fileName: fileNameOf(view, 'zip'), bytes: zipFolder(folder.value, view.asOf) });
};

async function gather(
  context: AskedContext,
  view: FileView,
  data: FileData,
): Promise<Result<Map<string, Uint8Array>>> {
  const folder = new Map<string, Uint8Array>();
  const pdf = await paintWritten(names.pdf, view, data.house, await readPictures(context, view));
  if (!pdf.ok) return pdf;
  folder.set(names.pdf, pdf.value.bytes);
  folder.set(names.data, textFile(JSON.stringify(view, null, 2)));
  await putAttachments(context, view, folder);
  for (const { report } of data.reports?.covering ?? []) {
    const place = `${names.report}/${plainName(report.details.reference)}`;
    const fileId = report.row.attachment_id;
    if (fileId !== null) await putAttachment(context, folder, place, fileId);
  }
  const records = await putBatchRecords(context, data, folder);
  if (!records.ok) return records;
  await putLabels(data, folder);
  return done(folder);
}

/** Under the number and name of their heading. */
async function putAttachments(context: Context, { chapters }: FileView, folder: Map<string, Uint8Array>) {
  for (const [index, { key, files }] of chapters.entries()) {
    const place = `${names.headings}/${String(index + 1).padStart(2, '0')}-${key}`;
    for (const { id } of files) await putAttachment(context, folder, place, id);
  }
}

async function putAttachment(
  { storage: { db } }: Context,
  folder: Map<string, Uint8Array>,
  place: string,
  id: string,
): Promise<void> {
  const file = await findAttachment(db, id);
  if (file) putFile(folder, `${place}/${plainName(file.name)}`, new Uint8Array(file.bytes));
}

/** A paper states the moment of the data, so that the same data gives the same bytes. */
const asOfMoment = (context: AskedContext, at: string): AskedContext => ({
  ...context,
  machine: { ...context.machine, now: () => at },
});

async function putBatchRecords(
  context: AskedContext,
  data: FileData,
  folder: Map<string, Uint8Array>,
): Promise<Result<null>> {
  const then = asOfMoment(context, data.asOf);
  for (const id of new Set(releasedBatches(data).map(({ batchId }) => batchId))) {
    const record = await getBatchSheet(then, { params: { id }, query: undefined, body: undefined });
    if (!record.ok) return record;
    putFile(folder, `${names.records}/${plainName(record.value.fileName)}`, record.value.bytes);
  }
  return done(null);
}

async function putLabels({ labels, house, asOf }: FileData, folder: Map<string, Uint8Array>): Promise<void> {
  for (const label of labels) {
    folder.set(`${names.labels}/${label.market}.txt`, labelTextFile(label, house.timeZone));
    const pdf = await labelPdf(label, asOf);
    if (pdf) folder.set(`${names.labels}/${label.market}.pdf`, pdf);
  }
}

const indexOf = (
  { productName, asOf: at, missing }: FileView,
  paths: readonly string[],
  timeZone: string,
): string =>
  [
    printWords.written.indexTitle(productName),
    printWords.written.notice,
    printWords.written.indexAsOf(sayMoment(at, timeZone)),
    printWords.written.indexMissing(missing.length),
    '',
    ...[...paths].sort(),
  ].join('\n');
