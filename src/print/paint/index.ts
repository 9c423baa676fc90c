export { loadFaces } from './load-faces.ts';
export { type LabelPdfOptions, paintLabelPdf } from './paint-label-pdf.ts';
export { paintPaperPdf } from './paint-paper-pdf.ts';
