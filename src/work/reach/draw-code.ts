import type { z } from 'zod';
import type { reach } from '../../contract/index.ts';
import { painter } from '../painter.ts';

/** ISO/IEC 18004: four modules of white around a QR code. */
const QUIET = 4;

/** A QR code as one path, a step for each row of dark squares that lie beside each other. */
export async function drawCode(content: string): Promise<z.output<typeof reach.squareCode>> {
  const squares = (await painter()).loadCodes().qr(content);
  if (squares === null) throw new Error(`an address is too long for a code: ${content.length} signs`);
  const path = squares.flatMap((row, y) =>
    runsOf(row).map(([x, width]) => `M${x + QUIET} ${y + QUIET}h${width}v1h-${width}z`),
  );
  return { size: squares.length + 2 * QUIET, path: path.join('') };
}

function runsOf(row: readonly boolean[]): (readonly [start: number, width: number])[] {
  return row.flatMap((isDark, x) => {
    if (!isDark || row[x - 1]) return [];
    const end = row.indexOf(false, x);
    return [[x, (end === -1 ? row.length : end) - x] as const];
  });
}
