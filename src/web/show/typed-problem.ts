import { type Problem, problem } from '../../core/problem.ts';
import { readDecimal } from '../../core/quantity/index.ts';

/** What is wrong with a typed figure; nothing typed, and a point that waits for its digits, are not wrong yet. */
export function typedProblem(typed: string, where: string, unit: string): Problem | undefined {
  if (typed.trim() === '' || /^\d+\.$/.test(typed)) return undefined;
  const read = readDecimal(typed, where);
  if (!read.ok) return read.problems[0];
  return unit !== '°C' && read.value.lt(0) ? problem('mass-negative', where, { found: typed }) : undefined;
}
