import type { Problem } from '../../core/problem.ts';

/** The workshop's computer refused, or could not be asked. */
export class ApiProblem extends Error {
  readonly problems: readonly Problem[];
  /** Whether it answered at all: until it did, nobody knows whether the entry arrived. */
  readonly isAnswered: boolean;
  /** A full disk, a mistake of the program (5xx of RFC 9110): it says nothing of whether the entry is right. */
  readonly isBroken: boolean;

  constructor(problems: readonly Problem[], isAnswered: boolean, isBroken = false) {
    super(problems.map(({ code }) => code).join(', '));
    this.name = 'ApiProblem';
    this.problems = problems;
    this.isAnswered = isAnswered;
    this.isBroken = isBroken;
  }
}
