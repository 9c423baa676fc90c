import { type Problem, problem } from '../../core/problem.ts';
import { ApiProblem } from './api-problem.ts';

/** What to show for anything that went wrong: a mistake of ours is said too, never swallowed. */
export function problemsOf(error: unknown): readonly Problem[] {
  if (error === null || error === undefined) return [];
  if (error instanceof ApiProblem) return error.problems;
  const found = error instanceof Error ? error.message : String(error);
  return [problem('page-mistake', 'page', { found })];
}
