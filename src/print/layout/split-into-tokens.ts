import type { Weight } from './face.ts';
import { prepareText } from './prepare-text.ts';

export interface Span {
  readonly text: string;
  readonly weight: Weight;
}

/** The smallest piece that stays together on a line. */
export interface Token {
  readonly text: string;
  readonly weight: Weight;
  /** What stands between it and the next token of the same line. */
  readonly joiner: ' ' | '';
  /** What stands after it where the line breaks. */
  readonly ending: '-' | '';
}

/** Long chemical names may break after a slash or hyphen between letters; batch numbers and dates may not. */
const INNER_BREAK = /(?<=\p{L}{2}[/-])(?=\p{L}{2})|(?<=[\u00ad\u200b])/u;

/** Tokens of each line that the writer ended on purpose; such an end parts words like a blank. An empty line gives none. */
export function splitIntoTokens(spans: readonly Span[]): Token[][] {
  const lines: Token[][] = [[]];
  for (const { text, weight } of spans) {
    const pieces = prepareSpan(text).split('\n');
    pieces.forEach((piece, index) => {
      if (index > 0) lines.push([]);
      const isLast = index === pieces.length - 1;
      lines.at(-1)?.push(...tokensOfPiece(isLast ? piece : `${piece} `, weight));
    });
  }
  return lines;
}

/** Like prepareText, but a blank at the end of a span parts it from the next. */
const prepareSpan = (text: string): string => prepareText(text) + (/[ \t]$/.test(text) ? ' ' : '');

/** No line ends between a figure and its unit, nor inside a number grouped by thousands. */
const GLUED =
  / (?=(?:%|°C|µ?[gl]|[kmc]?[gml]|M)(?![\p{L}\p{N}]))(?<=\p{Nd} )| (?=\p{Nd}{3}(?!\p{Nd}))(?<=\p{Nd} )/gu;
/**
 * Nor inside a postcode: British ones end in a figure and two letters (HX0 0ZZ), Irish ones in four signs behind a letter
 * and two figures (D02 X285).
 */
const POSTCODE =
  /(?<=(?<![\p{L}\p{N}])[A-Z]{1,2}\p{Nd}[A-Z\p{Nd}]?) (?=\p{Nd}[A-Z]{2}(?![\p{L}\p{N}]))|(?<=(?<![\p{L}\p{N}])[A-Z]\p{Nd}[\p{Nd}W]) (?=[A-Z\p{Nd}]{4}(?![\p{L}\p{N}]))/gu;
const NO_BREAK = '\u00a0';

function tokensOfPiece(piece: string, weight: Weight): Token[] {
  const words = piece
    .replace(GLUED, NO_BREAK)
    .replace(POSTCODE, NO_BREAK)
    .split(' ')
    .filter((word) => word !== '');
  const endsInBlank = piece.endsWith(' ');
  return words.flatMap((word, index) => {
    const isLast = index === words.length - 1;
    return tokensOfWord(word, weight, isLast && !endsInBlank ? '' : ' ');
  });
}

function tokensOfWord(word: string, weight: Weight, joinerAfter: Token['joiner']): Token[] {
  const parts = word.split(INNER_BREAK);
  return parts.map((part, index) => ({
    // Set as a plain blank: both have one glyph, and text copied from the print should hold plain ones.
    text: part.replace(/[\u00ad\u200b]/g, '').replaceAll(NO_BREAK, ' '),
    weight,
    joiner: index === parts.length - 1 ? joinerAfter : '',
    ending: part.endsWith('\u00ad') && index < parts.length - 1 ? '-' : '',
  }));
}
