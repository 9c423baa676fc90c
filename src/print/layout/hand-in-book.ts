import type { Placed } from './placed.ts';
import { scalePath } from './scale-path.ts';

/**
 * Hand in book: our own drawing of what Regulation (EC) No 1223/2009, Annex VII, point 1 shows (an open book with a hand laid on
 * it), which tells that more stands on an enclosed or attached leaflet. The law gives it no size; as wide as the open jar.
 * Common practice, no source.
 */
export const HAND_IN_BOOK_WIDTH_MM = 10;
const UNITS_WIDE = 100;
const UNITS_HIGH = 84;
const SCALE = HAND_IN_BOOK_WIDTH_MM / UNITS_WIDE;
export const HAND_IN_BOOK_HEIGHT_MM = UNITS_HIGH * SCALE;

const STROKE = 4.5;
/** Two pages that bend down to the spine, lines of print on the left one. Units of a hundredth of the width. */
const BOOK = [
  'M50 14C38 4 20 3 4 8V70C20 65 38 66 50 76C62 66 80 65 96 70V8C80 3 62 4 50 14Z',
  'M50 14V76',
  'M14 22C23 20 32 21 40 25M14 34C23 32 32 33 40 37M14 46C23 44 32 45 40 49',
];
/** A hand from below, its first finger stretched out upon the right page. */
const HAND =
  'M57 28C57 22 67 22 67 28V44C69 41 75 42 75.5 46C77.5 43 83 44 83.5 48.5C85.5 46 90 47.5 90 52V64' +
  'C90 70 87 74 85 77V83H61V77L49.5 61C45 54.5 51 50.5 55 55L57 57.5Z';

export function placeHandInBook(leftMm: number, topMm: number, element: string): Placed[] {
  const path = (d: string, strokeMm: number | null, tone: 'ink' | 'paper' = 'ink'): Placed => ({
    kind: 'path',
    d: scalePath(d, SCALE),
    xMm: leftMm,
    yMm: topMm,
    strokeMm,
    tone,
    element,
  });
  const lines = BOOK.map((d) => path(d, STROKE * SCALE));
  // White round the hand first, so that it lies on the page and not among its lines.
  return [...lines, path(HAND, STROKE * 1.6 * SCALE, 'paper'), path(HAND, null)];
}
