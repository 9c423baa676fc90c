export { loadCodes } from './load-codes.ts';
export { loadFaces } from './load-faces.ts';
export { paintDocument } from './paint-document.ts';
export { paintPaperPdf } from './paint-paper-pdf.ts';
