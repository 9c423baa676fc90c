import type { ScaleReading } from './reading.ts';

/** A scale that has not settled by then stands in a draught or shakes (common practice, no source). */
export const SETTLES_WITHIN_MS = 8000;
/** Equal readings in a row that count as settled, where the scale itself marks nothing (common practice, no source). */
const EQUAL_IN_A_ROW = 3;

export interface Settling {
  readonly reading: ScaleReading | null;
  /** When it began to move; null: it stands, or tells nothing. */
  readonly movingSince: number | null;
  readonly equal: number;
}

export const NOTHING_READ: Settling = { reading: null, movingSince: null, equal: 0 };

export type SettlesBy = 'mark' | 'equal';

/** The next reading of a scale that tells one after another, at a moment in milliseconds. */
export function settleReading(before: Settling, read: ScaleReading, atMs: number, by: SettlesBy): Settling {
  const isEqual = read.grams !== null && read.grams === before.reading?.grams;
  const equal = isEqual ? before.equal + 1 : 1;
  const isStable = read.isStable && (by === 'mark' || equal >= EQUAL_IN_A_ROW);
  const isMoving = read.grams !== null && !isStable;
  return {
    reading: { ...read, isStable },
    movingSince: isMoving ? (before.movingSince ?? atMs) : null,
    equal,
  };
}

export const isRestless = ({ movingSince }: Settling, nowMs: number): boolean =>
  movingSince !== null && nowMs - movingSince >= SETTLES_WITHIN_MS;
