import type { Box, Placed, PlacedBoxes, PlacedText } from './placed.ts';

/** Less than the inset, so that the white never reaches the cut. */
const PAD_MM = 0.6;

/** White under each line and each symbol, so that they can be read over any picture. */
export function placePlates(items: readonly Placed[], fixed: readonly Box[], id: string): PlacedBoxes[] {
  const lines = items.filter((item): item is PlacedText => item.kind === 'text').map(lineBox);
  return [...lines, ...fixed].map(({ left, top, right, bottom }) => ({
    kind: 'boxes',
    boxes: [[0, 0, right - left, bottom - top]],
    xMm: left,
    yMm: top,
    tone: 'paper',
    element: `${id}.plate`,
  }));
}

/** As high as a line with capitals and tails, so that lines under one another leave no stripes. */
const lineBox = ({ ink, xMm, widthMm, baselineMm, sizeMm }: PlacedText): Box => ({
  left: Math.min(ink.left, xMm) - PAD_MM,
  right: Math.max(ink.right, xMm + widthMm) + PAD_MM,
  top: Math.min(ink.top, baselineMm - 0.7 * sizeMm) - PAD_MM,
  bottom: Math.max(ink.bottom, baselineMm + 0.2 * sizeMm) + PAD_MM,
});
