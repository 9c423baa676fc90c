import { labelPrintWords } from '../../words/index.ts';
import { escapeXml, itemToSvg } from './item-to-svg.ts';
import { heightOf, outlinePath, widthOf } from './outline.ts';
import type { PieceLayout } from './piece-layout.ts';
import { toneColour } from './placed.ts';

/**
 * A piece as SVG at true size, for the screen: its cut, the overlap of a strip, and everything at the places that it has in
 * print. What lies beyond the cut is not shown.
 */
export function pieceToSvg(layout: PieceLayout): string {
  const [width, height] = [widthOf(layout.size), heightOf(layout.size)];
  const title = escapeXml(labelPrintWords.pictures[layout.role]);
  const cut = `fill="none" stroke="${toneColour.line}" stroke-width="0.2"`;
  const outline = outlinePath(layout.size);
  return (
    `<svg xmlns="http://www.w3.org/2000/svg" role="img" width="${width}mm" height="${height}mm" viewBox="0 0 ${width} ${height}" ` +
    `xml:space="preserve" font-family="'Source Sans 3 Variable', 'Source Sans 3', sans-serif"><title>${title}</title>` +
    `<path d="${outline}" fill="#ffffff"/>${layout.items.map(itemToSvg).join('')}` +
    `${overlapOf(layout)}<path d="${outline}" ${cut}/></svg>`
  );
}

/** The strip at the right end that the left end covers. */
function overlapOf({ surface }: PieceLayout): string {
  if (surface.shape !== 'wrap' || surface.overlapMm === 0) return '';
  const { circumferenceMm: x, heightMm } = surface;
  return `<path d="M${x} 0V${heightMm}" stroke="${toneColour.line}" stroke-width="0.2" stroke-dasharray="1 1"/>`;
}
