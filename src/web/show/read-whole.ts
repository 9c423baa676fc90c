import { done, problem, type Result, refused } from '../../core/problem.ts';
import { readDecimal } from '../../core/quantity/index.ts';

/** Reads whole things, such as tins or months: digits only, spaces between thousands allowed. */
export function readWhole(typed: string, where: string, least = 0): Result<number> {
  if (typed.trim() === '') return refused(problem('count-missing', where));
  const read = readDecimal(typed, where);
  if (!read.ok || !read.value.isInteger() || read.value.abs().gt(Number.MAX_SAFE_INTEGER))
    return refused(problem('not-a-whole-number', where, { found: typed, allowed: least }));
  const value = read.value.toNumber();
  if (value >= least) return done(value);
  const code = value < 0 ? 'count-negative' : 'count-below-least';
  return refused(problem(code, where, { found: typed, allowed: least }));
}
