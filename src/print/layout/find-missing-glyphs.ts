import { type Problem, problem } from '../../core/problem.ts';
import type { Face } from './face.ts';
import { prepareText } from './prepare-text.ts';

/** Where a line may break without a sign of its own: line end, soft hyphen, zero-width space. */
const BREAKS = new Set(['\n', '\u00ad', '\u200b']);

/** One problem for each character that the font cannot draw, with its place: a blank on a label is a lie. */
export function findMissingGlyphs(text: string, where: string, face: Face): Problem[] {
  const prepared = prepareText(text);
  const found = new Map<string, number>();
  [...prepared].forEach((character, index) => {
    if (BREAKS.has(character) || face.draws(character) || found.has(character)) return;
    found.set(character, index + 1);
  });
  return [...found].map(([character, position]) =>
    problem('glyph-missing', where, {
      found: character,
      parameters: { position, codePoint: nameOfCodePoint(character), text: shorten(prepared) },
    }),
  );
}

const nameOfCodePoint = (character: string): string =>
  `U+${(character.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0')}`;

const shorten = (text: string): string => {
  const characters = [...text];
  return characters.length > 60 ? `${characters.slice(0, 57).join('')}...` : text;
};
