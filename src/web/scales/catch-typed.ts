import { decodeLine, type LinePattern } from './decode-line.ts';
import type { ScaleReading } from './reading.ts';

/** A hand does not type four keys of a number and Enter so fast one after the other (common practice, no source). */
export const FASTEST_HAND_MS = 45;
const SHORTEST = 2;
const OF_A_READING = /^[0-9.,+\-?\sA-Za-z]$/;

export interface TypedKey {
  readonly key: string;
  readonly atMs: number;
}

export interface TypedCatch {
  /** A whole reading came, and its Enter was its own: not a person's. */
  readonly reading: ScaleReading | null;
  /** The key belongs to a scale that types: a button under the focus must not have it. */
  readonly isOfScale: boolean;
}

const NOTHING: TypedCatch = { reading: null, isOfScale: false };

/**
 * Tells a scale that types like a keyboard from a hand, by how fast one key follows the other. Its Enter ends the
 * reading and does nothing else: a reading never enters by itself.
 */
export function makeTypedCatcher(pattern: LinePattern): (typed: TypedKey) => TypedCatch {
  let begun = '';
  let lastMs = Number.NEGATIVE_INFINITY;
  return ({ key, atMs }) => {
    const isFast = atMs - lastMs <= FASTEST_HAND_MS;
    lastMs = atMs;
    if (key === 'Enter') {
      const line = begun;
      begun = '';
      if (!isFast || line.trim().length < SHORTEST) return NOTHING;
      const reading = decodeLine(line, pattern);
      return reading.trouble === 'not-understood' ? NOTHING : { reading, isOfScale: true };
    }
    if (key.length !== 1 || !OF_A_READING.test(key)) {
      begun = '';
      return NOTHING;
    }
    begun = isFast ? begun + key : key;
    return { reading: null, isOfScale: isFast && begun.length > SHORTEST };
  };
}
