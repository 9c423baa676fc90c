import type { FaceSize } from './outline.ts';
import type { Surface } from './surface.ts';

/** What is cut out of paper for a surface: a strip round a jar is a rectangle as long as circumference and overlap. */
export function faceOfSurface(surface: Surface): FaceSize {
  if (surface.shape !== 'wrap') return surface;
  const { circumferenceMm, overlapMm, heightMm } = surface;
  return { shape: 'rectangle', widthMm: circumferenceMm + overlapMm, heightMm };
}
