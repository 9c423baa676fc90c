import type { Problem } from '../../core/problem.ts';

/** The workshop's computer refused, or could not be asked. */
export class ApiProblem extends Error {
  readonly problems: readonly Problem[];
  /** Whether it answered at all: until it did, nobody knows whether the entry arrived. */
  readonly isAnswered: boolean;

  constructor(problems: readonly Problem[], isAnswered: boolean) {
    super(problems.map(({ code }) => code).join(', '));
    this.name = 'ApiProblem';
    this.problems = problems;
    this.isAnswered = isAnswered;
  }
}
