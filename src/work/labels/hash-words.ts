import type { LabelPiece } from '../../print/layout/index.ts';
import { sha256 } from '../../storage/index.ts';

/** Tells whether a label says the same as another: its words, signs and code, and nothing of what it looks like. */
export const hashWords = ({ texts, openedMonths, hasEMark, hasHandInBook, code }: LabelPiece): string =>
  sha256(
    JSON.stringify([texts, openedMonths ?? null, hasEMark === true, hasHandInBook === true, code ?? null]),
  );
