import { heightOf, outlinePath, widthOf } from './outline.ts';
import type { PieceLayout } from './piece-layout.ts';
import type { Placed } from './placed.ts';

type Cut = Pick<PieceLayout, 'id' | 'size' | 'surface'>;

/**
 * From the piece's own top left: a hairline on the cut itself; a rectangle also has marks outside its corners, to lay a ruler
 * on, and a strip round a jar has them where the overlap begins.
 */
export function cutMarks(face: Cut): Placed[] {
  const outline: Placed = {
    kind: 'path',
    d: outlinePath(face.size),
    xMm: 0,
    yMm: 0,
    strokeMm: 0.1,
    tone: 'soft',
    element: `${face.id}.cut`,
  };
  if (face.size.shape === 'round') return [outline];
  return [outline, ...cornerMarks(face), ...overlapMarks(face)];
}

const MARK = { fromMm: 1, toMm: 3.5 };

const mark = ({ id }: Cut, fromMm: [number, number], toMm: [number, number]): Placed => ({
  kind: 'rule',
  fromMm,
  toMm,
  thicknessMm: 0.1,
  tone: 'soft',
  element: `${id}.cut`,
});

/** Above and below the cut. */
const uprightMarks = (face: Cut, x: number): Placed[] => [
  mark(face, [x, -MARK.fromMm], [x, -MARK.toMm]),
  mark(face, [x, heightOf(face.size) + MARK.fromMm], [x, heightOf(face.size) + MARK.toMm]),
];

function cornerMarks(face: Cut): Placed[] {
  const [width, height] = [widthOf(face.size), heightOf(face.size)];
  const beside = [0, height].flatMap((y) => [
    mark(face, [-MARK.fromMm, y], [-MARK.toMm, y]),
    mark(face, [width + MARK.fromMm, y], [width + MARK.toMm, y]),
  ]);
  return [...beside, ...uprightMarks(face, 0), ...uprightMarks(face, width)];
}

const overlapMarks = (face: Cut): Placed[] =>
  face.surface.shape === 'wrap' && face.surface.overlapMm > 0
    ? uprightMarks(face, face.surface.circumferenceMm)
    : [];
