import { done, problem, type Result, refused } from '../../core/problem.ts';
import { printWords } from '../../words/index.ts';
import { cutMarks } from './cut-marks.ts';
import type { Faces } from './face.ts';
import type { FaceLayout, LabelLayout } from './label.ts';
import { MOST_COPIES } from './layout-cut-sheet.ts';
import { heightOf, widthOf } from './outline.ts';
import { moveBy, type Page, type Part, type Placed, type PrintDocument } from './placed.ts';
import { placeSheetFrame, SHEET, SHEET_ACROSS, type SheetFormat, type SheetHeading } from './sheet-frame.ts';

/** Room to cut in, where there is room: the corner marks of two neighbours lie apart. */
const WIDE_GAP_MM = 8;
/** Between two circles only their hairlines; a corner mark ends before the next face begins. */
const LEAST_GAP_MM = { round: 1, rectangle: 4 } as const;

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
  const paper = layOutClosest(label, copies);
  const sheets = paper.sheets.map((cells) => sheetOf(cells, paper.format, heading, faces));
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

interface LaidOut {
  readonly format: SheetFormat;
  readonly sheets: readonly (readonly Cell[])[];
}

/** Upright or across, whichever takes fewer sheets; upright where both take as many. */
function layOutClosest(label: LabelLayout, copies: number): LaidOut {
  const laidOut = (format: SheetFormat): LaidOut => ({ format, sheets: fillSheets(label, copies, format) });
  const [upright, across] = [laidOut(SHEET), laidOut(SHEET_ACROSS)];
  return across.sheets.length < upright.sheets.length ? across : upright;
}

/** As many in a row as fit with the least gap; what is left over widens the gaps. */
function gapBetween(sizeMm: number, roomMm: number, leastMm: number): number {
  const count = Math.floor((roomMm + leastMm) / (sizeMm + leastMm));
  return count < 2 ? leastMm : Math.min(WIDE_GAP_MM, (roomMm - count * sizeMm) / (count - 1));
}

function gapsOf({ front, back }: LabelLayout, format: SheetFormat): { across: number; down: number } {
  const least = Math.max(LEAST_GAP_MM[front.size.shape], LEAST_GAP_MM[back.size.shape]);
  const isOneSize =
    widthOf(front.size) === widthOf(back.size) && heightOf(front.size) === heightOf(back.size);
  if (!isOneSize) return { across: least, down: least };
  return {
    across: gapBetween(widthOf(front.size), format.widthMm - 2 * format.marginMm, least),
    down: gapBetween(heightOf(front.size), format.bottomMm - format.topMm, least),
  };
}

/** Smaller than any printer places: sums of millimetres must not push a face that just fits to the next row. */
const HAIR_MM = 1e-6;

/** Row by row, the front of each copy followed by its back. */
function fillSheets(label: LabelLayout, copies: number, format: SheetFormat): Cell[][] {
  const gaps = gapsOf(label, format);
  const right = format.widthMm - format.marginMm + HAIR_MM;
  const sheets: Cell[][] = [[]];
  let xMm = format.marginMm;
  let yMm = format.topMm;
  let rowMm = 0;
  for (const face of Array.from({ length: copies }, () => [label.front, label.back]).flat()) {
    const [width, height] = [widthOf(face.size), heightOf(face.size)];
    if (xMm > format.marginMm && xMm + width > right) {
      xMm = format.marginMm;
      yMm += rowMm + gaps.down;
      rowMm = 0;
    }
    if (yMm > format.topMm && yMm + height > format.bottomMm + HAIR_MM) {
      sheets.push([]);
      xMm = format.marginMm;
      yMm = format.topMm;
      rowMm = 0;
    }
    sheets.at(-1)?.push({ face, xMm, yMm });
    xMm += width + gaps.across;
    rowMm = Math.max(rowMm, height);
  }
  return sheets;
}

function sheetOf(
  cells: readonly Cell[],
  format: SheetFormat,
  heading: SheetHeading,
  faces: Faces,
): { page: Page; parts: Part[] } {
  const placed = cells.map(placeCell);
  const frame = placeSheetFrame(heading, format, faces);
  return {
    page: {
      widthMm: format.widthMm,
      heightMm: format.heightMm,
      items: [...frame.items, ...placed.flatMap(({ items }) => items)],
    },
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
  return {
    items: [...cutMarks({ id: face.face, size: face.size }, xMm, yMm), ...items],
    part: { type: 'Sect', children },
  };
}

function partOf(element: string, face: FaceLayout): Part {
  if (element !== 'back.openedMonths') return { type: 'P', children: [] };
  const months = face.items.flatMap((item) =>
    item.element === element && item.kind === 'text' ? [Number.parseInt(item.text, 10)] : [],
  );
  return { type: 'Figure', alt: printWords.label.openJar(months[0] ?? 0), children: [] };
}
