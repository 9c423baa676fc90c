/** What a picture's head says of it. */
export interface ImageSize {
  readonly type: 'png' | 'jpeg';
  readonly widthPx: number;
  readonly heightPx: number;
  /** Exif orientation; 1 is upright. */
  readonly orientation: number;
}

/** Reads type and size off a PNG or JPEG; null for anything else, and for one that is cut short. Sources: PNG 11.2.2 (IHDR); ISO/IEC 10918-1 B.2.2 (frame header); Exif 4.6.2 (orientation, tag 0112). */
export function readImageSize(bytes: Uint8Array): ImageSize | null {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  if (bytes.length >= 29 && PNG_HEAD.every((byte, index) => bytes[index] === byte)) return readPng(view);
  if (bytes.length >= 4 && view.getUint16(0) === 0xffd8) return readJpeg(view);
  return null;
}

const PNG_HEAD = [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 0, 0, 0, 13, 0x49, 0x48, 0x44, 0x52];

function readPng(view: DataView): ImageSize | null {
  const [widthPx, heightPx] = [view.getUint32(16), view.getUint32(20)];
  return widthPx > 0 && heightPx > 0 ? { type: 'png', widthPx, heightPx, orientation: 1 } : null;
}

/** Frame headers are C0 to CF but for the tables C4, C8 and CC. */
const isFrame = (marker: number): boolean =>
  marker >= 0xffc0 && marker <= 0xffcf && ![0xffc4, 0xffc8, 0xffcc].includes(marker);

function readJpeg(view: DataView): ImageSize | null {
  let orientation = 1;
  for (let at = 2; at + 9 < view.byteLength; ) {
    const marker = view.getUint16(at);
    if (marker >> 8 !== 0xff) return null;
    const length = view.getUint16(at + 2);
    if (isFrame(marker)) {
      const [heightPx, widthPx] = [view.getUint16(at + 5), view.getUint16(at + 7)];
      return widthPx > 0 && heightPx > 0 ? { type: 'jpeg', widthPx, heightPx, orientation } : null;
    }
    if (marker === 0xffe1 && at + 2 + length <= view.byteLength)
      orientation =
        readOrientation(new DataView(view.buffer, view.byteOffset + at + 4, length - 2)) ?? orientation;
    at += 2 + length;
  }
  return null;
}

const ORIENTATION = 0x0112;

function readOrientation(exif: DataView): number | null {
  const TIFF = 6;
  if (exif.byteLength < TIFF + 10 || exif.getUint32(0) !== 0x45786966) return null;
  const isLittle = exif.getUint16(TIFF) === 0x4949;
  const first = TIFF + exif.getUint32(TIFF + 4, isLittle);
  if (first + 2 > exif.byteLength) return null;
  const count = exif.getUint16(first, isLittle);
  for (let entry = first + 2; entry + 12 <= exif.byteLength && entry < first + 2 + count * 12; entry += 12) {
    if (exif.getUint16(entry, isLittle) === ORIENTATION) return exif.getUint16(entry + 8, isLittle);
  }
  return null;
}
