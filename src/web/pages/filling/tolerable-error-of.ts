import { netContentsTables } from '../../../catalogue/index.ts';
import { findTolerableError } from '../../../core/filling/index.ts';
import { toText } from '../../../core/quantity/index.ts';

/** In grams; null: this size has none. */
export function tolerableErrorOf(declaredGrams: string): string | null {
  const found = findTolerableError(declaredGrams, 'up-0.1', netContentsTables);
  return found.ok ? toText(found.value.tolerableError) : null;
}
