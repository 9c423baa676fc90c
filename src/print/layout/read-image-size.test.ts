import { describe, expect, it } from 'vitest';
import { readImageSize } from './read-image-size.ts';

const bytes = (hex: string): Uint8Array => new Uint8Array(Buffer.from(hex.replace(/\s/g, ''), 'hex'));
/** Frame header of 8 bits, 300 high and 200 wide. */
const FRAME = 'ffc0 0011 08 012c 00c8 03 011100 021100 031100';
/** Exif with one entry: tag 0112, a short, of this value; in the byte order II and in MM. */
const exif = (value: number): string =>
  `ffe1 0022 457869660000 49492a0008000000 0100 12010300010000000${value}000000 00000000`;
const exifOfMotorola = (value: number): string =>
  `ffe1 0022 457869660000 4d4d002a00000008 0001 0112000300000001000${value}0000 00000000`;

describe('readImageSize', () => {
  it('reads the head of a PNG', () => {
    const head = '89504e470d0a1a0a 0000000d 49484452 00000320 00000258 08 02 00 00 00';
    expect(readImageSize(bytes(head))).toEqual({ type: 'png', widthPx: 800, heightPx: 600, orientation: 1 });
  });

  it('finds the frame of a JPEG behind its other segments', () => {
    const jpeg = readImageSize(bytes(`ffd8 ffe0 0004 0000 ${FRAME}`));
    expect(jpeg).toEqual({ type: 'jpeg', widthPx: 200, heightPx: 300, orientation: 1 });
  });

  it('notices a picture that is stored turned, in either order of bytes', () => {
    expect(readImageSize(bytes(`ffd8 ${exif(6)} ${FRAME}`))?.orientation).toBe(6);
    expect(readImageSize(bytes(`ffd8 ${exifOfMotorola(8)} ${FRAME}`))?.orientation).toBe(8);
    expect(readImageSize(bytes(`ffd8 ${exif(1)} ${FRAME}`))?.orientation).toBe(1);
  });

  it('reads nothing off other files, and off ones that are cut short', () => {
    for (const hex of ['', '47494638', 'ffd8', 'ffd8 ffe0', `ffd8 ${FRAME.slice(0, 12)}`, '89504e470d0a1a0a'])
      expect(readImageSize(bytes(hex))).toBeNull();
  });
});
