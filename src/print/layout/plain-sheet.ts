import { faceOfSurface } from './face-of-surface.ts';
import { heightOf, widthOf } from './outline.ts';
import type { SheetGeometry } from './sheet-geometry.ts';
import type { Surface } from './surface.ts';

/** Room to cut in between two labels, and what a printer leaves white along each edge. Common practice, no source. */
const GAP_MM = 4;
const MARGIN_MM = 7;

/** A4 (ISO 216) in the middle of which as many labels of this surface stand as go on it, for cutting by hand. */
export function plainSheetFor(surface: Surface): SheetGeometry {
  const [pageWidthMm, pageHeightMm] = [210, 297];
  const face = faceOfSurface(surface);
  const [width, height] = [widthOf(face), heightOf(face)];
  const columns = countIn(pageWidthMm, width);
  const rows = countIn(pageHeightMm, height);
  return {
    pageWidthMm,
    pageHeightMm,
    columns,
    rows,
    leftMm: startOf(pageWidthMm, width, columns),
    topMm: startOf(pageHeightMm, height, rows),
    pitchAcrossMm: width + GAP_MM,
    pitchDownMm: height + GAP_MM,
    label: face,
  };
}

const countIn = (pageMm: number, sizeMm: number): number =>
  Math.max(1, Math.floor((pageMm - 2 * MARGIN_MM + GAP_MM) / (sizeMm + GAP_MM)));

const startOf = (pageMm: number, sizeMm: number, count: number): number =>
  Math.max(0, Math.round(((pageMm - count * sizeMm - (count - 1) * GAP_MM) / 2) * 100) / 100);
