import { type Problem, problem, type Result, refused } from '../../core/problem.ts';
import { readDecimal } from '../../core/quantity/index.ts';
import { readWhole } from '../show/read-whole.ts';

/** `digits`: a code, typed with the number keys and read as text. */
export type FieldKind = 'text' | 'long' | 'decimal' | 'whole' | 'digits';

/** What is wrong with what was typed, as soon as the field is left. Nothing typed yet is not wrong yet. */
export function checkTyped(
  kind: FieldKind,
  typed: string,
  where: string,
  { unit, least }: { readonly unit?: string | undefined; readonly least?: number | undefined } = {},
): Problem | undefined {
  if (typed.trim() === '' || kind === 'text' || kind === 'long' || kind === 'digits') return undefined;
  const result = kind === 'decimal' ? readAmount(typed, where, unit) : readWhole(typed, where, least);
  return result.ok ? undefined : result.problems[0];
}

/** A temperature may lie below nought, a mass may not. */
function readAmount(typed: string, where: string, unit: string | undefined): Result<unknown> {
  const read = readDecimal(typed, where);
  if (!read.ok || unit !== 'g' || !read.value.lt(0)) return read;
  return refused(problem('mass-negative', where, { found: typed }));
}
