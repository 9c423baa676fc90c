import { done, type Problem, problem, type Result } from '../../core/problem.ts';
import { cutMarks } from './cut-marks.ts';
import type { Faces } from './face.ts';
import { type FaceSize, heightOf, widthOf } from './outline.ts';
import { partsOfPiece, withParts } from './parts-of-piece.ts';
import type { PieceLayout } from './piece-layout.ts';
import type { Page, Part, Placed, PrintDocument } from './placed.ts';
import { placeSheetFrame, SHEET, SHEET_ACROSS, type SheetFormat, type SheetHeading } from './sheet-frame.ts';
import { isTurnable, placeItems, turnedSize } from './turn.ts';

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

/** Nothing that is larger than the paper, however it lies, can be cut out of it. */
function checkSizes(pieces: readonly PieceLayout[]): Problem[] {
  const isFor = (format: SheetFormat): boolean => pieces.every((piece) => waysOf(piece, format).length > 0);
  if (isFor(SHEET) || isFor(SHEET_ACROSS)) return [];
  const across = `${SHEET_ACROSS.widthMm - 2 * SHEET_ACROSS.marginMm} x ${SHEET_ACROSS.bottomMm - SHEET_ACROSS.topMm} mm`;
  return pieces
    .filter((piece) => waysOf(piece, SHEET_ACROSS).length === 0)
    .map(({ id, size }) =>
      problem('piece-larger-than-paper', id, {
        found: `${widthOf(size)} x ${heightOf(size)} mm`,
        allowed: across,
      }),
    );
}

/** A piece as it lies on the paper. */
interface Lying {
  readonly piece: PieceLayout;
  readonly isTurned: boolean;
  /** As it lies. */
  readonly size: FaceSize;
}

interface Cell extends Lying {
  readonly xMm: number;
  readonly yMm: number;
}

interface LaidOut {
  readonly format: SheetFormat;
  readonly sheets: readonly (readonly Cell[])[];
}

/** How a piece may lie on this paper: as it is first, then turned by a quarter. */
const waysOf = (piece: PieceLayout, format: SheetFormat): Lying[] =>
  [false, ...(isTurnable(piece.size) ? [true] : [])]
    .map((isTurned) => ({ piece, isTurned, size: isTurned ? turnedSize(piece.size) : piece.size }))
    .filter(({ size }) => fitsOn(size, format));

/** Every choice of one way for each piece; the first has each in its first. */
const choicesOf = (ways: readonly (readonly Lying[])[]): Lying[][] =>
  ways.reduce<Lying[][]>(
    (choices, each) => each.flatMap((way) => choices.map((choice) => [...choice, way])),
    [[]],
  );

interface Plan {
  readonly format: SheetFormat;
  readonly lying: readonly Lying[];
}

const countTurned = ({ lying }: Plan): number => lying.filter(({ isTurned }) => isTurned).length;

/** Upright paper before paper across, and pieces as they are before turned ones. */
const plansFor = (pieces: readonly PieceLayout[]): Plan[] =>
  [SHEET, SHEET_ACROSS]
    .flatMap((format) =>
      choicesOf(pieces.map((piece) => waysOf(piece, format))).map((lying) => ({ format, lying })),
    )
    .sort((one, other) => countTurned(one) - countTurned(other));

/**
 * Paper upright or across, pieces as they are or turned, the pieces of a copy together or each kind by itself: whichever takes
 * the fewest sheets, and of those the first.
 */
function layOutClosest(pieces: readonly PieceLayout[], copies: number): LaidOut {
  let best: LaidOut | undefined;
  for (const { format, lying } of plansFor(pieces)) {
    const inCopies = Array.from({ length: copies }, () => lying).flat();
    const byKind = lying.flatMap((each) => Array.from({ length: copies }, () => each));
    for (const order of lying.length > 1 ? [inCopies, byKind] : [inCopies]) {
      const sheets = fillSheets(order, gapsOf(lying, format), format);
      if (best === undefined || sheets.length < best.sheets.length) best = { format, sheets };
    }
  }
  if (best === undefined) throw new Error('the sizes were checked: some paper takes every piece');
  return best;
}

const fitsOn = (size: FaceSize, format: SheetFormat): boolean =>
  widthOf(size) <= format.widthMm - 2 * format.marginMm + HAIR_MM &&
  heightOf(size) <= format.bottomMm - format.topMm + HAIR_MM;

/** As many in a row as fit with the least gap; what is left over widens the gaps. */
function gapBetween(sizeMm: number, roomMm: number, leastMm: number): number {
  const count = Math.floor((roomMm + leastMm) / (sizeMm + leastMm));
  return count < 2 ? leastMm : Math.min(WIDE_GAP_MM, (roomMm - count * sizeMm) / (count - 1));
}

interface Gaps {
  readonly across: number;
  readonly down: number;
}

function gapsOf(lying: readonly Lying[], format: SheetFormat): Gaps {
  const least = Math.max(
    ...lying.map(({ size, piece }) => Math.max(LEAST_GAP_MM[size.shape], 2 * piece.bleedMm)),
  );
  const sizes = new Set(lying.map(({ size }) => `${widthOf(size)} ${heightOf(size)}`));
  const [first] = lying;
  if (sizes.size > 1 || first === undefined) return { across: least, down: least };
  return {
    across: gapBetween(widthOf(first.size), format.widthMm - 2 * format.marginMm, least),
    down: gapBetween(heightOf(first.size), format.bottomMm - format.topMm, least),
  };
}

/** Smaller than any printer places: sums of millimetres must not push a face that just fits to the next row. */
const HAIR_MM = 1e-6;

/** Row by row, one after the other. */
function fillSheets(order: readonly Lying[], gaps: Gaps, format: SheetFormat): Cell[][] {
  const right = format.widthMm - format.marginMm + HAIR_MM;
  const sheets: Cell[][] = [[]];
  let xMm = format.marginMm;
  let yMm = format.topMm;
  let rowMm = 0;
  for (const lying of order) {
    const [width, height] = [widthOf(lying.size), heightOf(lying.size)];
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
    sheets.at(-1)?.push({ ...lying, xMm, yMm });
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

function placeCell({ piece, isTurned, xMm, yMm }: Cell): { items: Placed[]; part: Part } {
  const parts = partsOfPiece(piece);
  const items = [...withParts(piece.items, parts), ...cutMarks(piece)];
  return {
    items: placeItems(items, [xMm, yMm], piece.size, isTurned),
    part: { type: 'Sect', children: [...parts.values()] },
  };
}
