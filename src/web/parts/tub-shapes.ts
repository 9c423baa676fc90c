export type PictureKind = 'tub' | 'box' | 'tin' | 'lid' | 'label' | 'filled-tin';

interface Shape {
  /** Drawn around; what is inside of it is filled up to the level. */
  readonly outline: string;
  /** Drawn over it, never filled. */
  readonly strokes?: string;
  /** A lid that lies over the filling. */
  readonly cover?: string;
  /** Where the filling begins and ends. */
  readonly top: number;
  readonly bottom: number;
}

/** As they stand on a shelf of 96 by 120: what is weighed in a tub, what is counted in a stack of its own kind. */
export const SHAPES: Readonly<Record<PictureKind, Shape>> = {
  tub: {
    outline: 'M10 14h76l-5 96a6 6 0 0 1-6 6H21a6 6 0 0 1-6-6z',
    cover: 'M9 6h78a3 3 0 0 1 3 3v3a3 3 0 0 1-3 3H9a3 3 0 0 1-3-3V9a3 3 0 0 1 3-3z',
    top: 15,
    bottom: 115,
  },
  // The flaps of an open box.
  box: { outline: 'M14 30h68v86H14z', strokes: 'M14 30L4 12M82 30l10-18', top: 31, bottom: 115 },
  tin: stack([116, 84, 52], openTin, 26),
  lid: stack([116, 96, 76, 56, 36], lid, 20),
  'filled-tin': stack([116, 66], closedTin, 20),
  label: {
    outline: [24, 60, 96].map((y) => disc(32, y) + disc(64, y)).join(''),
    // The sheet that they stick on.
    strokes: 'M14 4h68v112H14z',
    top: 12,
    bottom: 108,
  },
};

interface Piece {
  readonly outline: string;
  readonly strokes: string;
}

/** Pieces that stand on one another, each on its bottom line. */
function stack(bottoms: readonly number[], draw: (bottom: number) => Piece, top: number): Shape {
  const pieces = bottoms.map(draw);
  return {
    outline: pieces.map((piece) => piece.outline).join(''),
    strokes: pieces.map((piece) => piece.strokes).join(''),
    top,
    bottom: 115,
  };
}

/** Low and wide, with a rolled rim. */
function openTin(bottom: number): Piece {
  return {
    outline: `M12 ${bottom - 26}h72v22a4 4 0 0 1-4 4H16a4 4 0 0 1-4-4z`,
    strokes: `M9 ${bottom - 26}h78`,
  };
}

/** A flat top with its skirt. */
function lid(bottom: number): Piece {
  return {
    outline: `M10 ${bottom}v-10a5 5 0 0 1 5-5h66a5 5 0 0 1 5 5v10z`,
    strokes: `M10 ${bottom - 5}h76`,
  };
}

/** A tin with its lid on, and a band for its label. */
function closedTin(bottom: number): Piece {
  return {
    outline: `M8 ${bottom - 46}h80v14h-4v28a4 4 0 0 1-4 4H16a4 4 0 0 1-4-4v-28H8z`,
    strokes: `M12 ${bottom - 32}h72M30 ${bottom - 22}h36M36 ${bottom - 13}h24`,
  };
}

function disc(x: number, y: number): string {
  return `M${x - 12} ${y}a12 12 0 1 1 24 0a12 12 0 1 1-24 0z`;
}
