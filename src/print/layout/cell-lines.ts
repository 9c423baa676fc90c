import type { Faces } from './face.ts';
import type { PaperCell, PaperColumn } from './paper.ts';
import { paperStyles } from './paper-styles.ts';
import { moveBy, type Part, type Placed } from './placed.ts';
import { type SetParagraph, setParagraph } from './set-paragraph.ts';
import { placeTriangle, TRIANGLE_EM } from './triangle.ts';

/** A line of a cell, from its own top left: the smallest strip that a tall row is parted into. */
export interface CellLine {
  readonly items: readonly Placed[];
  readonly heightMm: number;
}

export interface CellPlace {
  readonly column: PaperColumn;
  readonly widthMm: number;
  readonly element: string;
  readonly part: Part;
  /** A row of totals is strong in every column. */
  readonly isStrong: boolean;
}

export function cellLines(cell: PaperCell, place: CellPlace, faces: Faces): CellLine[] {
  const { text, remark } = typeof cell === 'string' ? { text: cell, remark: '' } : cell;
  const style = place.isStrong ? paperStyles.strongCell : paperStyles.cell;
  const { align } = place.column;
  const shared = { align, widthMm: place.widthMm, element: place.element, part: place.part };
  const lines =
    text === ''
      ? []
      : linesOf(setParagraph([{ text, weight: style.weight }], { ...style, ...shared }, faces));
  return remark === '' ? lines : [...followed(lines), ...remarkLines(remark, place, faces)];
}

/** A blank parts the text from the remark for whoever hears or copies it. */
const followed = (lines: readonly CellLine[]): CellLine[] =>
  lines.map((line) => ({
    ...line,
    items: line.items.map((item) => (item.kind === 'text' ? { ...item, hasSpaceAfter: true } : item)),
  }));

function remarkLines(remark: string, place: CellPlace, faces: Faces): CellLine[] {
  const style = paperStyles.remark;
  const indentMm = style.sizeMm * TRIANGLE_EM;
  const { element, part } = place;
  const paragraph = setParagraph(
    [{ text: remark, weight: style.weight }],
    { ...style, align: 'left', widthMm: place.widthMm - indentMm, element, part },
    faces,
  );
  return linesOf(paragraph).map((line, index) => {
    const items: Placed[] = line.items.map((item) => moveBy(item, indentMm, 0));
    const first = paragraph.lines[0]?.[0];
    if (index === 0 && first !== undefined) {
      items.unshift(placeTriangle(0, first.baselineMm, style.sizeMm, element));
    }
    return { ...line, items };
  });
}

const linesOf = (paragraph: SetParagraph): CellLine[] =>
  paragraph.lines.map((line, index) => ({
    items: line.map((item) => moveBy(item, 0, -index * paragraph.lineMm)),
    heightMm: paragraph.lineMm,
  }));
