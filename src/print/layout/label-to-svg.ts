import { printWords } from '../../words/index.ts';
import { escapeXml, itemToSvg } from './item-to-svg.ts';
import type { FaceLayout, LabelLayout } from './label.ts';
import { heightOf, outlinePath, widthOf } from './outline.ts';
import { toneColour } from './placed.ts';

/**
 * Both faces as SVG at true size, for the screen. Places are in millimetres; a text is stretched to the width it has in
 * print (textLength), so that a screen font of other widths cannot move or overlap anything.
 */
export const labelToSvg = (layout: LabelLayout): { readonly front: string; readonly back: string } => ({
  front: faceToSvg(layout.front),
  back: faceToSvg(layout.back),
});

function faceToSvg(face: FaceLayout): string {
  const width = widthOf(face.size);
  const height = heightOf(face.size);
  const title = escapeXml(printWords.label.faces[face.face]);
  const cut = `<path d="${outlinePath(face.size)}" fill="#ffffff" stroke="${toneColour.line}" stroke-width="0.2"/>`;
  const items = face.items.map(itemToSvg).join('');
  return (
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}mm" height="${height}mm" viewBox="0 0 ${width} ${height}" ` +
    `xml:space="preserve" font-family="'Source Sans 3 Variable', 'Source Sans 3', sans-serif"><title>${title}</title>${cut}${items}</svg>`
  );
}
