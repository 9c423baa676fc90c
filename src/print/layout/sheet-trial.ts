import { done, type Result } from '../../core/problem.ts';
import { labelPrintWords } from '../../words/index.ts';
import { checkSheet } from './check-sheet.ts';
import type { Faces } from './face.ts';
import { placeOn } from './layout-on-sheet.ts';
import { heightOf, outlinePath, widthOf } from './outline.ts';
import { placeLine } from './place-line.ts';
import type { Part, Placed, PrintDocument } from './placed.ts';
import { setLine } from './set-line.ts';
import type { SheetGeometry, SheetRun } from './sheet-geometry.ts';

/** Every position of a sheet as a hairline with its number, moved by the printer's offset. */
export function layoutSheetTrial(
  sheet: SheetGeometry,
  { title, offsetMm = { across: 0, down: 0 } }: Pick<SheetRun, 'title' | 'offsetMm'>,
  faces: Faces,
): Result<PrintDocument> {
  const problems = checkSheet(sheet);
  if (problems.length > 0) return { ok: false, problems };
  const part: Part = { type: 'P', children: [] };
  const items = Array.from({ length: sheet.columns * sheet.rows }, (_, index): Placed[] => {
    const [left, top] = placeOn(sheet, index);
    return position(index + 1, left + offsetMm.across, top + offsetMm.down, sheet, part, faces);
  });
  const heading: Part = { type: 'Figure', alt: labelPrintWords.sheet.trial, children: [] };
  const [first = [], ...rest] = items;
  const marked = first.map((item) => (item.kind === 'path' ? { ...item, part: heading } : item));
  return done({
    title,
    pages: [{ widthMm: sheet.pageWidthMm, heightMm: sheet.pageHeightMm, items: [marked, ...rest].flat() }],
    structure: { type: 'Document', children: [heading, part] },
  });
}

/** Readable at arm's length, and small enough for the smallest label. */
const NUMBER_MM = 4;

function position(
  number: number,
  xMm: number,
  yMm: number,
  { label }: SheetGeometry,
  part: Part,
  faces: Faces,
): Placed[] {
  const outline: Placed = {
    kind: 'path',
    d: outlinePath(label),
    xMm,
    yMm,
    strokeMm: 0.2,
    tone: 'ink',
    element: 'sheet.outline',
  };
  const line = setLine([{ text: String(number), weight: 'bold', joiner: '', ending: '' }], NUMBER_MM, faces);
  const place = {
    xMm: xMm + (widthOf(label) - line.widthMm) / 2,
    baselineMm: yMm + heightOf(label) / 2 + NUMBER_MM / 3,
    sizeMm: NUMBER_MM,
    tone: 'ink' as const,
    element: 'sheet.number',
    part,
  };
  return [outline, ...placeLine(line, place, faces)];
}
