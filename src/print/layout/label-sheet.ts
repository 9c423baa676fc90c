import { done, problem, type Result, refused } from '../../core/problem.ts';
import { printWords } from '../../words/index.ts';
import type { Faces, Weight } from './face.ts';
import type { FaceLayout, LabelLayout } from './label.ts';
import { heightOf, outlinePath, widthOf } from './outline.ts';
import { placeLine } from './place-line.ts';
import { moveBy, type Page, type Part, type Placed, type PrintDocument, type Tone } from './placed.ts';
import { setLine } from './set-line.ts';

/** What a reader of the sheet needs above the labels. */
export interface SheetHeading {
  readonly title: string;
  readonly copies: number;
}

const A4 = { widthMm: 210, heightMm: 297 };
const MARGIN_MM = 14;
const TOP_MM = 26;
const BOTTOM_MM = 262;
/** Room for the corner marks of two neighbours. */
const GAP_MM = 8;
const RULER_MM = 50;
const RULER_Y_MM = 278;
export const MOST_COPIES = 500;

/** A4 sheets with as many pairs of faces as asked for at true size, lines to cut by, and a bar to check the printer's scale. */
export function layoutLabelSheet(
  label: LabelLayout,
  heading: SheetHeading,
  faces: Faces,
): Result<PrintDocument> {
  const { copies } = heading;
  if (!Number.isInteger(copies) || copies < 1 || copies > MOST_COPIES) {
    return refused(
      problem('copies-wrong', 'copies', { found: String(copies), allowed: `1 to ${MOST_COPIES}` }),
    );
  }
  const sheets = fillSheets(label, copies).map((cells) => sheetOf(cells, heading, faces));
  return done({
    title: heading.title,
    pages: sheets.map(({ page }) => page),
    structure: { type: 'Document', children: sheets.flatMap(({ parts }) => parts) },
  });
}

interface Cell {
  readonly face: FaceLayout;
  readonly xMm: number;
  readonly yMm: number;
}

/** Row by row, front and back of one copy side by side where the sheet is wide enough for both. */
function fillSheets(label: LabelLayout, copies: number): Cell[][] {
  const { front, back } = label;
  const mayStandInPairs = widthOf(front.size) + GAP_MM + widthOf(back.size) <= A4.widthMm - 2 * MARGIN_MM;
  const pair = mayStandInPairs ? [[front, back]] : [[front], [back]];
  const groups = Array.from({ length: copies }, () => pair).flat();
  const sheets: Cell[][] = [[]];
  let xMm = MARGIN_MM;
  let yMm = TOP_MM;
  let rowMm = 0;
  for (const group of groups) {
    const width = group.reduce((sum, face) => sum + widthOf(face.size) + GAP_MM, -GAP_MM);
    const height = Math.max(...group.map((face) => heightOf(face.size)));
    if (xMm > MARGIN_MM && xMm + width > A4.widthMm - MARGIN_MM) {
      xMm = MARGIN_MM;
      yMm += rowMm + GAP_MM;
      rowMm = 0;
    }
    if (yMm > TOP_MM && yMm + height > BOTTOM_MM) {
      sheets.push([]);
      xMm = MARGIN_MM;
      yMm = TOP_MM;
      rowMm = 0;
    }
    for (const face of group) {
      sheets.at(-1)?.push({ face, xMm, yMm });
      xMm += widthOf(face.size) + GAP_MM;
    }
    rowMm = Math.max(rowMm, height);
  }
  return sheets;
}

function sheetOf(cells: readonly Cell[], heading: SheetHeading, faces: Faces): { page: Page; parts: Part[] } {
  const placed = cells.map(placeCell);
  const frame = placeFrame(heading, faces);
  return {
    page: { ...A4, items: [...frame.items, ...placed.flatMap(({ items }) => items)] },
    parts: [...frame.parts, ...placed.map(({ part }) => part)],
  };
}

