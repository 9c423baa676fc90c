import type { Exact, ExactInput } from '../../core/quantity/index.ts';
import type { ScaleRow } from '../../storage/index.ts';
import { findWorstError } from '../scale-error.ts';

/** By how much a weighing of this mass may be out at the worst, in grams; null: of that scale nobody knows it. */
export function weighingErrorGrams(scale: ScaleRow | undefined, grams: ExactInput): Exact | null {
  const error = scale && findWorstError(scale, grams);
  return error?.ok ? error.value : null;
}
