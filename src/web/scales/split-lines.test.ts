import { expect, it } from 'vitest';
import { makeLineSplitter } from './split-lines.ts';

const split = (...pieces: string[]) => {
  const lines: string[] = [];
  const feed = makeLineSplitter((line) => lines.push(line));
  for (const piece of pieces) feed(piece);
  return lines;
};

it('gives whole lines, however they come in pieces and whatever ends them', () => {
  expect(split('12.3', '0 g\r', '\n12.31 g\n', '\r12.')).toEqual(['12.30 g', '12.31 g']);
  expect(split('a\rb\nc\r\n')).toEqual(['a', 'b', 'c']);
});

it('forgets noise that never ends, and empty lines', () => {
  expect(split('x'.repeat(1000), '\n')[0]).toHaveLength(200);
  expect(split('\r\n', '  \n', '')).toEqual([]);
});
