import { done, problem, type Result, refused } from '../../core/problem.ts';
import { printWords } from '../../words/index.ts';
import { cutMarks } from './cut-marks.ts';
import type { Faces } from './face.ts';
import type { FaceLayout, LabelLayout } from './label.ts';
import { heightOf, widthOf } from './outline.ts';
import { moveBy, type Page, type Part, type Placed, type PrintDocument } from './placed.ts';
import { placeSheetFrame, SHEET, type SheetHeading } from './sheet-frame.ts';

/** Room for the corner marks of two neighbours. */
const GAP_MM = 8;
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
  const mayStandInPairs =
    widthOf(front.size) + GAP_MM + widthOf(back.size) <= SHEET.widthMm - 2 * SHEET.marginMm;
  const pair = mayStandInPairs ? [[front, back]] : [[front], [back]];
  const groups = Array.from({ length: copies }, () => pair).flat();
  const sheets: Cell[][] = [[]];
  let xMm = SHEET.marginMm;
  let yMm = SHEET.topMm;
  let rowMm = 0;
  for (const group of groups) {
    const width = group.reduce((sum, face) => sum + widthOf(face.size) + GAP_MM, -GAP_MM);
    const height = Math.max(...group.map((face) => heightOf(face.size)));
    if (xMm > SHEET.marginMm && xMm + width > SHEET.widthMm - SHEET.marginMm) {
      xMm = SHEET.marginMm;
      yMm += rowMm + GAP_MM;
      rowMm = 0;
    }
    if (yMm > SHEET.topMm && yMm + height > SHEET.bottomMm) {
      sheets.push([]);
      xMm = SHEET.marginMm;
      yMm = SHEET.topMm;
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
  const frame = placeSheetFrame(heading, faces);
  return {
    page: {
      widthMm: SHEET.widthMm,
      heightMm: SHEET.heightMm,
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
  return { items: [...cutMarks(face, xMm, yMm), ...items], part: { type: 'Sect', children } };
}

function partOf(element: string, face: FaceLayout): Part {
  if (element !== 'back.openedMonths') return { type: 'P', children: [] };
  const months = face.items.flatMap((item) =>
    item.element === element && item.kind === 'text' ? [Number.parseInt(item.text, 10)] : [],
  );
  return { type: 'Figure', alt: printWords.label.openJar(months[0] ?? 0), children: [] };
}
