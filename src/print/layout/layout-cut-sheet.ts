import { done, type Problem, problem, type Result } from '../../core/problem.ts';
import { cutMarks } from './cut-marks.ts';
import type { Faces } from './face.ts';
import { heightOf, widthOf } from './outline.ts';
import { partsOfPiece } from './parts-of-piece.ts';
import type { PieceLayout } from './piece-layout.ts';
import { moveBy, type Page, type Part, type Placed, type PrintDocument } from './placed.ts';
import { placeSheetFrame, SHEET, SHEET_ACROSS, type SheetFormat, type SheetHeading } from './sheet-frame.ts';

/** Room to cut in, where there is room: the corner marks of two neighbours lie apart. */
const WIDE_GAP_MM = 8;
/** Between two circles only their hairlines; a corner mark ends before the next face begins. */
const LEAST_GAP_MM = { round: 1, rectangle: 4 } as const;
export const MOST_COPIES = 500;

/** A4 sheets with so many copies of each piece at true size, lines to cut by, and a bar to check the printer's scale. */
export function layoutCutSheet(
  pieces: readonly PieceLayout[],
  heading: SheetHeading,
  faces: Faces,
): Result<PrintDocument> {
  const { copies } = heading;
  const problems = [...checkCopies(copies), ...checkSizes(pieces)];
  if (problems.length > 0) return { ok: false, problems };
  const paper = layOutClosest(pieces, copies);
  const sheets = paper.sheets.map((cells) => sheetOf(cells, paper.format, heading, faces));
  return done({
    title: heading.title,
    pages: sheets.map(({ page }) => page),
    structure: { type: 'Document', children: sheets.flatMap(({ parts }) => parts) },
  });
}

const checkCopies = (copies: number): Problem[] =>
  Number.isInteger(copies) && copies >= 1 && copies <= MOST_COPIES
    ? []
    : [problem('copies-wrong', 'copies', { found: String(copies), allowed: `1 to ${MOST_COPIES}` })];

/** Nothing that is larger than the paper can be cut out of it; and all of one print lie the same way round. */
function checkSizes(pieces: readonly PieceLayout[]): Problem[] {
  const isFor = (format: SheetFormat): boolean => pieces.every((piece) => fitsOn(piece, format));
  if (isFor(SHEET) || isFor(SHEET_ACROSS)) return [];
  const across = `${SHEET_ACROSS.widthMm - 2 * SHEET_ACROSS.marginMm} x ${SHEET_ACROSS.bottomMm - SHEET_ACROSS.topMm} mm`;
  return pieces
    .filter((piece) => !fitsOn(piece, SHEET_ACROSS))
    .map(({ id, size }) =>
      problem('piece-larger-than-paper', id, {
        found: `${widthOf(size)} x ${heightOf(size)} mm`,
        allowed: across,
      }),
    );
}

interface Cell {
  readonly piece: PieceLayout;
  readonly xMm: number;
  readonly yMm: number;
}

interface LaidOut {
  readonly format: SheetFormat;
  readonly sheets: readonly (readonly Cell[])[];
}

/** Upright or across, whichever takes fewer sheets; upright where both take as many. What fits on one alone decides. */
function layOutClosest(pieces: readonly PieceLayout[], copies: number): LaidOut {
  const laidOut = (format: SheetFormat): LaidOut => ({ format, sheets: fillSheets(pieces, copies, format) });
  if (!pieces.every((piece) => fitsOn(piece, SHEET))) return laidOut(SHEET_ACROSS);
  if (!pieces.every((piece) => fitsOn(piece, SHEET_ACROSS))) return laidOut(SHEET);
  const [upright, across] = [laidOut(SHEET), laidOut(SHEET_ACROSS)];
  return across.sheets.length < upright.sheets.length ? across : upright;
}

const fitsOn = ({ size }: PieceLayout, format: SheetFormat): boolean =>
  widthOf(size) <= format.widthMm - 2 * format.marginMm + HAIR_MM &&
  heightOf(size) <= format.bottomMm - format.topMm + HAIR_MM;

/** As many in a row as fit with the least gap; what is left over widens the gaps. */
function gapBetween(sizeMm: number, roomMm: number, leastMm: number): number {
  const count = Math.floor((roomMm + leastMm) / (sizeMm + leastMm));
  return count < 2 ? leastMm : Math.min(WIDE_GAP_MM, (roomMm - count * sizeMm) / (count - 1));
}

function gapsOf(pieces: readonly PieceLayout[], format: SheetFormat): { across: number; down: number } {
  const least = Math.max(
    ...pieces.map(({ size, bleedMm }) => Math.max(LEAST_GAP_MM[size.shape], 2 * bleedMm)),
  );
  const sizes = new Set(pieces.map(({ size }) => `${widthOf(size)} ${heightOf(size)}`));
  const [first] = pieces;
  if (sizes.size > 1 || first === undefined) return { across: least, down: least };
  return {
    across: gapBetween(widthOf(first.size), format.widthMm - 2 * format.marginMm, least),
    down: gapBetween(heightOf(first.size), format.bottomMm - format.topMm, least),
  };
}

/** Smaller than any printer places: sums of millimetres must not push a face that just fits to the next row. */
const HAIR_MM = 1e-6;

/** Row by row, the pieces of each copy one after the other. */
function fillSheets(pieces: readonly PieceLayout[], copies: number, format: SheetFormat): Cell[][] {
  const gaps = gapsOf(pieces, format);
  const right = format.widthMm - format.marginMm + HAIR_MM;
  const sheets: Cell[][] = [[]];
  let xMm = format.marginMm;
  let yMm = format.topMm;
  let rowMm = 0;
  for (const piece of Array.from({ length: copies }, () => pieces).flat()) {
    const [width, height] = [widthOf(piece.size), heightOf(piece.size)];
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
    sheets.at(-1)?.push({ piece, xMm, yMm });
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

function placeCell({ piece, xMm, yMm }: Cell): { items: Placed[]; part: Part } {
  const parts = partsOfPiece(piece);
  const items = piece.items.map((item) => {
    const part = parts.get(item.element);
    return moveBy(part === undefined ? item : { ...item, part }, xMm, yMm);
  });
  return {
    items: [...items, ...cutMarks(piece, xMm, yMm)],
    part: { type: 'Sect', children: [...parts.values()] },
  };
}
