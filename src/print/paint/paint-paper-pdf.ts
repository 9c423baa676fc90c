import { done, type Result } from '../../core/problem.ts';
import { layoutPaper, type Paper } from '../layout/index.ts';
import { loadFaces } from './load-faces.ts';
import { paintDocument } from './paint-document.ts';

/** A paper of the workshop as PDF. */
export async function paintPaperPdf(paper: Paper): Promise<Result<Uint8Array>> {
  const laidOut = layoutPaper(paper, loadFaces());
  return laidOut.ok ? done(await paintDocument(laidOut.value, paper.createdAt)) : laidOut;
}
