import type { Face, Faces } from '../../src/print/layout/index.ts';

/** A font that can be reckoned in the head: every character is half an em wide and as high as an x, blanks included. */
const plain: Face = {
  xHeight: 0.5,
  advanceOf: (text) => [...text].length * 0.5,
  inkOf: (text) =>
    text.trim() === '' ? null : { left: 0, right: [...text].length * 0.5, bottom: 0, top: 0.5 },
  draws: (character) => character !== '\u2603',
};

export const plainFaces: Faces = { regular: plain, semibold: plain, bold: plain };
