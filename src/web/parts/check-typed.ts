import type { Problem } from '../../core/problem.ts';
import { readDecimal } from '../../core/quantity/index.ts';
import { readWhole } from '../show/read-whole.ts';

export type FieldKind = 'text' | 'long' | 'decimal' | 'whole';

/** What is wrong with what was typed, as soon as the field is left. Nothing typed yet is not wrong yet. */
export function checkTyped(kind: FieldKind, typed: string, where: string): Problem | undefined {
  if (typed.trim() === '' || kind === 'text' || kind === 'long') return undefined;
  const result = kind === 'decimal' ? readDecimal(typed, where) : readWhole(typed, where);
  return result.ok ? undefined : result.problems[0];
}
