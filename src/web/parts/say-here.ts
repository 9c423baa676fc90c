import { type Problem, problem } from '../../core/problem.ts';
import { type SpokenProblem, sayProblem } from '../../words/index.ts';

const isEmptyText = ({ code, found, allowed }: Problem): boolean =>
  code === 'value-too-small' && found === '' && allowed === 1;

/** A problem as a page says it: the field goes by its label, and an empty one is called empty, not too short. */
export function sayHere(found: Problem, label?: string): SpokenProblem {
  const where = label ?? found.where;
  return sayProblem(isEmptyText(found) ? problem('text-missing', where) : { ...found, where });
}
