import type { Weight } from './face.ts';
import type { PieceText } from './label-design.ts';

/** In which weight the text of an element is set; its heading is always bold. */
export function weightOf(element: PieceText['element']): Weight {
  if (element === 'name' || element === 'content') return 'bold';
  return element === 'brand' || element === 'batch' ? 'semibold' : 'regular';
}
