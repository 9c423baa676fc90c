import { done, type Problem, problem, type Result, refused } from '../problem.ts';
import { type Exact, type ExactInput, exact } from '../quantity/index.ts';

export interface YieldToJudge {
  readonly inputGrams: ExactInput;
  readonly yieldGrams: ExactInput;
  /** What the bowl is known to keep, in percent of what went in. */
  readonly expectedLossPercent: ExactInput;
  /** How far the loss may lie from that, in percent of what went in [2]. */
  readonly tolerancePercent?: ExactInput;
}

export interface YieldVerdict {
  readonly lossGrams: Exact;
  readonly lossPercent: Exact;
  /** `more-than-went-in`: no bowl gives more than it got; a weight or a tare is wrong. */
  readonly verdict: 'within' | 'more-lost' | 'less-lost' | 'more-than-went-in';
}

/** As wide as the mass balance of a lot (common practice, no source). */
const TOLERANCE_PERCENT = 2;

function problemsOf({ inputGrams, yieldGrams, expectedLossPercent }: YieldToJudge): Problem[] {
  const problems: Problem[] = [];
  const [input, output, expected] = [exact(inputGrams), exact(yieldGrams), exact(expectedLossPercent)];
  if (!input.gt(0))
    problems.push(problem('value-not-above', 'inputGrams', { found: input.toFixed(), allowed: 0 }));
  if (output.lt(0)) problems.push(problem('mass-negative', 'yieldGrams', { found: output.toFixed() }));
  if (expected.lt(0) || expected.gte(100)) {
    const where = 'expectedLossPercent';
    problems.push(
      problem('percent-out-of-range', where, { found: expected.toFixed(), allowed: '0 to below 100' }),
    );
  }
  return problems;
}

/**
 * Loss of a making: loss = input - yield; `within` where it lies no further than the tolerance from the expected loss,
 * both ends included. Judged by multiplying: 100 x loss against (expected +- tolerance) x input.
 */
export function judgeYield(making: YieldToJudge): Result<YieldVerdict> {
  const problems = problemsOf(making);
  if (problems.length > 0) return refused(...problems);
  const input = exact(making.inputGrams);
  const loss = input.minus(making.yieldGrams);
  const hundredfold = loss.times(100);
  const expected = exact(making.expectedLossPercent);
  const tolerance = making.tolerancePercent ?? TOLERANCE_PERCENT;
  const verdict = (): YieldVerdict['verdict'] => {
    if (loss.lt(0)) return 'more-than-went-in';
    if (hundredfold.gt(input.times(expected.plus(tolerance)))) return 'more-lost';
    return hundredfold.lt(input.times(expected.minus(tolerance))) ? 'less-lost' : 'within';
  };
  return done({ lossGrams: loss, lossPercent: hundredfold.div(input), verdict: verdict() });
}
