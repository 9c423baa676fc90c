import { done, type Result } from '../../core/problem.ts';
import { printWords } from '../../words/index.ts';
import { type Label, layoutLabel, layoutLabelSheet } from '../layout/index.ts';
import { loadFaces } from './load-faces.ts';
import { paintDocument } from './paint-document.ts';

export interface LabelPdfOptions {
  /** ISO moment that the file states as its own. */
  readonly createdAt: string;
  /** Pairs of front and back; 1 unless said. */
  readonly copies?: number;
}

/** A4 sheets with the label at true size, lines to cut by and a bar of 50 mm to check the printer. */
export async function paintLabelPdf(label: Label, options: LabelPdfOptions): Promise<Result<Uint8Array>> {
  const faces = loadFaces();
  const layout = layoutLabel(label, faces);
  if (!layout.ok) return layout;
  const title = printWords.label.sheet.title(label.front.productName, label.back.batchNumber);
  const sheet = layoutLabelSheet(layout.value, { title, copies: options.copies ?? 1 }, faces);
  return sheet.ok ? done(await paintDocument(sheet.value, options.createdAt)) : sheet;
}
