import { type Exact, exact, gramsFromMicrograms, largest } from '../../core/quantity/index.ts';
import type { ScaleRow } from '../../storage/index.ts';
import { findWorstError, findWorstErrorUg, repeatabilityOf } from '../scale-error.ts';

/** A weighing, or one that is still to come: which scale, how much, and what was kept of its error. */
export interface OnScale {
  readonly scale_id: string | null;
  readonly actual_ug: number;
  readonly error_ug?: number | null;
  readonly scale_failed?: number | null;
}

/**
 * By how much a weighing may be out at the worst, in grams; null: of that scale nobody knows it. What was kept with it
 * stands whatever is written down of its scale later; but a test that finds that the scale repeats less well counts.
 */
export function weighingErrorGrams(
  { scale_id, actual_ug, error_ug = null, scale_failed }: OnScale,
  scales: readonly ScaleRow[],
): Exact | null {
  // That it passes later says nothing of what it showed before.
  if (scale_failed === 1) return null;
  const scale = scales.find(({ id }) => id === scale_id);
  const found = scale && findWorstError(scale, gramsFromMicrograms(actual_ug));
  const now = found?.ok ? found.value : null;
  if (error_ug === null) return now;
  const then = exact(gramsFromMicrograms(error_ug));
  const isTested = scale !== undefined && repeatabilityOf(scale)?.from === 'measured';
  return now !== null && isTested ? largest(then, now) : then;
}

/** As its scale is now, to be kept with a weighing; null: nobody knows it. */
export function errorToKeepUg(
  scaleId: string | null,
  actualUg: number,
  scales: readonly ScaleRow[],
): number | null {
  const scale = scales.find(({ id }) => id === scaleId);
  const error = scale && findWorstErrorUg(scale, gramsFromMicrograms(actualUg));
  return error?.ok ? error.value : null;
}
