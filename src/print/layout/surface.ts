/**
 * Where a label is stuck, by what a ruler measures. `wrap` goes round a jar: its strip is as long as the circumference and
 * an overlap, which is left blank at the right end, since the left end is stuck over it.
 */
export type Surface =
  | { readonly shape: 'round'; readonly diameterMm: number }
  | {
      readonly shape: 'rectangle';
      readonly widthMm: number;
      readonly heightMm: number;
      readonly cornerRadiusMm?: number;
    }
  | {
      readonly shape: 'wrap';
      readonly circumferenceMm: number;
      readonly heightMm: number;
      readonly overlapMm: number;
    };

/**
 * front: what the buyer sees first. back: what the law wants besides. whole: both on one piece. sticker: lot and date, small,
 * put on last. leaflet: what may be enclosed instead.
 */
export type SurfaceRole = 'front' | 'back' | 'whole' | 'sticker' | 'leaflet';
