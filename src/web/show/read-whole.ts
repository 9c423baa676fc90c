import { done, problem, type Result, refused } from '../../core/problem.ts';
import { readDecimal } from '../../core/quantity/index.ts';

/** Reads counted pieces: digits only, spaces between thousands allowed. */
export function readWhole(typed: string, where: string): Result<number> {
  if (typed.trim() === '') return refused(problem('count-missing', where));
  const read = readDecimal(typed, where);
  if (!read.ok) return read;
  if (read.value.lt(0)) return refused(problem('count-negative', where, { found: typed, allowed: 0 }));
  const isWhole = read.value.isInteger() && read.value.abs().lte(Number.MAX_SAFE_INTEGER);
  return isWhole
    ? done(read.value.toNumber())
    : refused(problem('not-a-whole-number', where, { found: typed }));
}
