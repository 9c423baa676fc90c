import { done, problem, type Result, refused } from '../problem.ts';
import { type Exact, type ExactInput, exact } from './exact.ts';

/** Whole micrograms: the ledger's unit of mass. Branded so that it is never mixed with grams or pieces. */
export type Micrograms = number & { readonly __unit: 'micrograms' };
/** Whole pieces: tins, lids, labels. */
export type Pieces = number & { readonly __unit: 'pieces' };

export const MICROGRAMS_PER_GRAM = 1_000_000;
/** 9 007 199 254.740991 g, about nine thousand tonnes: the largest whole number that JavaScript keeps exactly. */
const LARGEST_GRAMS = exact(Number.MAX_SAFE_INTEGER).div(MICROGRAMS_PER_GRAM);

/** Grams to the ledger's whole micrograms. Refuses a fraction of a microgram instead of rounding it away. */
export function microgramsFromGrams(grams: ExactInput, where = 'grams'): Result<Micrograms> {
  const value = exact(grams);
  if (!value.isFinite()) return refused(problem('not-a-number', where, { found: String(grams) }));
  if (value.abs().gt(LARGEST_GRAMS)) {
    return refused(
      problem('mass-too-large', where, { found: value.toFixed(), allowed: LARGEST_GRAMS.toFixed() }),
    );
  }
  const micrograms = value.times(MICROGRAMS_PER_GRAM);
  if (!micrograms.isInteger()) {
    return refused(problem('mass-too-fine', where, { found: value.toFixed(), allowed: 0.000001 }));
  }
  return done(micrograms.toNumber() as Micrograms);
}

export const gramsFromMicrograms = (micrograms: number): Exact => exact(micrograms).div(MICROGRAMS_PER_GRAM);

/** Exact factor of the international avoirdupois pound agreement, 1959: 1 lb = 0.45359237 kg. */
export const GRAMS_PER_OUNCE = exact('28.349523125');
