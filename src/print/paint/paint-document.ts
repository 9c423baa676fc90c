import PDFDocument from 'pdfkit';
import type { Page, Part, Placed, PrintDocument } from '../layout/index.ts';
import { readFontFile, weights } from './font-files.ts';
import { keepImages } from './keep-images.ts';
import { type Kept, paintItem } from './paint-item.ts';
import { type Pdf, points } from './pdf.ts';

type Elements = ReadonlyMap<Part, PDFKit.PDFStructureElement>;

/**
 * Draws placed items as PDF: fonts embedded, tagged for screen readers, in British English, with its title.
 * The only moment in the file is the one handed in, so that the same input gives the same bytes.
 */
export async function paintDocument(document: PrintDocument, createdAt: string): Promise<Uint8Array> {
  const pdf = openPdf(document.title, readMoment(createdAt));
  const bytes = collectBytes(pdf);
  for (const weight of weights) pdf.registerFont(weight, readFontFile(weight));
  const elements = addStructure(pdf, document.structure);
  const kept: Kept = { images: await keepImages(pdf, document), texts: new Map(), forms: new Map() };
  for (const page of document.pages) paintPage(pdf, page, elements, kept);
  elements.get(document.structure)?.end();
  pdf.end();
  return bytes;
}

function readMoment(createdAt: string): Date {
  const moment = new Date(createdAt);
  if (Number.isNaN(moment.getTime())) throw new RangeError(`not a moment in time: ${createdAt}`);
  return moment;
}

function openPdf(title: string, createdAt: Date): Pdf {
  return new PDFDocument({
    autoFirstPage: false,
    pdfVersion: '1.7',
    tagged: true,
    lang: 'en-GB',
    displayTitle: true,
    font: '',
    info: { Title: title, Creator: 'Gramwright', Producer: 'Gramwright', CreationDate: createdAt },
  });
}

function collectBytes(pdf: Pdf): Promise<Uint8Array> {
  return new Promise((resolve, reject) => {
    const chunks: Uint8Array[] = [];
    pdf.on('data', (chunk: Uint8Array) => chunks.push(chunk));
    pdf.on('end', () => resolve(new Uint8Array(Buffer.concat(chunks))));
    pdf.on('error', reject);
  });
}

/** The whole tree first, in reading order; what is drawn later is hung on its leaves. */
function addStructure(pdf: Pdf, root: Part): Elements {
  const elements = new Map<Part, PDFKit.PDFStructureElement>();
  const build = (part: Part): PDFKit.PDFStructureElement => {
    const { alt, scope } = part;
    const options = { ...(alt === undefined ? {} : { alt }), ...(scope === undefined ? {} : { scope }) };
    const element = pdf.struct(part.type, options);
    elements.set(part, element);
    for (const child of part.children) element.add(build(child));
    return element;
  };
  pdf.addStructure(build(root));
  return elements;
}

function paintPage(pdf: Pdf, page: Page, elements: Elements, kept: Kept): void {
  pdf.addPage({ size: [points(page.widthMm), points(page.heightMm)], margin: 0 });
  for (const group of groupByPart(page.items)) {
    const part = group[0]?.part;
    const element = part === undefined ? undefined : elements.get(part);
    if (part !== undefined && element === undefined)
      throw new Error(`${group[0]?.element}: part outside the structure`);
    if (part === undefined || element === undefined) pdf.markContent('Artifact', { type: 'Layout' });
    else element.add(pdf.markStructureContent(part.type));
    for (const item of group) paintItem(pdf, item, kept);
    pdf.endMarkedContent();
  }
}

function groupByPart(items: readonly Placed[]): Placed[][] {
  const groups: Placed[][] = [];
  for (const item of items) {
    const open = groups.at(-1);
    if (open !== undefined && open[0]?.part === item.part) open.push(item);
    else groups.push([item]);
  }
  return groups;
}
