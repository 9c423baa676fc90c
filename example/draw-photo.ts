import { Buffer } from 'node:buffer';
import { crc32, deflateSync } from 'node:zlib';

const [WIDE, HIGH] = [320, 220];
type Colour = readonly [number, number, number];
const TABLE: Colour = [206, 190, 160];
const BOWL: Colour = [122, 132, 128];
const BUTTER: Colour = [247, 236, 200];
const SHADE: Colour = [226, 209, 160];

/** Pale butter in a bowl with three soft peaks: drawn for the example, no photograph of anything. */
function colourAt(x: number, y: number): Colour {
  const inBowl = ((x - 160) / 140) ** 2 + ((y - 120) / 92) ** 2;
  if (inBowl > 1) return TABLE;
  if (inBowl > 0.86) return BOWL;
  const peak = [90, 165, 235].some(
    (top, index) => Math.abs(x - top - (y - 60) * 0.12) < (y - 56 - index * 6) * 0.32 && y < 128,
  );
  const wave = Math.sin(x / 17 + Math.sin(y / 23) * 2) > 0.72;
  return peak !== wave ? BUTTER : SHADE;
}

function chunk(type: string, data: Buffer): Buffer {
  const body = Buffer.concat([Buffer.from(type, 'latin1'), data]);
  const ends = Buffer.alloc(8);
  ends.writeUInt32BE(data.length, 0);
  ends.writeUInt32BE(crc32(body), 4);
  return Buffer.concat([ends.subarray(0, 4), body, ends.subarray(4)]);
}

/** The picture as a PNG (ISO/IEC 15948), in base64. */
export function drawPhoto(): string {
  const head = Buffer.alloc(13);
  head.writeUInt32BE(WIDE, 0);
  head.writeUInt32BE(HIGH, 4);
  head.set([8, 2, 0, 0, 0], 8);
  const rows = Array.from({ length: HIGH }, (_, y) =>
    Buffer.from([0, ...Array.from({ length: WIDE }, (__, x) => colourAt(x, y)).flat()]),
  );
  const mark = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);
  const data = deflateSync(Buffer.concat(rows));
  return Buffer.concat([
    mark,
    chunk('IHDR', head),
    chunk('IDAT', data),
    chunk('IEND', Buffer.alloc(0)),
  ]).toString('base64');
}
