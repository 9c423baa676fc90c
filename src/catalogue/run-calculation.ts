import { problem, type Result, refused } from '../core/problem.ts';
import { calculations, findCalculation } from './registry.ts';

/** Runs one calculation by its name; every door refuses an unknown name alike. */
export function runCalculation(name: string, input: unknown): Result<unknown> {
  const calculation = findCalculation(name);
  if (calculation) return calculation.run(input);
  return refused(problem('calculation-unknown', 'name', { found: name, allowed: namesLike(name) }));
}

/** Names that share a word with the one typed, else all of them. */
function namesLike(name: string): string {
  const words = name.split('-').filter((word) => word.length > 2);
  const alike = calculations.filter((known) => words.some((word) => known.name.includes(word)));
  return (alike.length > 0 ? alike : calculations).map((known) => known.name).join(', ');
}
