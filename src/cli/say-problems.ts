import type { Problem } from '../core/problem.ts';
import { cliWords, type SpokenProblem, sayProblem } from '../words/index.ts';

/** A problem that was put into words already, by whoever knows the workshop's clock. */
export type Spoken = Problem & Partial<SpokenProblem>;

/** To standard error, as sentences; answers with the exit status of a refused command. */
export function sayProblems(problems: readonly Spoken[]): number {
  const sentences = problems.map((problem) => {
    const { says, mend } = { ...sayProblem(problem), ...problem };
    return cliWords.problem(says, mend);
  });
  process.stderr.write(`${sentences.join('\n')}\n`);
  return 1;
}
