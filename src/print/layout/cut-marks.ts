import { type FaceSize, heightOf, outlinePath, widthOf } from './outline.ts';
import type { Placed } from './placed.ts';

interface Cut {
  readonly id: string;
  readonly size: FaceSize;
}

/** A hairline on the cut itself; a rectangle also has marks outside its corners, to lay a ruler on. */
export function cutMarks(face: Cut, xMm: number, yMm: number): Placed[] {
  const outline: Placed = {
    kind: 'path',
    d: outlinePath(face.size),
    xMm,
    yMm,
    strokeMm: 0.1,
    tone: 'soft',
    element: `${face.id}.cut`,
  };
  return face.size.shape === 'round' ? [outline] : [outline, ...cornerMarks(face, xMm, yMm)];
}

const MARK = { fromMm: 1, toMm: 3.5 };

function cornerMarks(face: Cut, xMm: number, yMm: number): Placed[] {
  const corners = [-1, 1].flatMap((across) => [-1, 1].map((down) => [across, down] as const));
  return corners.flatMap(([across, down]) => {
    const x = xMm + (across > 0 ? widthOf(face.size) : 0);
    const y = yMm + (down > 0 ? heightOf(face.size) : 0);
    const mark = (fromMm: [number, number], toMm: [number, number]): Placed => ({
      kind: 'rule',
      fromMm,
      toMm,
      thicknessMm: 0.1,
      tone: 'soft',
      element: `${face.id}.cut`,
    });
    return [
      mark([x + across * MARK.fromMm, y], [x + across * MARK.toMm, y]),
      mark([x, y + down * MARK.fromMm], [x, y + down * MARK.toMm]),
    ];
  });
}
