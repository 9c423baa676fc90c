import type { Faces } from './face.ts';
import { joinPieces } from './join-pieces.ts';
import { outlinePath } from './outline.ts';
import { TEXT_WIDTH_MM } from './page-frame.ts';
import type { PaperPicture } from './paper.ts';
import { paperStyles } from './paper-styles.ts';
import type { Pieces } from './piece.ts';
import type { Part, PlacedImage } from './placed.ts';
import { type ImageSize, readImageSize } from './read-image-size.ts';
import { keptWithNext, plainPieces } from './text-pieces.ts';

/** Half a page: beside it there is room for what is said of it. */
const HIGHEST_MM = 120;
/** A picture of few dots is not blown up into blocks. Common practice, no source. */
const LEAST_DOTS_PER_INCH = 100;
/** What the drawing library unpacks dot by dot; a photograph as JPEG goes in as it is. */
const MOST_PNG_DOTS = 4_000_000;
const [BIT_DEPTH_AT, INTERLACE_AT] = [24, 28];

/**
 * Whether paper can show it as it is meant to be seen: stored upright, and of a PNG what the drawing library reads (up to
 * 8 bits a sample, not interlaced: ISO/IEC 15948, 11.2.2). Anything else is named instead.
 */
export function isPrintable(bytes: Uint8Array): boolean {
  const read = readImageSize(bytes);
  if (read === null || read.orientation !== 1) return false;
  if (read.type === 'jpeg') return true;
  return (
    read.widthPx * read.heightPx <= MOST_PNG_DOTS &&
    (bytes[BIT_DEPTH_AT] ?? 0) <= 8 &&
    bytes[INTERLACE_AT] === 0
  );
}

/** Its name, and the picture under it in one piece. One that cannot be shown has its name alone. */
export function picturePieces(
  { name, bytes, highestMm = HIGHEST_MM }: PaperPicture,
  where: string,
  faces: Faces,
): Pieces {
  const caption = plainPieces(name, paperStyles.factLabel, `${where}.name`, 'P', 2.6, faces);
  const read = isPrintable(bytes) ? readImageSize(bytes) : null;
  if (read === null) return caption;
  const part: Part = { type: 'Figure', alt: name, children: [] };
  const { widthMm, heightMm } = sizeOf(read, highestMm);
  const item: PlacedImage = {
    kind: 'image',
    bytes,
    type: read.type,
    xMm: 0,
    yMm: 0,
    widthMm,
    heightMm,
    clip: { d: outlinePath({ shape: 'rectangle', widthMm, heightMm }), xMm: 0, yMm: 0 },
    tone: 'ink',
    element: where,
    part,
  };
  const piece = { heightMm, gapMm: 1, items: [item], isKeptWithNext: false, where };
  return joinPieces([keptWithNext(caption), { pieces: [piece], parts: [part] }]);
}

function sizeOf({ widthPx, heightPx }: ImageSize, highestMm: number): { widthMm: number; heightMm: number } {
  const widestMm = Math.min(TEXT_WIDTH_MM, (widthPx / LEAST_DOTS_PER_INCH) * 25.4);
  const scale = Math.min(widestMm / widthPx, highestMm / heightPx);
  return { widthMm: widthPx * scale, heightMm: heightPx * scale };
}
