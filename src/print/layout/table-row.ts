import { type CellLine, cellLines } from './cell-lines.ts';
import type { Faces } from './face.ts';
import { BODY_BOTTOM_MM, NEXT_TOP_MM, TEXT_WIDTH_MM } from './page-frame.ts';
import type { PaperCell, PaperColumn } from './paper.ts';
import { paperStyles } from './paper-styles.ts';
import type { Piece } from './piece.ts';
import { moveBy, type Part, type Placed, type Tone } from './placed.ts';
import type { Columns } from './table-columns.ts';

export const PADDING_MM = 1.1;
/** Room for a figure written by hand. */
const HAND_ROW_MM = 10;

/** One row as a strip, or as several where it is taller than a page. */
export function rowPieces(
  cells: readonly PaperCell[],
  columns: Columns,
  where: string,
  head: Piece,
  faces: Faces,
): { pieces: Piece[]; part: Part } {
  const row = setRow(cells, columns, where, false, faces);
  const roomMm = BODY_BOTTOM_MM - NEXT_TOP_MM - head.heightMm - HAND_ROW_MM;
  const strips = partTallRow(row.lines, roomMm);
  const pieces = strips.map((lines, index): Piece => {
    const strip = stripPiece(lines, columns, where);
    const isLast = index === strips.length - 1;
    const items = isLast ? [...strip.items, ruleAt(strip.heightMm, 0.18, 'line', where)] : strip.items;
    return { ...strip, items, head };
  });
  return { pieces, part: row.part };
}

type RowLines = readonly (readonly CellLine[])[];

export function setRow(
  cells: readonly PaperCell[],
  { columns, widthMm }: Columns,
  where: string,
  isStrong: boolean,
  faces: Faces,
): { lines: RowLines; part: Part } {
  const set = columns.map((column, index) => {
    const part: Part = { type: 'TD', children: [] };
    const place = {
      column,
      widthMm: widthMm[index] ?? 0,
      element: `${where}[${index}]`,
      part,
      isStrong: isStrong || column.isStrong === true,
    };
    return { part, lines: cellLines(cells[index] ?? '', place, faces) };
  });
  return {
    lines: set.map(({ lines }) => lines),
    part: { type: 'TR', children: set.map(({ part }) => part) },
  };
}

/** A row taller than a page goes on over several: each strip takes as many lines of every cell as a page holds. */
function partTallRow(cells: RowLines, roomMm: number): RowLines[] {
  const taken = cells.map((lines) => countThatFit(lines, roomMm));
  const rest = cells.map((lines, index) => lines.slice(taken[index]));
  const strip = cells.map((lines, index) => lines.slice(0, taken[index]));
  return rest.some((lines) => lines.length > 0) ? [strip, ...partTallRow(rest, roomMm)] : [strip];
}

function countThatFit(lines: readonly CellLine[], roomMm: number): number {
  let heightMm = 0;
  const first = lines.findIndex((line) => {
    heightMm += line.heightMm;
    return heightMm > roomMm;
  });
  return first === -1 ? lines.length : first;
}

export function stripPiece(cells: RowLines, { columns, leftMm, widthMm }: Columns, where: string): Piece {
  const topMm = firstTop(columns);
  const textMm = Math.max(...cells.map((lines) => lines.reduce((sum, line) => sum + line.heightMm, 0)));
  const heightMm = Math.max(topMm + textMm + PADDING_MM, isForHand(columns) ? HAND_ROW_MM : 0);
  const boxes = columns.flatMap((column, index) =>
    column.isForHand ? [handBox(leftMm[index] ?? 0, widthMm[index] ?? 0, heightMm, where)] : [],
  );
  const items = cells.flatMap((lines, index) => stackLines(lines, leftMm[index] ?? 0, topMm));
  return { heightMm, gapMm: 0, items: [...boxes, ...items], isKeptWithNext: false, where };
}

const isForHand = (columns: readonly PaperColumn[]): boolean => columns.some((column) => column.isForHand);

/** Beside boxes to write in, a single line stands in their middle, and more lines start where it would. */
const firstTop = (columns: readonly PaperColumn[]): number => {
  const lineMm = paperStyles.cell.sizeMm * paperStyles.cell.leadingEm;
  return isForHand(columns) ? (HAND_ROW_MM - lineMm) / 2 : PADDING_MM;
};

function stackLines(lines: readonly CellLine[], leftMm: number, topMm: number): Placed[] {
  let yMm = topMm;
  return lines.flatMap((line) => {
    const items = line.items.map((item) => moveBy(item, leftMm, yMm));
    yMm += line.heightMm;
    return items;
  });
}

const handBox = (leftMm: number, widthMm: number, heightMm: number, element: string): Placed => ({
  kind: 'path',
  d: `M0 0H${widthMm}V${heightMm - 2}H0Z`,
  xMm: leftMm,
  yMm: 1,
  strokeMm: 0.2,
  tone: 'soft',
  element,
});

/** A line across the whole table. */
export const ruleAt = (yMm: number, thicknessMm: number, tone: Tone, element: string): Placed => ({
  kind: 'rule',
  fromMm: [0, yMm],
  toMm: [TEXT_WIDTH_MM, yMm],
  thicknessMm,
  tone,
  element,
});
