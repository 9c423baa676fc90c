import type { Placed } from './placed.ts';
import { scalePath } from './scale-path.ts';

/**
 * Hourglass before a date: our own drawing of what Regulation (EC) No 1223/2009, Annex VII, point 3 shows, in place of the words
 * "best used before the end of". The law gives it no size; here it is a little higher than a capital.
 */
const UNITS_WIDE = 60;
const UNITS_HIGH = 100;
/** Height and width in ems of the text beside it, and the white after it. */
export const HOURGLASS_HEIGHT_EM = 0.95;
export const HOURGLASS_LEAD_EM = (HOURGLASS_HEIGHT_EM * UNITS_WIDE) / UNITS_HIGH + 0.25;
/** How far it hangs below the baseline, so that it stands in the middle of the figures. */
const BELOW_EM = 0.15;

const STROKE = 7;
/** Two plates and the waisted glass between them. */
const FRAME =
  'M4 4H56M4 96H56M10 4V18C10 34 26 42 26 50C26 58 10 66 10 82V96M50 4V18C50 34 34 42 34 50C34 58 50 66 50 82V96';
/** What has run down, and what has not yet. */
const SAND = 'M16 92C16 78 26 72 30 70C34 72 44 78 44 92ZM17 24H43C41 34 33 40 30 44C27 40 19 34 17 24Z';

export function placeHourglass(xMm: number, baselineMm: number, sizeMm: number, element: string): Placed[] {
  const scale = (HOURGLASS_HEIGHT_EM * sizeMm) / UNITS_HIGH;
  const yMm = baselineMm + (BELOW_EM - HOURGLASS_HEIGHT_EM) * sizeMm;
  const path = (d: string, strokeMm: number | null): Placed => ({
    kind: 'path',
    d: scalePath(d, scale),
    xMm,
    yMm,
    strokeMm,
    tone: 'ink',
    element,
  });
  return [path(FRAME, STROKE * scale), path(SAND, null)];
}
