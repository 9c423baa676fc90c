import type { Placed } from './placed.ts';

/** Something of a fixed size that a panel has to find room for: a symbol, a code. */
export interface Fixture {
  readonly element: string;
  /** In words, for whoever has the page read out. */
  readonly alt: string;
  readonly widthMm: number;
  readonly heightMm: number;
  readonly moduleMm?: number;
  draw(leftMm: number, topMm: number): readonly Placed[];
}

/** White between two of them. */
const BETWEEN_MM = 1.5;

export const rowWidthMm = (row: readonly Fixture[]): number =>
  row.reduce((sum, { widthMm }) => sum + widthMm, 0) + BETWEEN_MM * Math.max(0, row.length - 1);

export const rowHeightMm = (row: readonly Fixture[]): number =>
  Math.max(0, ...row.map(({ heightMm }) => heightMm));

/** Side by side, standing on one line. */
export function placeRow(row: readonly Fixture[], leftMm: number, bottomMm: number): Placed[] {
  let left = leftMm;
  return row.flatMap((fixture) => {
    const items = fixture.draw(left, bottomMm - fixture.heightMm);
    left += fixture.widthMm + BETWEEN_MM;
    return items;
  });
}
