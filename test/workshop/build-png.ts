import { deflateSync } from 'node:zlib';

/** A plain picture: one colour, so many pixels, with or without see-through. */
export function buildPng(width: number, height: number, hasAlpha = false): Uint8Array {
  const bytesPerPixel = hasAlpha ? 4 : 3;
  const row = Buffer.alloc(1 + width * bytesPerPixel, 60);
  row[0] = 0;
  const head = Buffer.alloc(13);
  head.writeUInt32BE(width, 0);
  head.writeUInt32BE(height, 4);
  head.set([8, hasAlpha ? 6 : 2, 0, 0, 0], 8);
  const chunk = (type: string, data: Buffer): Buffer => {
    const size = Buffer.alloc(4);
    size.writeUInt32BE(data.length);
    // The check sum is not read by what draws it.
    return Buffer.concat([size, Buffer.from(type, 'latin1'), data, Buffer.alloc(4)]);
  };
  const pixels = deflateSync(Buffer.concat(Array.from({ length: height }, () => row)));
  const mark = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);
  return new Uint8Array(
    Buffer.concat([mark, chunk('IHDR', head), chunk('IDAT', pixels), chunk('IEND', Buffer.alloc(0))]),
  );
}
