import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { drawCode } from './draw-code.ts';

/** Pixels for each module: a camera sees more. */
const PIXELS = 6;

/** The path as the page draws it, as a picture (netpbm, plain PBM): black squares on white. */
function paint({ size, path }: { readonly size: number; readonly path: string }): string {
  const dark = new Set<string>();
  for (const [, x, y, width] of path.matchAll(/M(\d+) (\d+)h(\d+)v1h-\3z/g))
    for (let step = 0; step < Number(width); step += 1) dark.add(`${Number(x) + step} ${y}`);
  const rows = Array.from({ length: size * PIXELS }, (_, row) =>
    Array.from({ length: size * PIXELS }, (__, column) =>
      dark.has(`${Math.floor(column / PIXELS)} ${Math.floor(row / PIXELS)}`) ? 1 : 0,
    ).join(' '),
  );
  return `P1\n${size * PIXELS} ${size * PIXELS}\n${rows.join('\n')}\n`;
}

// zbarimg is a reader of its own.
describe('the square code of an address', () => {
  it.each(['https://192.168.7.20:4443', 'https://a-very-long-name-of-a-computer.local:65535/pair#48219034'])(
    'is read again as %s',
    async (url) => {
      const folder = mkdtempSync(join(tmpdir(), 'gramwright-code-'));
      const file = join(folder, 'code.pbm');
      writeFileSync(file, paint(await drawCode(url)));
      const read = execFileSync('zbarimg', ['--quiet', '--raw', file], { encoding: 'utf8' });
      rmSync(folder, { recursive: true });
      expect(read.trim()).toBe(url);
    },
  );

  it('has four modules of white around it', async () => {
    const { size, path } = await drawCode('https://192.168.7.20:4443');
    const corners = [...path.matchAll(/M(\d+) (\d+)h(\d+)/g)].map((found) => found.slice(1).map(Number));
    const ends = corners.map(([x = 0, , width = 0]) => x + width);
    expect(Math.min(...corners.map(([x = 0]) => x))).toBe(4);
    expect(Math.min(...corners.map(([, y = 0]) => y))).toBe(4);
    expect(Math.max(...ends)).toBe(size - 4);
  });
});
