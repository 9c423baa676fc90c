import { printWords } from '../../words/index.ts';
import type { Faces, Weight } from './face.ts';
import { placeLine } from './place-line.ts';
import type { Part, Placed, Tone } from './placed.ts';
import { prepareText } from './prepare-text.ts';
import { type Line, setLine } from './set-line.ts';

/** A4 portrait (ISO 216); labels stand between top and bottom. */
export const SHEET = { widthMm: 210, heightMm: 297, marginMm: 14, topMm: 26, bottomMm: 262 };

/** What a reader of the sheet needs above the labels. */
export interface SheetHeading {
  readonly title: string;
  readonly copies: number;
}

const RULER_MM = 50;
const RULER_Y_MM = 278;

/** Which label this is, and the bar that shows whether the printer kept its size. */
export function placeSheetFrame(heading: SheetHeading, faces: Faces): { items: Placed[]; parts: Part[] } {
  const title: Part = { type: 'H1', children: [] };
  const note: Part = { type: 'P', children: [] };
  const ruler: Part = { type: 'P', children: [] };
  const write = (text: string, y: number, x: number, weight: Weight, tone: Tone, part: Part): Placed[] => {
    const sizeMm = weight === 'bold' ? 4.2 : 3.4;
    const place = { xMm: x, baselineMm: y, sizeMm, tone, element: 'sheet', part };
    const roomMm = SHEET.widthMm - SHEET.marginMm - x;
    return placeLine(setOnOneLine(text, weight, sizeMm, roomMm, faces), place, faces);
  };
  const words = printWords.label.sheet;
  const beside = SHEET.marginMm + RULER_MM + 5;
  const items = [
    ...write(heading.title, 13, SHEET.marginMm, 'bold', 'ink', title),
    ...write(words.copies(heading.copies), 18.5, SHEET.marginMm, 'regular', 'soft', note),
    ...rulerBar(),
    ...write(words.rulerIs, RULER_Y_MM + 0.4, beside, 'semibold', 'ink', ruler),
    ...write(words.printAt, RULER_Y_MM + 5, beside, 'regular', 'soft', ruler),
    ...write(words.ifNot, RULER_Y_MM + 9.6, beside, 'regular', 'soft', ruler),
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
function rulerBar(): Placed[] {
  const thicknessMm = 0.35;
  const left = SHEET.marginMm;
  const right = SHEET.marginMm + RULER_MM;
  const rule = (fromMm: [number, number], toMm: [number, number], thick: number): Placed => ({
    kind: 'rule',
    fromMm,
    toMm,
    thicknessMm: thick,
    tone: 'ink',
    element: 'sheet.ruler',
  });
  const ends = [left + thicknessMm / 2, right - thicknessMm / 2].map((x) =>
    rule([x, RULER_Y_MM - 2.5], [x, RULER_Y_MM + 2.5], thicknessMm),
  );
  const tens = [10, 20, 30, 40].map((mm) =>
    rule([left + mm, RULER_Y_MM - 1.2], [left + mm, RULER_Y_MM + 1.2], 0.2),
  );
  return [rule([left, RULER_Y_MM], [right, RULER_Y_MM], thicknessMm), ...ends, ...tens];
}
