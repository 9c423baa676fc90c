import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/** Poppler draws the page and reads the text: a second opinion on what the file really holds. */
export interface Raster {
  readonly width: number;
  readonly height: number;
  readonly pixelsPerMm: number;
  readonly grey: Uint8Array;
}

export interface Area {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

function runOn(pdf: Uint8Array, command: string, argumentsFor: (file: string) => string[]): Buffer {
  const folder = mkdtempSync(join(tmpdir(), 'gramwright-print-'));
  try {
    const file = join(folder, 'print.pdf');
    writeFileSync(file, pdf);
    return execFileSync(command, argumentsFor(file), {
      maxBuffer: 200_000_000,
      stdio: ['ignore', 'pipe', 'pipe'],
    });
  } finally {
    rmSync(folder, { recursive: true });
  }
}

export const textOfPdf = (pdf: Uint8Array): string =>
  runOn(pdf, 'pdftotext', (file) => ['-layout', file, '-']).toString('utf8');

export const pdfInfo = (pdf: Uint8Array, ...options: string[]): string =>
  runOn(pdf, 'pdfinfo', (file) => [...options, file]).toString('utf8');

/** Width and height in dots of each picture in the file, masks left out. */
export const pdfImages = (pdf: Uint8Array): string[] =>
  runOn(pdf, 'pdfimages', (file) => ['-list', file])
    .toString('utf8')
    .split('\n')
    .slice(2)
    .map((line) => line.trim().split(/\s+/))
    .flatMap(([, , type, width, height]) => (type === 'image' ? [`${width} ${height}`] : []));

export const pdfFonts = (pdf: Uint8Array): string =>
  runOn(pdf, 'pdffonts', (file) => [file]).toString('utf8');

/** One page in shades of grey, at so many dots an inch. */
export function renderPage(pdf: Uint8Array, dotsPerInch: number, page = 1): Raster {
  const bytes = runOn(pdf, 'pdftoppm', (file) => [
    ...['-gray', '-r', String(dotsPerInch), '-f', String(page), '-l', String(page)],
    file,
  ]);
  const [head = '', width, height] =
    /^P5\s+(\d+)\s+(\d+)\s+255\s/.exec(bytes.toString('latin1', 0, 64)) ?? [];
  return {
    width: Number(width),
    height: Number(height),
    pixelsPerMm: dotsPerInch / 25.4,
    grey: bytes.subarray(head.length),
  };
}

/** Darker than this is ink; the paler half of an edge's blur is not. */
const INK_BELOW = 128;

const rangeOf = (from: number, to: number, pixelsPerMm: number, last: number): [number, number] => [
  Math.max(0, Math.floor(from * pixelsPerMm)),
  Math.min(last, Math.ceil(to * pixelsPerMm)),
];

/** Numbers of the rows of pixels, counted from the page's top, that have ink inside the area. */
export function inkRows(raster: Raster, area: Area): number[] {
  const [x1, x2] = rangeOf(area.left, area.right, raster.pixelsPerMm, raster.width);
  const [y1, y2] = rangeOf(area.top, area.bottom, raster.pixelsPerMm, raster.height);
  const rows: number[] = [];
  for (let y = y1; y < y2; y += 1) {
    const row = raster.grey.subarray(y * raster.width + x1, y * raster.width + x2);
    if (row.some((grey) => grey < INK_BELOW)) rows.push(y);
  }
  return rows;
}

export function inkColumns(raster: Raster, area: Area): number[] {
  const [x1, x2] = rangeOf(area.left, area.right, raster.pixelsPerMm, raster.width);
  const [y1, y2] = rangeOf(area.top, area.bottom, raster.pixelsPerMm, raster.height);
  const columns: number[] = [];
  for (let x = x1; x < x2; x += 1) {
    for (let y = y1; y < y2; y += 1) {
      if ((raster.grey[y * raster.width + x] ?? 255) < INK_BELOW) {
        columns.push(x);
        break;
      }
    }
  }
  return columns;
}

/** From the first to the last of them, both included, in millimetres. */
export const extentMm = (pixels: readonly number[], { pixelsPerMm }: Raster): number =>
  pixels.length === 0 ? 0 : ((pixels.at(-1) ?? 0) - (pixels[0] ?? 0) + 1) / pixelsPerMm;

/** Share of the pixels of a ring (or disc, with 0 inside) that have ink. */
export function inkInRing(raster: Raster, xMm: number, yMm: number, fromMm: number, toMm: number): number {
  let ink = 0;
  const [x1, x2] = rangeOf(xMm - toMm, xMm + toMm, raster.pixelsPerMm, raster.width);
  const [y1, y2] = rangeOf(yMm - toMm, yMm + toMm, raster.pixelsPerMm, raster.height);
  for (let y = y1; y < y2; y += 1) {
    for (let x = x1; x < x2; x += 1) {
      const distance = Math.hypot(x / raster.pixelsPerMm - xMm, y / raster.pixelsPerMm - yMm);
      if (distance < fromMm || distance > toMm) continue;
      if ((raster.grey[y * raster.width + x] ?? 255) < INK_BELOW) ink += 1;
    }
  }
  return ink;
}
