import { type Exact, exact } from '../../core/quantity/index.ts';
import type { PrintRules } from './print-rules.ts';
import type { Surface } from './surface.ts';

export const MM_PER_INCH = 25.4;
const SQUARE_MM_PER_SQUARE_INCH = exact('645.16');

/**
 * Area of the principal display panel in square millimetres: a face as it is, 40 % of height times circumference for a strip
 * round a cylinder, all of a round lid. Source: 21 CFR 701.13 (rectangle and cylinder read in summaries; the round top as an
 * "obvious principal display panel" from memory).
 */
export function panelAreaMm2(surface: Surface): Exact {
  if (surface.shape === 'wrap') {
    return exact(surface.circumferenceMm).times(surface.heightMm).times('0.4');
  }
  if (surface.shape === 'rectangle') return exact(surface.widthMm).times(surface.heightMm);
  return exact(surface.diameterMm).pow(2).times(Math.PI).div(4);
}

/** Least height of the net contents' letters on this panel, in millimetres. Bands include their upper bound. */
export function findNetLetterHeightMm(
  surface: Surface,
  { unitedStates: { netHeights } }: PrintRules,
): number {
  const area = panelAreaMm2(surface);
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
