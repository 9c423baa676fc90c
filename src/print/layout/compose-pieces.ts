import { done, type Result } from '../../core/problem.ts';
import { checkDesign } from './check-design.ts';
import { composeCode } from './compose-code.ts';
import type { LabelDesign, LabelPiece, LabelWording } from './label-design.ts';
import { LARGEST_BACK_X_HEIGHT_MM, SMALLEST_X_HEIGHT_MM } from './label-rules.ts';
import { sayElement, sayPointer } from './say-element.ts';
import { type PieceWish, wishPieces } from './wish-pieces.ts';

/**
 * The words of a design, piece by piece, and the leaflet that it asks for. What a sticker carries, the other pieces leave out,
 * so that they can be printed before there is a batch. Refused: texts that lack in a language of the label, an element that no
 * piece carries, a move that the law does not allow, a code that cannot be written.
 */
export function composePieces(design: LabelDesign, wording: LabelWording): Result<readonly LabelPiece[]> {
  const wishes = wishPieces(design);
  const wrong = checkDesign(design, wording, wishes);
  if (wrong.length > 0) return { ok: false, problems: wrong };
  const composed = wishes.map((wish) => composePiece(wish, design, wording));
  const problems = composed.flatMap((piece) => (piece.ok ? [] : piece.problems));
  if (problems.length > 0) return { ok: false, problems };
  return done(composed.flatMap((piece) => (piece.ok ? [piece.value] : [])));
}

function composePiece(wish: PieceWish, design: LabelDesign, wording: LabelWording): Result<LabelPiece> {
  const { piece, elements, isPointing } = wish;
  const { id, role, surface, artwork } = piece;
  const code = piece.code === undefined ? null : composeCode(piece.code, wording, id);
  if (code?.ok === false) return code;
  const said = elements.flatMap((element) => sayElement(element, wording, design));
  const { openedMonths, content } = wording;
  const isEuropean = design.market !== 'US' && elements.includes('content');
  return done({
    id,
    role,
    surface,
    market: design.market,
    languages: design.languages,
    texts: [...said, ...(isPointing ? sayPointer(design) : [])],
    ...(elements.includes('opened') && openedMonths !== undefined && { openedMonths }),
    ...(isEuropean && { figureHeightMm: content.figureHeightMm, hasEMark: content.hasEMark === true }),
    ...(isPointing && design.leaflet?.pointer === 'symbol' && { hasHandInBook: true }),
    ...lettersOf(piece.letters),
    ...(design.containerSurfaceMm2 !== undefined && { containerSurfaceMm2: design.containerSurfaceMm2 }),
    ...(artwork && { artwork }),
    ...(code && { code: code.value }),
  });
}

function lettersOf(letters: PieceWish['piece']['letters'] = {}): {
  leastXHeightMm: number;
  mostXHeightMm: number;
} {
  const leastXHeightMm = letters.leastXHeightMm ?? SMALLEST_X_HEIGHT_MM;
  const mostXHeightMm = Math.max(letters.mostXHeightMm ?? LARGEST_BACK_X_HEIGHT_MM, leastXHeightMm);
  return { leastXHeightMm, mostXHeightMm };
}
