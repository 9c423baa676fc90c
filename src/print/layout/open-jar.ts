import type { Faces } from './face.ts';
import { placeLine } from './place-line.ts';
import type { Box, Placed } from './placed.ts';
import { scalePath } from './scale-path.ts';
import { setLine } from './set-line.ts';

/**
 * Open jar with the period after opening: our own drawing of what Regulation (EC) No 1223/2009, Annex VII, point 2 asks for
 * (a jar with its lid off, the months as a figure and the letter M). The law gives it no size; this one keeps the
 * figures at about 1.7 mm. Common practice, no source.
 */
export const OPEN_JAR_WIDTH_MM = 10;
const UNITS_WIDE = 100;
const UNITS_HIGH = 118;
const SCALE = OPEN_JAR_WIDTH_MM / UNITS_WIDE;
export const OPEN_JAR_HEIGHT_MM = UNITS_HIGH * SCALE;

const STROKE = 5;
const TEXT_EM = 26;
const TEXT_BASELINE = 96;

/** Lid lifted to one side, rim, body with a rounded foot. Units of a hundredth of the width. */
const OUTLINES = [
  'M92 44L15.3 9.8L19.8 3L96.5 34Z',
  'M7 49H93V60H7Z',
  'M14 60H86V101Q86 115 72 115H28Q14 115 14 101Z',
];

export function placeOpenJar(months: number, box: Box, element: string, faces: Faces): Placed[] {
  const outlines = OUTLINES.map(
    (d): Placed => ({
      kind: 'path',
      d: scalePath(d, SCALE),
      xMm: box.left,
      yMm: box.top,
      strokeMm: STROKE * SCALE,
      tone: 'ink',
      element,
    }),
  );
  return [...outlines, ...placeMonths(months, box, element, faces)];
}

function placeMonths(months: number, box: Box, element: string, faces: Faces): Placed[] {
  const sizeMm = TEXT_EM * SCALE;
  const token = { text: `${months} M`, weight: 'bold', joiner: '', ending: '' } as const;
  const line = setLine([token], sizeMm, faces);
  const xMm = (box.left + box.right - line.widthMm) / 2;
  const baselineMm = box.top + TEXT_BASELINE * SCALE;
  return placeLine(line, { xMm, baselineMm, sizeMm, tone: 'ink', element }, faces);
}
