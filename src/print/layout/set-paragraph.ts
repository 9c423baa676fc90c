import type { Faces } from './face.ts';
import { placeLine } from './place-line.ts';
import { moveBy, type Part, type PlacedText, type Tone } from './placed.ts';
import { countFitting, type Line, setLine } from './set-line.ts';
import { type Span, splitIntoTokens, type Token } from './split-into-tokens.ts';
import { splitLongToken } from './split-long-token.ts';

export type ColumnAlign = 'left' | 'right' | 'centre';

export interface ParagraphStyle {
  readonly sizeMm: number;
  readonly leadingEm: number;
  readonly tone: Tone;
  readonly align: ColumnAlign;
  readonly widthMm: number;
  readonly element: string;
  readonly part?: Part;
}

/** Lines of equal height under one another, from the top left of the paragraph. */
export interface SetParagraph {
  readonly lines: readonly (readonly PlacedText[])[];
  readonly lineMm: number;
  readonly heightMm: number;
}

/** Wraps text into a column; the reading order and every letter are kept whatever the width. */
export function setParagraph(spans: readonly Span[], style: ParagraphStyle, faces: Faces): SetParagraph {
  const lineMm = style.sizeMm * style.leadingEm;
  const wrapped = splitIntoTokens(spans).flatMap((tokens) => wrap(tokens, style, faces));
  const lines = wrapped.map((line, index) => {
    const xMm = startOf(line, style);
    const baselineMm = index * lineMm + lineMm / 2 + MIDDLE_EM * style.sizeMm;
    const { sizeMm, tone, element, part } = style;
    const place = { xMm, baselineMm, sizeMm, tone, element };
    return placeLine(line, part === undefined ? place : { ...place, part }, faces);
  });
  return { lines, lineMm, heightMm: lines.length * lineMm };
}

/** From the middle between ascender and descender down to the baseline. */
const MIDDLE_EM = 0.25;

function wrap(tokens: readonly Token[], style: ParagraphStyle, faces: Faces): Line[] {
  const { widthMm, sizeMm } = style;
  const fitting = tokens.flatMap((token) => splitLongToken(token, widthMm, sizeMm, faces));
  const lines: Line[] = [];
  for (let start = 0; start < fitting.length; ) {
    // One letter may be wider than its column: it is set all the same, since nothing may be lost.
    const count = Math.max(1, countFitting(fitting, start, widthMm, sizeMm, faces));
    lines.push(setLine(fitting.slice(start, start + count), sizeMm, faces));
    start += count;
  }
  return lines.length === 0 ? [setLine([], sizeMm, faces)] : lines;
}

function startOf(line: Line, { align, widthMm }: ParagraphStyle): number {
  if (align === 'left') return 0;
  return (widthMm - line.widthMm) / (align === 'right' ? 1 : 2);
}

/** All of its lines, moved to a place. */
export const paragraphAt = (paragraph: SetParagraph, xMm: number, yMm: number): PlacedText[] =>
  paragraph.lines.flat().map((item) => moveBy(item, xMm, yMm));
