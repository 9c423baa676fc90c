/** What a label's face is cut to, in millimetres. */
export type FaceSize =
  | { readonly shape: 'round'; readonly diameterMm: number }
  | {
      readonly shape: 'rectangle';
      readonly widthMm: number;
      readonly heightMm: number;
      readonly cornerRadiusMm?: number;
    };

export interface Reach {
  readonly left: number;
  readonly right: number;
}

/** Where text may stand: between top and bottom, and for each strip of height from left to right. */
export interface Region {
  readonly topMm: number;
  readonly bottomMm: number;
  readonly widestMm: number;
  /** Null where the strip leaves the region. */
  reachOf(topMm: number, bottomMm: number): Reach | null;
}

export const widthOf = (size: FaceSize): number => (size.shape === 'round' ? size.diameterMm : size.widthMm);
export const heightOf = (size: FaceSize): number =>
  size.shape === 'round' ? size.diameterMm : size.heightMm;

/** Sums of millimetres in binary may miss the edge by this much; no printer sees it. */
const ROUNDING_MM = 1e-6;

/** Round: half the chord at a distance from the centre, by Pythagoras; 0 outside. */
const halfChord = (radius: number, distance: number): number =>
  Math.sqrt(Math.max(0, radius * radius - distance * distance));

/** The face less a margin that cutting may eat into. */
export function insetRegion(size: FaceSize, leastInsetMm: number): Region {
  const insetMm = squareInset(size, leastInsetMm);
  const topMm = insetMm;
  const bottomMm = heightOf(size) - insetMm;
  const reachOf = (top: number, bottom: number): Reach | null => {
    if (top < topMm - ROUNDING_MM || bottom > bottomMm + ROUNDING_MM) return null;
    const half = halfWidthAt(size, insetMm, top, bottom);
    const centre = widthOf(size) / 2;
    return half > 0 ? { left: centre - half, right: centre + half } : null;
  };
  return { topMm, bottomMm, widestMm: widthOf(size) - 2 * insetMm, reachOf };
}

function halfWidthAt(size: FaceSize, insetMm: number, top: number, bottom: number): number {
  if (size.shape === 'rectangle') return size.widthMm / 2 - insetMm;
  const centre = size.diameterMm / 2;
  const farthest = Math.max(Math.abs(top - centre), Math.abs(bottom - centre));
  return halfChord(centre - insetMm, farthest);
}

/**
 * So far in stands a rectangle with square corners in one with rounded ones, that its corners keep the inset too: the corner
 * lies on the diagonal of a quarter circle of the radius less the inset. Its left edge is straight, and so are its lines.
 */
function squareInset(size: FaceSize, insetMm: number): number {
  const radius = size.shape === 'rectangle' ? (size.cornerRadiusMm ?? 0) : 0;
  return insetMm + Math.max(0, radius - insetMm) * (1 - Math.SQRT1_2);
}

/** Outline as an SVG path, in millimetres from its top left. */
export function outlinePath(size: FaceSize): string {
  if (size.shape === 'rectangle') return rectanglePath(size);
  const d = size.diameterMm;
  return `M0 ${d / 2}a${d / 2} ${d / 2} 0 1 0 ${d} 0a${d / 2} ${d / 2} 0 1 0 ${-d} 0Z`;
}

function rectanglePath({
  widthMm: w,
  heightMm: h,
  cornerRadiusMm: r = 0,
}: FaceSize & { readonly shape: 'rectangle' }): string {
  if (r === 0) return `M0 0H${w}V${h}H0Z`;
  const corner = (dx: number, dy: number): string => `a${r} ${r} 0 0 1 ${dx} ${dy}`;
  return `M${r} 0H${w - r}${corner(r, r)}V${h - r}${corner(-r, r)}H${r}${corner(-r, -r)}V${r}${corner(r, -r)}Z`;
}
