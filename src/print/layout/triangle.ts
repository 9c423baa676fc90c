import type { Part, PlacedPath } from './placed.ts';

/** The sign of a caution: a filled triangle as high as a capital, standing on the baseline. */
export const placeTriangle = (
  xMm: number,
  baselineMm: number,
  sizeMm: number,
  element: string,
  part?: Part,
): PlacedPath => ({
  kind: 'path',
  d: `M${short(sizeMm * 0.36)} 0L${short(sizeMm * 0.72)} ${short(sizeMm * 0.64)}H0Z`,
  xMm,
  yMm: baselineMm - sizeMm * 0.64,
  strokeMm: null,
  tone: 'ink',
  element,
  ...(part === undefined ? {} : { part }),
});

export const TRIANGLE_EM = 1;

const short = (mm: number): number => Math.round(mm * 1000) / 1000;
