import { type FaceSize, heightOf, widthOf } from './outline.ts';
import { moveBy, type Placed } from './placed.ts';

/** A quarter on: what was wide is high. */
export const turnedSize = (size: FaceSize): FaceSize =>
  size.shape === 'round' ? size : { ...size, widthMm: size.heightMm, heightMm: size.widthMm };

/** A circle and a square look the same however they lie. */
export const isTurnable = (size: FaceSize): boolean => widthOf(size) !== heightOf(size);

/**
 * Items of a piece at their place, or turned by a quarter clockwise so that the turned piece has this place as its top left:
 * about the point where its own top left comes to lie, one height to the right.
 */
export function placeItems(
  items: readonly Placed[],
  [xMm, yMm]: readonly [number, number],
  size: FaceSize,
  isTurned: boolean,
): Placed[] {
  if (!isTurned) return items.map((item) => moveBy(item, xMm, yMm));
  const turnedAbout = { xMm: xMm + heightOf(size), yMm };
  return items.map((item) => ({ ...moveBy(item, turnedAbout.xMm, turnedAbout.yMm), turnedAbout }));
}
