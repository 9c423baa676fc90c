/** What the record takes of one photograph: contract of addStepPhoto, less the room that base64 needs. */
export const MOST_BYTES = 400_000;
const MOST_PX = 1600;
const LEAST_PX = 320;
const QUALITIES = [0.85, 0.75, 0.6, 0.45] as const;

export interface Picture {
  readonly width: number;
  readonly height: number;
}

/** As large as the longer side may be, in whole pixels; never larger than it is. */
export function fitInto({ width, height }: Picture, longestPx: number): Picture {
  const scale = Math.min(1, longestPx / Math.max(width, height));
  return { width: Math.max(1, Math.round(width * scale)), height: Math.max(1, Math.round(height * scale)) };
}

type Draw = (size: Picture, quality: number) => Promise<Blob | null>;

/** First less sharp, then smaller, until it fits; null where nothing helps. */
export async function shrinkTo(size: Picture, draw: Draw, mostBytes = MOST_BYTES): Promise<Blob | null> {
  for (let longest = MOST_PX; longest >= LEAST_PX; longest = Math.round(longest * 0.75)) {
    for (const quality of QUALITIES) {
      const blob = await draw(fitInto(size, longest), quality);
      if (blob && blob.size <= mostBytes) return blob;
    }
  }
  return null;
}

/**
 * A photograph of the tablet's camera as a JPEG that fits: drawn upright and anew, so that neither the place nor the
 * device that the camera writes into it stays in it.
 */
export async function shrinkPhoto(file: Blob): Promise<Blob | null> {
  const image = await createImageBitmap(file, { imageOrientation: 'from-image' });
  try {
    return await shrinkTo(image, (size, quality) => drawJpeg(image, size, quality));
  } finally {
    image.close();
  }
}

function drawJpeg(image: ImageBitmap, { width, height }: Picture, quality: number): Promise<Blob | null> {
  const canvas = document.createElement('canvas');
  canvas.width = width;
  canvas.height = height;
  const context = canvas.getContext('2d');
  if (!context) return Promise.resolve(null);
  // What is see-through in a PNG would turn black.
  context.fillStyle = '#fff';
  context.fillRect(0, 0, width, height);
  context.drawImage(image, 0, 0, width, height);
  return new Promise((done) => canvas.toBlob(done, 'image/jpeg', quality));
}
