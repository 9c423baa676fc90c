import type { Faces } from './face.ts';
import { joinPieces } from './join-pieces.ts';
import { outlinePath } from './outline.ts';
import { TEXT_WIDTH_MM } from './page-frame.ts';
import type { PaperBar } from './paper.ts';
import { paperStyles } from './paper-styles.ts';
import type { Pieces } from './piece.ts';
import type { Part, Placed } from './placed.ts';
import { keptWithNext, plainPieces } from './text-pieces.ts';

const HIGH_MM = 4;
const EDGE_MM = 0.25;

/** Its name, and under it what there was, filled, with what was lost of it as an empty end: shape tells them apart on any printer. */
export function barPieces(
  { name, says, foundShare, lostShare }: PaperBar,
  where: string,
  faces: Faces,
): Pieces {
  const part: Part = { type: 'Figure', alt: says, children: [] };
  const found = Math.min(1, Math.max(0, foundShare)) * TEXT_WIDTH_MM;
  const lost = Math.min(TEXT_WIDTH_MM - found, Math.max(0, lostShare) * TEXT_WIDTH_MM);
  const rectangle = (xMm: number, widthMm: number, strokeMm: number | null): Placed[] =>
    widthMm <= 0
      ? []
      : [
          {
            kind: 'path',
            d: outlinePath({ shape: 'rectangle', widthMm, heightMm: HIGH_MM }),
            xMm,
            yMm: 0,
            strokeMm,
            tone: 'soft',
            element: where,
            part,
          },
        ];
  const items = [...rectangle(0, found, null), ...rectangle(found, lost, EDGE_MM)];
  const piece = { heightMm: HIGH_MM, gapMm: 0.8, items, isKeptWithNext: false, where };
  return joinPieces([
    keptWithNext(plainPieces(name, paperStyles.factLabel, `${where}.name`, 'P', 2, faces)),
    { pieces: [piece], parts: [part] },
  ]);
}
