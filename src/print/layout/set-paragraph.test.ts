import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { plainFaces } from '../../../test/workshop/plain-faces.ts';
import { type ParagraphStyle, setParagraph } from './set-paragraph.ts';

const style: ParagraphStyle = {
  sizeMm: 4,
  leadingEm: 1.25,
  tone: 'ink',
  align: 'left',
  widthMm: 20,
  element: 'note',
};
const linesOf = (text: string, change: Partial<ParagraphStyle> = {}): string[] =>
  setParagraph([{ text, weight: 'regular' }], { ...style, ...change }, plainFaces).lines.map((line) =>
    line.map((item) => item.text).join(''),
  );

describe('setParagraph', () => {
  it('fills lines of ten characters of 2 mm each in 20 mm', () => {
    expect(linesOf('cedar and orange butter')).toEqual(['cedar and', 'orange', 'butter']);
  });

  it('lets a line of exactly the width stand and breaks one that is a character longer', () => {
    expect(linesOf('cedar oils')).toEqual(['cedar oils']);
    expect(linesOf('cedar oilsx')).toEqual(['cedar', 'oilsx']);
  });

  it('parts a word that is wider than its column, and loses no letter', () => {
    expect(linesOf('abcdefghijklmnopqrstuvwxyz')).toEqual(['abcdefghij', 'klmnopqrst', 'uvwxyz']);
  });

  it('sets a letter that is wider than its column all the same', () => {
    expect(linesOf('abc', { widthMm: 1 })).toEqual(['a', 'b', 'c']);
  });

  it('aligns right and centre by what the line leaves free', () => {
    const startOf = (align: ParagraphStyle['align']) =>
      setParagraph([{ text: 'cedar', weight: 'regular' }], { ...style, align }, plainFaces).lines[0]?.[0]
        ?.xMm;
    expect([startOf('left'), startOf('centre'), startOf('right')]).toEqual([0, 5, 10]);
  });

  it('keeps every letter in order and every line within its column, whatever the text', () => {
    const words = fc.array(fc.string({ unit: 'grapheme-ascii', maxLength: 30 }), { maxLength: 30 });
    fc.assert(
      fc.property(words, fc.integer({ min: 2, max: 60 }), (list, widthMm) => {
        const { lines } = setParagraph(
          [{ text: list.join(' '), weight: 'regular' }],
          { ...style, widthMm },
          plainFaces,
        );
        const all = lines.flat();
        expect(
          all
            .map(({ text }) => text)
            .join('')
            .replace(/\s/g, ''),
        ).toBe(list.join('').replace(/\s/g, ''));
        for (const item of all) expect(item.xMm + item.widthMm).toBeLessThanOrEqual(widthMm + 1e-9);
      }),
    );
  });
});
