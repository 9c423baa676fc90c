import { scaleTables } from '../catalogue/index.ts';
import { done, type Result } from '../core/problem.ts';
import { type Exact, type ExactInput, exact, MICROGRAMS_PER_GRAM } from '../core/quantity/index.ts';
import { findWorstErrorGrams, type Scale } from '../core/weighing/index.ts';
import type { ScaleRow } from '../storage/index.ts';

export interface KnownRepeatability {
  readonly grams: string;
  readonly from: 'measured' | 'typed';
  /** null: it was typed before the day was kept. */
  readonly since: string | null;
}

/**
 * What is known of how well a scale repeats: the later of the test and of what was typed. A test of another step was of
 * another scale, or of this one before it was set otherwise, and says nothing of it now.
 */
export function repeatabilityOf(row: ScaleRow): KnownRepeatability | null {
  const typed: KnownRepeatability | null =
    row.repeatability_grams === null
      ? null
      : { grams: row.repeatability_grams, from: 'typed', since: row.repeatability_at };
  const { measured_grams, measured_at, measured_step_grams } = row;
  if (measured_grams == null || measured_at == null || measured_step_grams == null) return typed;
  if (!exact(measured_step_grams).eq(row.readability_grams)) return typed;
  if (typed?.since != null && Date.parse(typed.since) > Date.parse(measured_at)) return typed;
  return { grams: measured_grams, from: 'measured', since: measured_at };
}

/** The last check with its weight was not good: nothing is weighed on it until one is. */
export const isHeld = (row: ScaleRow): boolean => row.check_is_good === 0;

export const scaleOf = (row: ScaleRow): Scale => ({
  id: row.id,
  name: row.name,
  capacityGrams: row.capacity_grams,
  readabilityGrams: row.readability_grams,
  repeatabilityGrams: repeatabilityOf(row)?.grams ?? null,
  accuracyClass: row.accuracy_class as Scale['accuracyClass'],
  verificationIntervalGrams: row.verification_interval_grams,
});

export const findWorstError = (row: ScaleRow, netGrams: ExactInput): Result<Exact> =>
  findWorstErrorGrams(scaleOf(row), netGrams, scaleTables);

/** In whole micrograms, taken up: an error is never made smaller than it is. */
export function findWorstErrorUg(row: ScaleRow, netGrams: ExactInput): Result<number> {
  const error = findWorstError(row, netGrams);
  return error.ok ? done(error.value.times(MICROGRAMS_PER_GRAM).ceil().toNumber()) : error;
}
