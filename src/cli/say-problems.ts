import type { Problem } from '../core/problem.ts';
import { cliWords, sayProblem } from '../words/index.ts';

/** To standard error, as sentences; answers with the exit status of a refused command. */
export function sayProblems(problems: readonly Problem[]): number {
  const sentences = problems.map((problem) => {
    const { says, mend } = sayProblem(problem);
    return cliWords.problem(says, mend);
  });
  process.stderr.write(`${sentences.join('\n')}\n`);
  return 1;
}
