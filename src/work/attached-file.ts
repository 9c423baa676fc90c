import { Buffer } from 'node:buffer';
import { inflateSync } from 'node:zlib';
import { type Problem, problem } from '../core/problem.ts';
import { readImageSize } from '../print/layout/index.ts';

export type FileKind = 'pdf' | 'png' | 'jpeg';

/**
 * How a file of each kind begins, whatever it is called: PDF, ISO 32000-1, 7.5.2; PNG, ISO/IEC 15948, 5.2; JPEG,
 * ISO/IEC 10918-1, B.1.1.3 (start of image).
 */
const BEGINS: readonly (readonly [FileKind, readonly number[]])[] = [
  ['pdf', [0x25, 0x50, 0x44, 0x46, 0x2d]],
  ['png', [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]],
  ['jpeg', [0xff, 0xd8, 0xff]],
];

export const kindOfFile = (bytes: Uint8Array): FileKind | null =>
  BEGINS.find(([, begin]) => begin.every((byte, index) => bytes[index] === byte))?.[0] ?? null;

/** A study with its pictures, or a photograph; this much still fits a backup (common practice, no source). */
const LARGEST_BYTES: Readonly<Record<FileKind, number>> = {
  pdf: 20_000_000,
  png: 8_000_000,
  jpeg: 8_000_000,
};

/** Whether a file may be kept: by what is in it, and never by its name. */
export function judgeAttached(name: string, bytes: Uint8Array): Problem | undefined {
  const kind = kindOfFile(bytes);
  if (kind === null) return problem('file-not-pdf-or-picture', 'base64', { found: name });
  if (bytes.length > LARGEST_BYTES[kind])
    return problem(kind === 'pdf' ? 'file-too-large' : 'picture-too-large', 'base64', {
      found: Math.ceil(bytes.length / 1_000_000),
      allowed: LARGEST_BYTES[kind] / 1_000_000,
      parameters: { file: name },
    });
  return kind === 'pdf' || isWhole(kind, bytes)
    ? undefined
    : problem('picture-not-readable', 'base64', { found: name });
}

/** An interlaced picture is kept and never drawn, so it is looked at from outside alone. */
export function isWhole(kind: 'png' | 'jpeg', bytes: Uint8Array): boolean {
  const read = readImageSize(bytes);
  if (read === null) return false;
  if (kind === 'png') return isInterlaced(bytes) ? endsWith(bytes, IEND) : hasEveryDot(bytes, read);
  return endsWith(bytes, END_OF_IMAGE);
}

const isInterlaced = (png: Uint8Array): boolean => png[28] !== 0;

/** Last chunk of a PNG (ISO/IEC 15948, 11.2.5) and end of image of a JPEG; cameras write something after it. */
const IEND = [0x49, 0x45, 0x4e, 0x44];
const END_OF_IMAGE = [0xff, 0xd9];
const TAIL_BYTES = 65_536;

function endsWith(bytes: Uint8Array, end: readonly number[]): boolean {
  const tail = bytes.subarray(Math.max(0, bytes.length - TAIL_BYTES));
  return tail.some((_, at) => end.every((byte, index) => tail[at + index] === byte));
}

/** Samples of a dot by colour type (ISO/IEC 15948, 11.2.2). */
const SAMPLES: Readonly<Record<number, number>> = { 0: 1, 2: 3, 3: 1, 4: 2, 6: 4 };

/** The drawing library would end the whole program on dots that cannot be unpacked, so they are unpacked here first. */
function hasEveryDot(
  bytes: Uint8Array,
  { widthPx, heightPx }: { widthPx: number; heightPx: number },
): boolean {
  const samples = SAMPLES[bytes[25] ?? -1];
  const data = readPixelData(bytes);
  if (samples === undefined || data === null) return false;
  const size = heightPx * (1 + Math.ceil((widthPx * samples * (bytes[24] ?? 0)) / 8));
  try {
    return inflateSync(data, { maxOutputLength: size }).length === size;
  } catch {
    // Not packed as the format asks, or more than the picture has: an answer here.
    return false;
  }
}

/** The IDAT chunks, one after the other; null where the chunks do not lead to the end. */
function readPixelData(bytes: Uint8Array): Uint8Array | null {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const parts: Uint8Array[] = [];
  for (let at = 8; at + 12 <= bytes.length; ) {
    const length = view.getUint32(at);
    const type = String.fromCharCode(...bytes.subarray(at + 4, at + 8));
    if (type === 'IEND') return Buffer.concat(parts);
    if (at + 12 + length > bytes.length) return null;
    if (type === 'IDAT') parts.push(bytes.subarray(at + 8, at + 8 + length));
    at += 12 + length;
  }
  return null;
}
