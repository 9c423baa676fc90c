import { done, type Problem, problem, type Result, refused } from '../../core/problem.ts';
import type { Artwork } from './label-design.ts';
import { type FaceSize, heightOf, outlinePath, widthOf } from './outline.ts';
import type { PlacedImage } from './placed.ts';
import { readImageSize } from './read-image-size.ts';

/** Below this a picture looks coarse in print. Common practice, no source. */
export const LEAST_DOTS_PER_INCH = 200;
/** More is no bleed any more. Common practice, no source. */
export const MOST_BLEED_MM = 10;

export interface PlacedArtwork {
  readonly image: PlacedImage;
  readonly notes: readonly Problem[];
}

/** The picture as large as it takes to cover the face and its bleed, in the middle, cut to the outline with the bleed round it. */
export function placeArtwork(artwork: Artwork, size: FaceSize, id: string): Result<PlacedArtwork> {
  const element = `${id}.artwork`;
  const { bytes, bleedMm } = artwork;
  if (!(Number.isFinite(bleedMm) && bleedMm >= 0 && bleedMm <= MOST_BLEED_MM)) {
    return refused(problem('bleed-wrong', element, { found: String(bleedMm), allowed: MOST_BLEED_MM }));
  }
  const read = readImageSize(bytes);
  if (read === null) return refused(problem('artwork-not-readable', element));
  if (read.orientation !== 1) return refused(problem('artwork-stored-turned', element));
  const bled = growBy(size, bleedMm);
  const scale = Math.max(widthOf(bled) / read.widthPx, heightOf(bled) / read.heightPx);
  const [widthMm, heightMm] = [read.widthPx * scale, read.heightPx * scale];
  const image: PlacedImage = {
    kind: 'image',
    bytes,
    type: read.type,
    xMm: (widthOf(size) - widthMm) / 2,
    yMm: (heightOf(size) - heightMm) / 2,
    widthMm,
    heightMm,
    clip: { d: outlinePath(bled), xMm: -bleedMm, yMm: -bleedMm },
    tone: 'ink',
    element,
  };
  return done({ image, notes: [...notesOn(25.4 / scale, element), ...unmeasured(artwork, element)] });
}

const notesOn = (dotsPerInch: number, element: string): Problem[] =>
  dotsPerInch >= LEAST_DOTS_PER_INCH
    ? []
    : [
        problem('artwork-coarse', element, {
          found: Math.floor(dotsPerInch),
          allowed: LEAST_DOTS_PER_INCH,
        }),
      ];

const unmeasured = ({ use }: Artwork, element: string): Problem[] =>
  use === 'whole-face' ? [problem('artwork-words-not-measured', element)] : [];

function growBy(size: FaceSize, mm: number): FaceSize {
  if (size.shape === 'round') return { ...size, diameterMm: size.diameterMm + 2 * mm };
  const { cornerRadiusMm = 0 } = size;
  return {
    shape: 'rectangle',
    widthMm: size.widthMm + 2 * mm,
    heightMm: size.heightMm + 2 * mm,
    ...(cornerRadiusMm > 0 && { cornerRadiusMm: cornerRadiusMm + mm }),
  };
}
