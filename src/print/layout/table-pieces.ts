import { printWords } from '../../words/index.ts';
import type { Faces } from './face.ts';
import { TEXT_WIDTH_MM } from './page-frame.ts';
import type { PaperTable } from './paper.ts';
import { paperStyles } from './paper-styles.ts';
import type { Piece, Pieces } from './piece.ts';
import type { Part } from './placed.ts';
import { paragraphAt, setParagraph } from './set-paragraph.ts';
import { type Columns, placeColumns } from './table-columns.ts';
import { PADDING_MM, rowPieces, ruleAt, setRow, stripPiece } from './table-row.ts';

/** White above a table. */
const GAP_MM = 8;

/** How its heading stands: as a heading of the paper, or, within a chapter, as less than that chapter's own. */
export interface TableTitle {
  readonly style: (typeof paperStyles)['heading' | 'tableTitle'];
  readonly type: Part['type'];
  readonly gapMm: number;
}

const ALONE: TableTitle = { style: paperStyles.heading, type: 'H2', gapMm: GAP_MM };

/** Heading, head of columns, one piece a row, totals. */
export function tablePieces(
  table: PaperTable,
  where: string,
  faces: Faces,
  title: TableTitle = ALONE,
): Pieces {
  checkCellCounts(table, where);
  const columns = placeColumns(table, faces);
  const heading = headingPieces(table.heading, `${where}.heading`, title, faces);
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

function headingPieces(text: string | undefined, where: string, title: TableTitle, faces: Faces): Pieces {
  if (text === undefined) return { pieces: [], parts: [] };
  const part: Part = { type: title.type, children: [] };
  const style = {
    ...title.style,
    align: 'left',
    widthMm: TEXT_WIDTH_MM,
    element: where,
    part,
  } as const;
  const paragraph = setParagraph([{ text, weight: style.weight }], style, faces);
  const items = paragraphAt(paragraph, 0, 0);
  const { gapMm } = title;
  const piece: Piece = { heightMm: paragraph.heightMm, gapMm, items, isKeptWithNext: true, where };
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
