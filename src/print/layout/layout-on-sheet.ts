import { done, type Result } from '../../core/problem.ts';
import { checkSheetRun, fitsOn } from './check-sheet.ts';
import { heightOf, outlinePath, widthOf } from './outline.ts';
import { partsOfPiece, withParts } from './parts-of-piece.ts';
import type { PieceLayout } from './piece-layout.ts';
import type { Page, Part, Placed, PrintDocument } from './placed.ts';
import type { SheetGeometry, SheetRun } from './sheet-geometry.ts';
import { placeItems, turnedSize } from './turn.ts';

/**
 * So many copies of each piece on bought sheets, one piece after the other, from the first free position on; a piece that is
 * smaller than its label stands in its middle, and is turned by a quarter where it fits no other way. Positions are exact sums of what was measured, moved by the printer's offset.
 */
export function layoutOnSheet(
  pieces: readonly PieceLayout[],
  sheet: SheetGeometry,
  run: SheetRun,
): Result<PrintDocument> {
  const problems = checkSheetRun(pieces, sheet, run);
  if (problems.length > 0) return { ok: false, problems };
  const perSheet = sheet.columns * sheet.rows;
  const skipped = (run.firstPosition ?? 1) - 1;
  const pages: Placed[][] = [];
  const parts: Part[] = [];
  const labels = pieces.flatMap((piece) => Array.from({ length: run.copies }, () => piece));
  labels.forEach((piece, index) => {
    const position = skipped + index;
    const placed = placePiece(piece, placeOn(sheet, position % perSheet), sheet, run);
    if (index === 0 || position % perSheet === 0) pages.push([]);
    pages.at(-1)?.push(...placed.items);
    parts.push(placed.part);
  });
  return done({
    title: run.title,
    pages: pages.map((items) => pageOf(sheet, items)),
    structure: { type: 'Document', children: parts },
  });
}

const pageOf = ({ pageWidthMm, pageHeightMm }: SheetGeometry, items: readonly Placed[]): Page => ({
  widthMm: pageWidthMm,
  heightMm: pageHeightMm,
  items,
});

/** Where the next print goes on, after so many labels; 1 where the sheet is full. */
export const positionAfter = (sheet: SheetGeometry, firstPosition: number, labels: number): number =>
  ((firstPosition - 1 + labels) % (sheet.columns * sheet.rows)) + 1;

/** Left and top of a label, counted from 0, left to right and then down. */
export function placeOn(sheet: SheetGeometry, index: number): readonly [number, number] {
  const column = index % sheet.columns;
  const row = Math.floor(index / sheet.columns);
  return [sheet.leftMm + column * sheet.pitchAcrossMm, sheet.topMm + row * sheet.pitchDownMm];
}

function placePiece(
  piece: PieceLayout,
  [left, top]: readonly [number, number],
  { label }: SheetGeometry,
  { offsetMm, hasOutlines }: SheetRun,
): { items: Placed[]; part: Part } {
  const labelX = left + (offsetMm?.across ?? 0);
  const labelY = top + (offsetMm?.down ?? 0);
  const isTurned = !fitsOn(piece.size, label);
  const size = isTurned ? turnedSize(piece.size) : piece.size;
  const xMm = labelX + (widthOf(label) - widthOf(size)) / 2;
  const yMm = labelY + (heightOf(label) - heightOf(size)) / 2;
  const parts = partsOfPiece(piece);
  const items = placeItems(withParts(piece.items, parts), [xMm, yMm], piece.size, isTurned);
  const outline: Placed = {
    kind: 'path',
    d: outlinePath(label),
    xMm: labelX,
    yMm: labelY,
    strokeMm: 0.1,
    tone: 'soft',
    element: 'sheet.outline',
  };
  return {
    items: hasOutlines === true ? [...items, outline] : items,
    part: { type: 'Sect', children: [...parts.values()] },
  };
}
