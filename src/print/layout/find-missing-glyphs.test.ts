import { describe, expect, it } from 'vitest';
import { plainFaces } from '../../../test/workshop/plain-faces.ts';
import { loadFaces } from '../paint/index.ts';
import { findMissingGlyphs } from './find-missing-glyphs.ts';

const { regular } = loadFaces();

describe('findMissingGlyphs', () => {
  it('finds nothing in the letters of Europe and the signs of a label', () => {
    const text =
      'Łódź, Győr, Iași, Ærø, Straße, Шипка, Ωμέγα: 80 g ℮ ±0.5 % at 25 °C – “best” ½ µg\nnext line';
    expect(findMissingGlyphs(text, 'front.productName', regular)).toEqual([]);
  });

  it('names each missing character once, with its place and its code', () => {
    expect(findMissingGlyphs('a☃b☃', 'note', plainFaces.regular)).toEqual([
      {
        code: 'glyph-missing',
        where: 'note',
        found: '☃',
        parameters: { position: 2, codePoint: 'U+2603', text: 'a☃b☃' },
      },
    ]);
  });

  it('composes letters first: a font has é, not always e with a loose accent', () => {
    expect(
      findMissingGlyphs('cre\u0300me', 'note', { ...regular, draws: (character) => character !== '\u0300' }),
    ).toEqual([]);
  });

  it('takes a blank for a blank, and a glyph without ink for a missing one', () => {
    expect(findMissingGlyphs('80\u00a0g', 'note', regular)).toEqual([]);
    expect(findMissingGlyphs('a\u200db', 'note', regular)).toMatchObject([
      { parameters: { codePoint: 'U+200D' } },
    ]);
    expect(findMissingGlyphs('a\u0007b', 'note', regular)).toMatchObject([
      { parameters: { codePoint: 'U+0007' } },
    ]);
  });

  it('cuts a long text short in the problem', () => {
    const [found] = findMissingGlyphs(`${'x'.repeat(100)}☃`, 'note', plainFaces.regular);
    expect(found?.parameters).toMatchObject({ position: 101, text: `${'x'.repeat(57)}...` });
  });
});
