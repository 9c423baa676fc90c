import { type Problem, problem } from '../problem.ts';
import { type ExactInput, exact, toText } from '../quantity/index.ts';

/** Scales err, and little sticks: more than this above, or less than half, is rather a slip (common practice, no source). */
const MOST_TIMES = '1.02';
const LEAST_TIMES = '0.5';

/**
 * What is odd about the weight of a bowl, in grams, beside what should lie in it: more than went in (a tare forgotten), or
 * less than half (a part of it, or a figure ten times off). Nothing where nothing was weighed in.
 */
export function judgeBowlWeight(netGrams: ExactInput, expectedGrams: ExactInput, where: string): Problem[] {
  const [net, expected] = [exact(netGrams), exact(expectedGrams)];
  if (!expected.gt(0)) return [];
  const figures = { found: toText(net), allowed: toText(expected) };
  if (net.gt(expected.times(MOST_TIMES))) return [problem('bowl-heavier-than-filled', where, figures)];
  return net.lt(expected.times(LEAST_TIMES)) ? [problem('bowl-half-gone', where, figures)] : [];
}
