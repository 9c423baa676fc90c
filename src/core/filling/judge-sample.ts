import { done, type Problem, problem, type Result, refused } from '../problem.ts';
import type { CountStage, SamplingPlan } from './sampling-plan.ts';

export interface SampleVerdict {
  readonly verdict: 'accept' | 'reject' | 'second-sample';
  /** The stage that decided, or that left it open. */
  readonly stage: CountStage;
  readonly decidedBy: 'all-weighed' | 'sample' | 'first-sample' | 'both-samples';
}

/**
 * Judges the non-standard packs found, by the plan: one count, or for the double plan the first and, where it was
 * taken, the second sample alone. A first sample that decides is not overturned by a second.
 */
export function judgeSample(plan: SamplingPlan, nonStandard: readonly number[]): Result<SampleVerdict> {
  const problems = problemsOf(plan, nonStandard);
  if (problems.length > 0) return refused(...problems);
  const { scheme, first, both } = plan;
  const [firstCount = 0, secondCount] = nonStandard;
  if (both === undefined) {
    const decidedBy = scheme === 'all-weighed' ? 'all-weighed' : 'sample';
    return done({ verdict: firstCount < first.rejectFrom ? 'accept' : 'reject', stage: first, decidedBy });
  }
  if (firstCount <= first.acceptAtMost) {
    return done({ verdict: 'accept', stage: first, decidedBy: 'first-sample' });
  }
  if (firstCount >= first.rejectFrom) {
    return done({ verdict: 'reject', stage: first, decidedBy: 'first-sample' });
  }
  if (secondCount === undefined) {
    return done({ verdict: 'second-sample', stage: first, decidedBy: 'first-sample' });
  }
  const isAccepted = firstCount + secondCount <= both.acceptAtMost;
  return done({ verdict: isAccepted ? 'accept' : 'reject', stage: both, decidedBy: 'both-samples' });
}

function problemsOf({ first, both }: SamplingPlan, counts: readonly number[]): Problem[] {
  const mostCounts = both === undefined ? 1 : 2;
  if (counts.length === 0 || counts.length > mostCounts) {
    return [
      problem('samples-counted-wrong', 'nonStandard', {
        found: counts.length,
        allowed: mostCounts === 1 ? '1' : '1 or 2',
      }),
    ];
  }
  const sizes = [first.sampleSize, (both?.sampleSize ?? 0) - first.sampleSize];
  return counts.flatMap((count, index) =>
    count <= (sizes[index] ?? 0)
      ? []
      : [
          problem('more-counted-than-sampled', `nonStandard[${index}]`, {
            found: count,
            allowed: sizes[index] ?? 0,
          }),
        ],
  );
}
