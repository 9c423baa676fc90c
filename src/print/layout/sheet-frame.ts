import { printWords } from '../../words/index.ts';
import type { Faces, Weight } from './face.ts';
import { placeLine } from './place-line.ts';
import type { Part, Placed, Tone } from './placed.ts';
import { prepareText } from './prepare-text.ts';
import { type Line, setLine } from './set-line.ts';

/** Labels stand between top and bottom, and between the margins. */
export interface SheetFormat {
  readonly widthMm: number;
  readonly heightMm: number;
  readonly marginMm: number;
  readonly topMm: number;
  readonly bottomMm: number;
}

/** What a printer can leave white along each edge, at most (common practice, no source). */
const MARGIN_MM = 5;
/** The heading above the labels; the bar and its words below. */
const HEAD_MM = 17;
const FOOT_MM = 20;

const formatOf = (widthMm: number, heightMm: number): SheetFormat => ({
  widthMm,
  heightMm,
  marginMm: MARGIN_MM,
  topMm: HEAD_MM,
  bottomMm: heightMm - FOOT_MM,
});

/** A4 (ISO 216), upright and across. */
export const SHEET = formatOf(210, 297);
export const SHEET_ACROSS = formatOf(297, 210);

/** What a reader of the sheet needs above the labels. */
export interface SheetHeading {
  readonly title: string;
  readonly copies: number;
}

const RULER_MM = 50;
/** Of the bar, above the lower edge. */
const RULER_UP_MM = 14.5;

/** Which label this is, and the bar that shows whether the printer kept its size. */
export function placeSheetFrame(
  heading: SheetHeading,
  format: SheetFormat,
  faces: Faces,
): { items: Placed[]; parts: Part[] } {
  const title: Part = { type: 'H1', children: [] };
  const note: Part = { type: 'P', children: [] };
  const ruler: Part = { type: 'P', children: [] };
  const write = (text: string, y: number, x: number, weight: Weight, tone: Tone, part: Part): Placed[] => {
    const sizeMm = weight === 'bold' ? 4.2 : 3.4;
    const place = { xMm: x, baselineMm: y, sizeMm, tone, element: 'sheet', part };
    const roomMm = format.widthMm - format.marginMm - x;
    return placeLine(setOnOneLine(text, weight, sizeMm, roomMm, faces), place, faces);
  };
  const words = printWords.label.sheet;
  const rulerMm = format.heightMm - RULER_UP_MM;
  const beside = format.marginMm + RULER_MM + 5;
  const items = [
    ...write(heading.title, 8.2, format.marginMm, 'bold', 'ink', title),
    ...write(words.copies(heading.copies), 12.6, format.marginMm, 'regular', 'soft', note),
    ...rulerBar(format.marginMm, rulerMm),
    ...write(words.rulerIs, rulerMm - 0.6, beside, 'semibold', 'ink', ruler),
    ...write(words.printAt, rulerMm + 3.8, beside, 'regular', 'soft', ruler),
    ...write(words.ifNot, rulerMm + 8.2, beside, 'regular', 'soft', ruler),
  ];
  return { items, parts: [title, note, ruler] };
}

/** The caption of the sheet may be cut short, with dots to say so; what stands on the label never is. */
function setOnOneLine(text: string, weight: Weight, sizeMm: number, roomMm: number, faces: Faces): Line {
  const set = (shown: string): Line =>
    setLine([{ text: shown, weight, joiner: '', ending: '' }], sizeMm, faces);
  const letters = [...prepareText(text).replaceAll('\n', ' ')];
  let line = set(letters.join(''));
  while (line.widthMm > roomMm && letters.length > 0) {
    letters.pop();
    line = set(`${letters.join('').trimEnd()}…`);
  }
  return line;
}

/** The bar itself is 50 mm from the outer edge of one end mark to the outer edge of the other. */
function rulerBar(left: number, yMm: number): Placed[] {
  const thicknessMm = 0.35;
  const right = left + RULER_MM;
  const rule = (fromMm: [number, number], toMm: [number, number], thick: number): Placed => ({
    kind: 'rule',
    fromMm,
    toMm,
    thicknessMm: thick,
    tone: 'ink',
    element: 'sheet.ruler',
  });
  const ends = [left + thicknessMm / 2, right - thicknessMm / 2].map((x) =>
    rule([x, yMm - 2.5], [x, yMm + 2.5], thicknessMm),
  );
  const tens = [10, 20, 30, 40].map((mm) => rule([left + mm, yMm - 1.2], [left + mm, yMm + 1.2], 0.2));
  return [rule([left, yMm], [right, yMm], thicknessMm), ...ends, ...tens];
}