/** One face at its place: everything of one element is one paragraph for a reader, the open jar is a picture with its words. */
function placeCell({ face, xMm, yMm }: Cell): { items: Placed[]; part: Part } {
  const elements = [...new Set(face.items.map(({ element }) => element))];
  const parts = new Map(elements.map((element) => [element, partOf(element, face)]));
  const items = face.items.map((item) => {
    const part = item.kind === 'rule' ? undefined : parts.get(item.element);
    return moveBy(part === undefined ? item : { ...item, part }, xMm, yMm);
  });
  const children = elements.flatMap((element) => {
    const part = parts.get(element);
    return part === undefined || element.endsWith('.rule') ? [] : [part];
  });
  return { items: [...cutMarks(face, xMm, yMm), ...items], part: { type: 'Sect', children } };
}

function partOf(element: string, face: FaceLayout): Part {
  if (element !== 'back.openedMonths') return { type: 'P', children: [] };
  const months = face.items.flatMap((item) =>
    item.element === element && item.kind === 'text' ? [Number.parseInt(item.text, 10)] : [],
  );
  return { type: 'Figure', alt: printWords.label.openJar(months[0] ?? 0), children: [] };
}

/** A hairline on the cut itself; a rectangle also has marks outside its corners, to lay a ruler on. */
function cutMarks(face: FaceLayout, xMm: number, yMm: number): Placed[] {
  const outline: Placed = {
    kind: 'path',
    d: outlinePath(face.size),
    xMm,
    yMm,
    strokeMm: 0.1,
    tone: 'soft',
    element: `${face.face}.cut`,
  };
  return face.size.shape === 'round' ? [outline] : [outline, ...cornerMarks(face, xMm, yMm)];
}

const MARK = { fromMm: 1, toMm: 3.5 };

function cornerMarks(face: FaceLayout, xMm: number, yMm: number): Placed[] {
  const corners = [-1, 1].flatMap((across) => [-1, 1].map((down) => [across, down] as const));
  return corners.flatMap(([across, down]) => {
    const x = xMm + (across > 0 ? widthOf(face.size) : 0);
    const y = yMm + (down > 0 ? heightOf(face.size) : 0);
    const mark = (fromMm: [number, number], toMm: [number, number]): Placed => ({
      kind: 'rule',
      fromMm,
      toMm,
      thicknessMm: 0.1,
      tone: 'soft',
      element: `${face.face}.cut`,
    });
    return [
      mark([x + across * MARK.fromMm, y], [x + across * MARK.toMm, y]),
      mark([x, y + down * MARK.fromMm], [x, y + down * MARK.toMm]),
    ];
  });
}

function placeFrame(heading: SheetHeading, faces: Faces): { items: Placed[]; parts: Part[] } {
  const title: Part = { type: 'H1', children: [] };
  const note: Part = { type: 'P', children: [] };
  const ruler: Part = { type: 'P', children: [] };
  const write = (text: string, y: number, x: number, weight: Weight, tone: Tone, part: Part): Placed[] => {
    const token = { text, weight, joiner: '', ending: '' } as const;
    const place = {
      xMm: x,
      baselineMm: y,
      sizeMm: weight === 'bold' ? 4.2 : 3.4,
      tone,
      element: 'sheet',
      part,
    };
    return placeLine(setLine([token], place.sizeMm, faces), place, faces);
  };
  const words = printWords.label.sheet;
  const beside = MARGIN_MM + RULER_MM + 5;
  const items = [
    ...write(heading.title, 13, MARGIN_MM, 'bold', 'ink', title),
    ...write(words.copies(heading.copies), 18.5, MARGIN_MM, 'regular', 'soft', note),
    ...rulerBar(),
    ...write(words.rulerIs, RULER_Y_MM + 0.4, beside, 'semibold', 'ink', ruler),
    ...write(words.printAt, RULER_Y_MM + 5, beside, 'regular', 'soft', ruler),
  ];
  return { items, parts: [title, note, ruler] };
}

/** The bar itself is 50 mm from the outer edge of one end mark to the outer edge of the other. */
function rulerBar(): Placed[] {
  const thicknessMm = 0.35;
  const left = MARGIN_MM;
  const right = MARGIN_MM + RULER_MM;
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
