import { type Problem, problem } from '../../core/problem.ts';
import { type SpokenProblem, sayProblem } from '../../words/index.ts';

const isEmptyText = ({ code, found, allowed }: Problem): boolean =>
  code === 'value-too-small' && found === '' && allowed === 1;

/** A problem as a page says it: an empty field is called empty, not a text that is too short. */
export const sayHere = (found: Problem): SpokenProblem =>
  sayProblem(isEmptyText(found) ? problem('text-missing', found.where) : found);
