import { usPanelAreaMm2 } from '../../core/label/index.ts';
import { exact } from '../../core/quantity/index.ts';
import type { PrintRules } from './print-rules.ts';
import type { Surface } from './surface.ts';

export const MM_PER_INCH = 25.4;
const SQUARE_MM_PER_SQUARE_INCH = exact('645.16');

/** Least height of the net contents' letters on this panel, in millimetres. Bands include their upper bound. */
export function findNetLetterHeightMm(
  surface: Surface,
  { unitedStates: { netHeights } }: PrintRules,
): number {
  const area = usPanelAreaMm2(surface);
  const row = netHeights.find(
    ({ panelSquareInch: { upTo } }) => upTo === null || area.lte(SQUARE_MM_PER_SQUARE_INCH.times(upTo)),
  );
  if (row === undefined) throw new Error('the bands of panel areas have no end');
  return row.minHeightInch * MM_PER_INCH;
}

/** Least height of the ingredients' lower-case letters in the United States, in millimetres. */
export function findIngredientLetterHeightMm(
  containerSurfaceMm2: number | undefined,
  { unitedStates: { ingredients } }: PrintRules,
): number {
  const { minHeightInch, smallMinHeightInch, smallBelowSquareInch } = ingredients;
  const bound = SQUARE_MM_PER_SQUARE_INCH.times(smallBelowSquareInch);
  const isSmall = containerSurfaceMm2 !== undefined && exact(containerSurfaceMm2).lt(bound);
  return (isSmall ? smallMinHeightInch : minHeightInch) * MM_PER_INCH;
}
