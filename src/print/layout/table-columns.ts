import { shareOutColumns } from './column-widths.ts';
import type { Faces } from './face.ts';
import { TEXT_WIDTH_MM } from './page-frame.ts';
import type { PaperCell, PaperColumn, PaperTable } from './paper.ts';
import { paperStyles } from './paper-styles.ts';
import { setLine } from './set-line.ts';
import { splitIntoTokens } from './split-into-tokens.ts';
import { TRIANGLE_EM } from './triangle.ts';

/** White between two columns. */
const GUTTER_MM = 4;

/** Columns with their places across the page. */
export interface Columns {
  readonly columns: readonly PaperColumn[];
  readonly leftMm: readonly number[];
  readonly widthMm: readonly number[];
}

/** Widths from what stands in the columns, where none are given. */
export function placeColumns(table: PaperTable, faces: Faces): Columns {
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
