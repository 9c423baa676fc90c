import { labelWords } from '../../../words/index.ts';
import type { DesignDetails, Label, LabelCounts } from './label.ts';

/** What can be printed in one go: pieces that lie on the same sheet, and each by itself. */
export interface PrintChoice {
  readonly id: string;
  readonly name: string;
  readonly pieces: readonly string[];
  /** The sheet that the design has them on; '': plain paper. */
  readonly sheetId: string;
}

export function printChoices(label: Label, design: DesignDetails): PrintChoice[] {
  const sheetOf = (id: string): string => design.pieces.find((piece) => piece.id === id)?.sheetId ?? '';
  const single = label.pieces.map(({ id, role }) => ({
    id,
    name: labelWords.roles[role],
    pieces: [id],
    sheetId: sheetOf(id),
  }));
  const stuckOn = label.pieces.filter(({ role }) => role !== 'leaflet');
  const groups = [...new Set(stuckOn.map(({ id }) => sheetOf(id)))].flatMap((sheetId) => {
    const together = stuckOn.filter(({ id }) => sheetOf(id) === sheetId);
    if (together.length < 2) return [];
    const name = together.map(({ role }) => labelWords.roles[role]).join(', ');
    return [{ id: `with ${sheetId}`, name, pieces: together.map(({ id }) => id), sheetId }];
  });
  return [...groups, ...single];
}

/** How many were printed of the one of which there are fewest. */
export const printedOf = (pieces: readonly string[], counts: LabelCounts | undefined): number =>
  Math.min(...pieces.map((id) => counts?.rows.find(({ pieceId }) => pieceId === id)?.printed ?? 0));

/** How many of them are on tins or may still be stuck on: what was spoilt is printed again. */
export const usableOf = (pieces: readonly string[], counts: LabelCounts): number =>
  Math.min(
    ...pieces.map((id) => {
      const row = counts.rows.find(({ pieceId }) => pieceId === id);
      return row === undefined ? 0 : row.printed - row.spoilt;
    }),
  );
