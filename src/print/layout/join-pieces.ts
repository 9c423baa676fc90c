import type { Pieces } from './piece.ts';

export const joinPieces = (list: readonly Pieces[]): Pieces => ({
  pieces: list.flatMap(({ pieces }) => pieces),
  parts: list.flatMap(({ parts }) => parts),
});
