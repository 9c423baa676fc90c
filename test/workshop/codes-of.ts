import type { Result } from '../../src/core/problem.ts';

/** What was refused, by code; nothing where it was done. */
export const codesOf = (result: Result<unknown>): string[] =>
  result.ok ? [] : result.problems.map((problem) => problem.code);
