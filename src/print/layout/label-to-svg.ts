import { printWords } from '../../words/index.ts';
import type { FaceLayout, LabelLayout } from './label.ts';
import { heightOf, outlinePath, widthOf } from './outline.ts';
import { type Placed, type PlacedText, toneColour } from './placed.ts';

/**
 * Both faces as SVG at true size, for the screen. Places are in millimetres; a text is stretched to the width it has in
 * print (textLength), so that a screen font of other widths cannot move or overlap anything.
 */
export const labelToSvg = (layout: LabelLayout): { readonly front: string; readonly back: string } => ({
  front: faceToSvg(layout.front),
  back: faceToSvg(layout.back),
});

function faceToSvg(face: FaceLayout): string {
  const width = widthOf(face.size);
  const height = heightOf(face.size);
  const title = escapeXml(printWords.label.faces[face.face]);
  const cut = `<path d="${outlinePath(face.size)}" fill="#ffffff" stroke="${toneColour.line}" stroke-width="0.2"/>`;
  const items = face.items.map(itemToSvg).join('');
  return (
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}mm" height="${height}mm" viewBox="0 0 ${width} ${height}" ` +
    `xml:space="preserve" font-family="'Source Sans 3 Variable', 'Source Sans 3', sans-serif"><title>${title}</title>${cut}${items}</svg>`
  );
}

function itemToSvg(item: Placed): string {
  const colour = toneColour[item.tone];
  if (item.kind === 'text') return textToSvg(item, colour);
  if (item.kind === 'rule') {
    const [x1, y1] = item.fromMm.map(short);
    const [x2, y2] = item.toMm.map(short);
    return `<line x1="${x1}" y1="${y1}" x2="${x2}" y2="${y2}" stroke="${colour}" stroke-width="${item.thicknessMm}"/>`;
  }
  const paint =
    item.strokeMm === null
      ? `fill="${colour}"`
      : `fill="none" stroke="${colour}" stroke-width="${short(item.strokeMm)}" stroke-linejoin="round"`;
  return `<path transform="translate(${short(item.xMm)} ${short(item.yMm)})" d="${item.d}" ${paint}/>`;
}

const WEIGHTS = { regular: 400, semibold: 600, bold: 700 } as const;

const textToSvg = (item: PlacedText, colour: string): string =>
  `<text x="${short(item.xMm)}" y="${short(item.baselineMm)}" font-size="${short(item.sizeMm)}" ` +
  `font-weight="${WEIGHTS[item.weight]}" fill="${colour}" textLength="${short(item.widthMm)}" ` +
  `lengthAdjust="spacingAndGlyphs" data-element="${escapeXml(item.element)}">${escapeXml(keepEdgeBlanks(item.text))}</text>`;

/** Blanks at the ends of a text are dropped by some browsers in spite of xml:space; a no-break space is kept by all. */
const keepEdgeBlanks = (text: string): string => text.replace(/^ | $/g, '\u00a0');

/** A micrometre is finer than any printer or screen. */
const short = (mm: number): string => String(Math.round(mm * 1000) / 1000);

const ENTITIES: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

const escapeXml = (text: string): string =>
  text.replace(/[&<>"']/g, (character) => ENTITIES[character] ?? '');
