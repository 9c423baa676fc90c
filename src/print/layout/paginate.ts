import { done, problem, type Result } from '../../core/problem.ts';
import { BODY_BOTTOM_MM, FIRST_TOP_MM, LEFT_MM, NEXT_TOP_MM } from './page-frame.ts';
import type { Piece } from './piece.ts';
import { moveBy, type Placed } from './placed.ts';

/** Deals pieces out to pages: none is parted, headings stay with what they head, a table's head is set again on each page. */
export function paginate(pieces: readonly Piece[]): Result<Placed[][]> {
  const tooTall = pieces.filter((piece) => NEXT_TOP_MM + piece.heightMm + headHeight(piece) > BODY_BOTTOM_MM);
  if (tooTall.length > 0) {
    const allowed = BODY_BOTTOM_MM - NEXT_TOP_MM;
    return {
      ok: false,
      problems: tooTall.map((piece) =>
        problem('paper-text-too-long', piece.where, { found: Math.ceil(piece.heightMm), allowed }),
      ),
    };
  }
  const pages: Placed[][] = [[]];
  let yMm = FIRST_TOP_MM;
  let isFresh = true;
  const put = (piece: Piece): void => {
    const topMm = yMm + (isFresh ? 0 : piece.gapMm);
    pages.at(-1)?.push(...piece.items.map((item) => moveBy(item, LEFT_MM, topMm)));
    yMm = topMm + piece.heightMm;
    isFresh = false;
  };
  pieces.forEach((piece, index) => {
    if (!isFresh && yMm + neededFrom(pieces, index) > BODY_BOTTOM_MM) {
      pages.push([]);
      yMm = NEXT_TOP_MM;
      isFresh = true;
      if (piece.head !== undefined) put(asRepeated(piece.head));
    }
    put(piece);
  });
  return done(pages);
}

const headHeight = (piece: Piece): number => piece.head?.heightMm ?? 0;

/** Height of a piece and of all that must follow it on the same page; not more than a page can give. */
function neededFrom(pieces: readonly Piece[], index: number): number {
  let needed = 0;
  for (let next = index; next < pieces.length; next += 1) {
    const piece = pieces[next];
    if (piece === undefined) break;
    needed += piece.gapMm + piece.heightMm;
    if (!piece.isKeptWithNext) break;
  }
  return Math.min(needed, BODY_BOTTOM_MM - NEXT_TOP_MM);
}

/** Read aloud once is enough: the repeated head is decoration. */
const asRepeated = (head: Piece): Piece => ({
  ...head,
  items: head.items.map(({ part: _, ...item }) => item as Placed),
});
