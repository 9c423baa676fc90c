import type { z } from 'zod';
import { scaleTables } from '../catalogue/index.ts';
import type { workshop } from '../contract/index.ts';
import { toText } from '../core/quantity/index.ts';
import { findActionLimit } from '../core/weighing/index.ts';
import type { ScaleRow } from '../storage/index.ts';
import { isHeld, repeatabilityOf, scaleOf } from './scale-error.ts';

type ScaleView = z.output<typeof workshop.workshop>['scales'][number];

/** A scale with what it has proved, as of a day of the workshop. */
export const viewScale = (row: ScaleRow, today: string): ScaleView => ({
  id: row.id,
  name: row.name,
  capacityGrams: row.capacity_grams,
  readabilityGrams: row.readability_grams,
  repeatabilityGrams: row.repeatability_grams,
  accuracyClass: row.accuracy_class as ScaleView['accuracyClass'],
  verificationIntervalGrams: row.verification_interval_grams,
  checkWeightGrams: row.check_weight_grams,
  checkToleranceGrams: row.check_tolerance_grams,
  repeatability: repeatabilityOf(row),
  check: viewCheck(row, today),
  version: row.version,
});

/** One that was not good today or any day before, or none that was good today. Without a weight nothing can be due. */
export const isCheckDue = (row: ScaleRow, today: string): boolean =>
  row.check_weight_grams !== null && (row.check_on !== today || isHeld(row));

function viewCheck(row: ScaleRow, today: string): ScaleView['check'] {
  const { check_weight_grams: weightGrams } = row;
  if (weightGrams === null) return null;
  const toleranceGrams = row.check_tolerance_grams ?? '0';
  const limit = findActionLimit(scaleOf(row), { weightGrams, toleranceGrams }, scaleTables);
  return {
    isDue: isCheckDue(row, today),
    isHeld: isHeld(row),
    lastAt: row.check_at ?? null,
    isGood: row.check_is_good == null ? null : row.check_is_good === 1,
    weightGrams,
    toleranceGrams,
    limitGrams: limit.ok ? toText(limit.value.limitGrams) : null,
    limitBy: limit.ok ? limit.value.decidedBy : null,
    isWeightRough: limit.ok && limit.value.isWeightRough,
  };
}
