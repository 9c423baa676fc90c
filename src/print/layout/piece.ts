import type { Part, Placed } from './placed.ts';

/** A strip of a page that is never parted; its items are placed from its own top left. */
export interface Piece {
  readonly heightMm: number;
  /** White above it, unless it begins a page. */
  readonly gapMm: number;
  readonly items: readonly Placed[];
  /** A heading is of no use at the foot of a page. */
  readonly isKeptWithNext: boolean;
  /** Set again above it where it begins a page: the head of its table. */
  readonly head?: Piece;
  /** Field path, for a piece that is taller than a page. */
  readonly where: string;
}

/** What a builder of pieces hands back: the strips, and the structure that their items belong to. */
export interface Pieces {
  readonly pieces: readonly Piece[];
  readonly parts: readonly Part[];
}
