import type { z } from 'zod';
import type { labels, Market } from '../../contract/index.ts';
import type { Problem } from '../../core/problem.ts';
import {
  faceOfSurface,
  heightOf,
  type LabelPiece,
  MOVABLE_ELEMENTS,
  pieceToSvg,
  widthOf,
} from '../../print/layout/index.ts';
import { viewElement } from '../filling/compose-label.ts';
import type { ComposedPieces } from './compose-pieces.ts';
import type { LaidPiece } from './lay-out-pieces.ts';

type LabelView = z.output<typeof labels.labelView>;
type PieceView = z.output<typeof labels.pieceView>;
type Note = z.output<typeof labels.labelNote>;

export const viewLabel = (
  market: Market,
  { text, missing, pieces, problems, sheetProblems }: ComposedPieces,
): LabelView => ({
  market,
  elements: text ? text.elements.map(viewElement) : [],
  missing: [...missing],
  figureHeightMm: text?.figureHeightMm ?? 0,
  pieces: pieces.map(viewPiece),
  notes: [...problems, ...sheetProblems].map((each) => noteOf(each, true, null)),
});

function viewPiece({ piece, layout }: LaidPiece): PieceView {
  const size = faceOfSurface(piece.surface);
  const drawn = layout.ok ? layout.value : null;
  return {
    id: piece.id,
    role: piece.role,
    widthMm: widthOf(size),
    heightMm: heightOf(size),
    svg: drawn ? pieceToSvg(drawn) : '',
    smallestXHeightMm: drawn?.smallestXHeightMm || null,
    figureHeightMm: drawn?.figureHeightMm ?? null,
    moduleMm: drawn?.moduleMm ?? null,
    notes: layout.ok
      ? layout.value.notes.map((each) => noteOf(each, false, null))
      : layout.problems.map((each) => noteOf(each, true, movableFrom(piece, each))),
  };
}

const noteOf = (found: Problem, isStop: boolean, movesToLeaflet: Note['movesToLeaflet']): Note => {
  const { parameters, ...rest } = found;
  return {
    problem: { ...rest, ...(parameters && { parameters: { ...parameters } }) },
    isStop,
    movesToLeaflet,
  };
};

const LACKS_ROOM = new Set(['label-element-lacks-room', 'label-room-nowhere']);

/** What finds no room may go to a leaflet itself, or makes room where something else goes there: the longest of them. */
function movableFrom({ market, role, texts }: LabelPiece, { code, where }: Problem): Note['movesToLeaflet'] {
  if (!LACKS_ROOM.has(code) || market === 'US' || role === 'leaflet') return null;
  const there = texts.filter(({ element }) => MOVABLE_ELEMENTS.some((movable) => movable === element));
  const itself = MOVABLE_ELEMENTS.find((movable) => where.endsWith(`.${movable}`));
  const [longest] = there.sort((one, other) => other.text.length - one.text.length);
  return itself ?? MOVABLE_ELEMENTS.find((movable) => movable === longest?.element) ?? null;
}
