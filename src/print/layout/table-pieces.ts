import { printWords } from '../../words/index.ts';
import { type CellLine, cellLines } from './cell-lines.ts';
import { shareOutColumns } from './column-widths.ts';
import type { Faces } from './face.ts';
import { BODY_BOTTOM_MM, NEXT_TOP_MM, TEXT_WIDTH_MM } from './page-frame.ts';
import type { PaperCell, PaperColumn, PaperTable } from './paper.ts';
import { paperStyles } from './paper-styles.ts';
import type { Piece, Pieces } from './piece.ts';
import { moveBy, type Part, type Placed, type Tone } from './placed.ts';
import { setLine } from './set-line.ts';
import { paragraphAt, setParagraph } from './set-paragraph.ts';
import { splitIntoTokens } from './split-into-tokens.ts';
import { TRIANGLE_EM } from './triangle.ts';

/** White above a table. */
const GAP_MM = 8;
const GUTTER_MM = 4;
const PADDING_MM = 1.1;
/** Room for a figure written by hand. */
const HAND_ROW_MM = 10;

interface Columns {
  readonly columns: readonly PaperColumn[];
  readonly leftMm: readonly number[];
  readonly widthMm: readonly number[];
}

/** Heading, head of columns, one piece a row, totals. */
export function tablePieces(table: PaperTable, index: number, faces: Faces): Pieces {
  const where = `tables[${index}]`;
  checkCellCounts(table, where);
  const columns = placeColumns(table, faces);
  const heading = headingPieces(table.heading, `${where}.heading`, faces);
  const head = headPiece(columns, table.heading === undefined ? GAP_MM : 3, where, faces);
  const rows = table.rows.map((cells, row) =>
    rowPieces(cells, columns, `${where}.rows[${row}]`, head.piece, faces),
  );
  const totals = totalsPiece(table, columns, where, head.piece, faces);
  const empty = table.rows.length === 0 ? nothingPiece(where, faces) : { pieces: [], parts: [] };
  const tableParts = [head.part, ...rows.map(({ part }) => part), ...totals.parts];
  return {
    pieces: [
      ...heading.pieces,
      head.piece,
      ...rows.flatMap(({ pieces }) => pieces),
      ...empty.pieces,
      ...totals.pieces,
    ],
    parts: [...heading.parts, { type: 'Table', children: tableParts }, ...empty.parts],
  };
}

function checkCellCounts(table: PaperTable, where: string): void {
  const count = table.columns.length;
  for (const [index, cells] of [...table.rows, ...(table.totals ? [table.totals] : [])].entries()) {
    if (cells.length !== count) {
      throw new RangeError(`${where}.rows[${index}] has ${cells.length} cells for ${count} columns`);
    }
  }
}

function placeColumns(table: PaperTable, faces: Faces): Columns {
  const { columns } = table;
  const gutters = GUTTER_MM * (columns.length - 1);
  const needs = columns.map((column, index) => {
    const cells = table.rows.map((row) => row[index] ?? '');
    const total = table.totals?.[index] ?? '';
    const isStretchy = column.align === 'left' && column.isForHand !== true;
    const fixed = column.widthMm === undefined ? {} : { fixedMm: column.widthMm };
    return { ...needOf(column, cells, total, faces), ...fixed, isStretchy };
  });
  const widthMm = shareOutColumns(needs, TEXT_WIDTH_MM - gutters);
  const leftMm = widthMm.map((_, index) =>
    widthMm.slice(0, index).reduce((sum, width) => sum + width + GUTTER_MM, 0),
  );
  return { columns, leftMm, widthMm };
}

/** A hair more than measured, so that what just fits is not wrapped by a rounding. */
const SPARE_MM = 0.05;

function needOf(column: PaperColumn, cells: readonly PaperCell[], total: string, faces: Faces) {
  const title = measure(column.title, paperStyles.columnTitle, faces);
  const style = column.isStrong ? paperStyles.strongCell : paperStyles.cell;
  const found = cells.flatMap((cell) => {
    if (typeof cell === 'string') return [measure(cell, style, faces)];
    const remark = measure(cell.remark, paperStyles.remark, faces);
    const indentMm = paperStyles.remark.sizeMm * TRIANGLE_EM;
    return [
      measure(cell.text, style, faces),
      { leastMm: remark.leastMm + indentMm, mostMm: remark.leastMm + indentMm },
    ];
  });
  const all = [title, measure(total, paperStyles.strongCell, faces), ...found];
  return {
    leastMm: all.reduce((most, { leastMm }) => Math.max(most, leastMm), 0) + SPARE_MM,
    mostMm: all.reduce((most, { mostMm }) => Math.max(most, mostMm), 0) + SPARE_MM,
  };
}

