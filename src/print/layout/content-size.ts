import type { Faces } from './face.ts';
import type { LabelPiece } from './label-design.ts';
import { FIGURE_MARGIN_MM } from './label-rules.ts';
import { findNetLetterHeightMm } from './net-type-height.ts';
import type { PrintRules } from './print-rules.ts';

/** How the declared content has to be set, in heavy letters. */
export interface ContentSize {
  /** The smallest em that the law leaves. */
  readonly leastMm: number;
  /** Height in ems of what is measured: the lowest digit; in the United States the lower-case o. */
  readonly measuredEm: number;
  /** Height in ems of the estimated sign, where it stands there. */
  readonly eMarkEm: number | null;
}

export const E_MARK = '\u212e';

/**
 * Great Britain, Northern Ireland and the European Union measure the figures (Directive 76/211/EEC, Annex I 3.1) and the
 * estimated sign; the United States the lower-case o where letters are mixed (21 CFR 701.13(h)(2), from memory).
 */
export function sizeContent(
  text: string,
  piece: Pick<LabelPiece, 'market' | 'surface' | 'figureHeightMm' | 'hasEMark'>,
  rules: PrintRules,
  faces: Faces,
): ContentSize {
  if (piece.market === 'US') {
    const measuredEm = heightEm('o', faces);
    const letterMm = findNetLetterHeightMm(piece.surface, rules);
    return { leastMm: (letterMm + FIGURE_MARGIN_MM) / measuredEm, measuredEm, eMarkEm: null };
  }
  const measuredEm = lowestFigureEm(text, faces);
  const figuresMm = ((piece.figureHeightMm ?? 0) + FIGURE_MARGIN_MM) / measuredEm;
  if (piece.hasEMark !== true) return { leastMm: figuresMm, measuredEm, eMarkEm: null };
  const eMarkEm = heightEm(E_MARK, faces);
  const eMarkMm = (rules.eMarkHeightMm + FIGURE_MARGIN_MM) / eMarkEm;
  return { leastMm: Math.max(figuresMm, eMarkMm), measuredEm, eMarkEm };
}

function heightEm(character: string, faces: Faces): number {
  const ink = faces.bold.inkOf(character);
  if (ink === null) throw new Error(`the font draws nothing for ${character}`);
  return ink.top - ink.bottom;
}

/** Height of the lowest digit that occurs, in ems: 1, 4 and 7 are flat, the round ones stand a little over. */
export const lowestFigureEm = (text: string, faces: Faces): number =>
  Math.min(
    ...[...text].filter((character) => /\p{Nd}/u.test(character)).map((digit) => heightEm(digit, faces)),
  );
