import type { Face, Faces } from './face.ts';
import type { Placed } from './placed.ts';
import { type Span, splitIntoTokens, type Token } from './split-into-tokens.ts';

export interface TextBlock {
  readonly kind: 'text';
  readonly element: string;
  readonly content: Content;
  readonly sizeMm: number;
  /** From baseline to baseline, in ems. */
  readonly leadingEm: number;
  readonly gapMm: number;
  /** Lines of about equal length: for a name, not for a list. */
  readonly isBalanced: boolean;
}

export interface RuleBlock {
  readonly kind: 'rule';
  readonly element: string;
  readonly lengthMm: number;
  readonly thicknessMm: number;
  readonly gapMm: number;
}

/** One line with a drawn sign before its text, which is never broken. */
export interface SignedBlock {
  readonly kind: 'signed';
  readonly element: string;
  readonly content: Content;
  readonly sizeMm: number;
  readonly gapMm: number;
  /** Room of the sign and the white after it. */
  readonly leadMm: number;
  /** Drawn from the left of its room, standing on the baseline. */
  draw(xMm: number, baselineMm: number): readonly Placed[];
}

export type Block = TextBlock | RuleBlock | SignedBlock;

/** Text taken apart once, for every size that is tried. Extents in ems from the baseline. */
export interface Content {
  readonly lines: readonly (readonly Token[])[];
  readonly aboveEm: number;
  readonly belowEm: number;
}

/** Every line takes at least the room of these letters, so that gaps look even; accents above capitals take more. */
const USUAL_EXTENT = 'dp';

export function contentOf(spans: readonly Span[], faces: Faces): Content {
  const lines = splitIntoTokens(spans).filter((line) => line.length > 0);
  const usual = { text: USUAL_EXTENT, weight: spans[0]?.weight ?? 'regular' } as const;
  const inks = [usual, ...lines.flat()].flatMap(({ text, weight }) => inkOrNone(text, faces[weight]));
  return {
    lines,
    aboveEm: Math.max(0, ...inks.map((ink) => ink.top)),
    belowEm: Math.max(0, ...inks.map((ink) => -ink.bottom)),
  };
}

const inkOrNone = (text: string, face: Face) => {
  const ink = face.inkOf(text);
  return ink === null ? [] : [ink];
};