function measure(text: string, style: (typeof paperStyles)[keyof typeof paperStyles], faces: Faces) {
  const lines = splitIntoTokens([{ text, weight: style.weight }]);
  const width = (tokens: (typeof lines)[number]): number => setLine(tokens, style.sizeMm, faces).widthMm;
  return {
    leastMm: Math.max(0, ...lines.flat().map((token) => width([token]))),
    mostMm: Math.max(0, ...lines.map(width)),
  };
}

function headingPieces(text: string | undefined, where: string, faces: Faces): Pieces {
  if (text === undefined) return { pieces: [], parts: [] };
  const part: Part = { type: 'H2', children: [] };
  const style = {
    ...paperStyles.heading,
    align: 'left',
    widthMm: TEXT_WIDTH_MM,
    element: where,
    part,
  } as const;
  const paragraph = setParagraph([{ text, weight: style.weight }], style, faces);
  const items = paragraphAt(paragraph, 0, 0);
  const piece: Piece = { heightMm: paragraph.heightMm, gapMm: GAP_MM, items, isKeptWithNext: true, where };
  return { pieces: [piece], parts: [part] };
}

function headPiece(
  columns: Columns,
  gapMm: number,
  where: string,
  faces: Faces,
): { piece: Piece; part: Part } {
  const style = paperStyles.columnTitle;
  const titles = columns.columns.map((column, index) => {
    const part: Part = { type: 'TH', scope: 'Column', children: [] };
    const widthMm = columns.widthMm[index] ?? 0;
    const element = `${where}.columns[${index}]`;
    const spans = [{ text: column.title, weight: style.weight }];
    const paragraph = setParagraph(spans, { ...style, align: column.align, widthMm, element, part }, faces);
    return { paragraph, part, leftMm: columns.leftMm[index] ?? 0 };
  });
  const textMm = Math.max(...titles.map(({ paragraph }) => paragraph.heightMm));
  const heightMm = textMm + PADDING_MM;
  const items = titles.flatMap(({ paragraph, leftMm }) =>
    paragraphAt(paragraph, leftMm, textMm - paragraph.heightMm),
  );
  const piece: Piece = {
    heightMm,
    gapMm,
    items: [...items, ruleAt(heightMm, 0.45, 'ink', where)],
    isKeptWithNext: true,
    where,
  };
  return { piece, part: { type: 'TR', children: titles.map(({ part }) => part) } };
}

const ruleAt = (yMm: number, thicknessMm: number, tone: Tone, element: string): Placed => ({
  kind: 'rule',
  fromMm: [0, yMm],
  toMm: [TEXT_WIDTH_MM, yMm],
  thicknessMm,
  tone,
  element,
});

function rowPieces(
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

function setRow(
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

function stripPiece(cells: RowLines, { columns, leftMm, widthMm }: Columns, where: string): Piece {
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

function totalsPiece(table: PaperTable, columns: Columns, where: string, head: Piece, faces: Faces): Pieces {
  if (table.totals === undefined) return { pieces: [], parts: [] };
  const row = setRow(table.totals, columns, `${where}.totals`, true, faces);
  const hand = { ...columns, columns: columns.columns.map((column) => ({ ...column, isForHand: false })) };
  const strip = stripPiece(row.lines, hand, `${where}.totals`);
  const piece = { ...strip, items: [ruleAt(0, 0.45, 'ink', where), ...strip.items], head };
  return { pieces: [piece], parts: [row.part] };
}

function nothingPiece(where: string, faces: Faces): Pieces {
  const part: Part = { type: 'P', children: [] };
  const style = {
    ...paperStyles.cell,
    tone: 'soft',
    align: 'left',
    widthMm: TEXT_WIDTH_MM,
    element: where,
    part,
  } as const;
  const paragraph = setParagraph([{ text: printWords.paper.nothing, weight: style.weight }], style, faces);
  const items = [...paragraphAt(paragraph, 0, PADDING_MM)];
  const heightMm = paragraph.heightMm + 2 * PADDING_MM;
  return { pieces: [{ heightMm, gapMm: 0, items, isKeptWithNext: false, where }], parts: [part] };
}
