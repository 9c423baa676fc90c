import type { Faces } from './face.ts';
import type { Token } from './split-into-tokens.ts';

/** On paper nothing may run over its column: a word wider than that is parted between letters, without a hyphen it never had. */
export function splitLongToken(token: Token, widthMm: number, sizeMm: number, faces: Faces): Token[] {
  const face = faces[token.weight];
  if (face.advanceOf(token.text) * sizeMm <= widthMm) return [token];
  const pieces: string[] = [];
  for (const letter of lettersOf(token.text)) {
    const open = pieces.at(-1);
    if (open !== undefined && face.advanceOf(open + letter) * sizeMm <= widthMm) {
      pieces[pieces.length - 1] = open + letter;
    } else pieces.push(letter);
  }
  return pieces.map((text, index) =>
    index === pieces.length - 1 ? { ...token, text } : { ...token, text, joiner: '', ending: '' },
  );
}

/** A letter with its accents stays one. */
const lettersOf = (text: string): string[] =>
  [...new Intl.Segmenter('en-GB', { granularity: 'grapheme' }).segment(text)].map(({ segment }) => segment);
