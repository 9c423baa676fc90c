import { scaleTables } from '../catalogue/index.ts';
import { done, type Result } from '../core/problem.ts';
import { type Exact, type ExactInput, MICROGRAMS_PER_GRAM } from '../core/quantity/index.ts';
import { findWorstErrorGrams, type Scale } from '../core/weighing/index.ts';
import type { ScaleRow } from '../storage/index.ts';

export const scaleOf = (row: ScaleRow): Scale => ({
  id: row.id,
  name: row.name,
  capacityGrams: row.capacity_grams,
  readabilityGrams: row.readability_grams,
  repeatabilityGrams: row.repeatability_grams,
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
