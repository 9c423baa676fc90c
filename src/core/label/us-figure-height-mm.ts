import { type ExactInput, exact } from '../quantity/index.ts';

const MM_PER_INCH = '25.4';
const SQUARE_MM_PER_SQUARE_INCH = '645.16';

/** Smallest type of the net contents by area of the principal display panel; half-open: over < area <= upTo. */
export interface PanelHeight {
  readonly panelSquareInch: { readonly over: number; readonly upTo: number | null };
  readonly minHeightInch: number;
}

/**
 * Least height of the net contents' type in millimetres, by the area of the panel in square millimetres (21 CFR 701.13, as
 * read in summaries). The face of the label is taken for the panel.
 */
export function findUsFigureHeightMm(
  panelSquareMm: ExactInput,
  heights: readonly PanelHeight[],
): number | undefined {
  const area = exact(panelSquareMm);
  const inMm = (squareInch: number) => exact(squareInch).times(SQUARE_MM_PER_SQUARE_INCH);
  const row = heights.find(
    ({ panelSquareInch: { over, upTo } }) => area.gt(inMm(over)) && (upTo === null || area.lte(inMm(upTo))),
  );
  return row && exact(row.minHeightInch).times(MM_PER_INCH).toNumber();
}
