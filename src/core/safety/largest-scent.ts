import { fractionOf } from '../linear/index.ts';
import { done, type Problem, problem, type Result, refused } from '../problem.ts';
import { type ExactInput, exact, toText } from '../quantity/index.ts';
import { answerScent, type NearestWish, type ScentAnswer } from './answer-scent.ts';
import type { LimitsContext } from './judge-limits.ts';
import { type PartContents, readPartRules } from './part-bounds.ts';
import { type BlendOil, readShares } from './read-blend.ts';
import type { SafetyTables } from './safety-tables.ts';
import { type ScentBound, shrink } from './scent-program.ts';
import type { RuleTold } from './told.ts';

/** A limit that no table holds: the report's, the supplier's. */
export interface OwnBound {
  readonly name: string;
  readonly told: RuleTold;
  /** By oil, how much of it counts: 1 for the oil itself. */
  readonly weights: readonly ExactInput[];
  readonly mostPercent: ExactInput;
}

export interface ScentQuestion extends LimitsContext {
  readonly blend: readonly BlendOil[];
  /** The assessor's or the workshop's own maximum of the whole blend. */
  readonly mostPercent?: ExactInput | undefined;
  /** By so much every limit is undercut, so that what is weighed a little over stays within. */
  readonly marginFraction?: ExactInput | undefined;
  readonly ownBounds?: readonly OwnBound[] | undefined;
  /** As near as may be to these proportions, at this total or the largest that is within. */
  readonly nearest?: NearestWish | undefined;
}

/** The maximum that somebody set for the blend as a whole stands among the limits by this name. */
export const OWN_MOST = 'mostPercent';

/**
 * The largest scent: of a blend of oils the most, in percent by mass of the finished product, that keeps every known limit
 * of law, IFRA, supplier, report and workshop, for given proportions or within a range for each.
 *
 * Maximise T = sum of x_i with, for each limit, sum of w_i x_i <= (1 - margin) limit, where w_i is the content of the
 * substance in oil i as a fraction (1 for the oil itself, 1 / limit in a sum of shares), and least_i T <= x_i <= most_i T.
 * Exact in fractions. Valid for limits on the finished product, from 0 to 100 %; what only a certificate or a value that
 * nobody knows would decide is listed as unknown. Source of the limits: each bound names it.
 */
export function findLargestScent(tables: SafetyTables, question: ScentQuestion): Result<ScentAnswer> {
  const ranges = readShares(question.blend.map(({ share }) => share));
  if (!ranges.ok) return ranges;
  const problems = judgeMargin(question);
  if (problems.length > 0) return refused(...problems);
  const { bounds, unknown } = readPartRules(tables, question, question.blend.map(contentsOf));
  const program = { ranges: ranges.value, bounds: allBounds(question, bounds) };
  return done({ ...answerScent(program, question.nearest), unknown });
}

/** The oil itself, and what it holds: content of a natural material is natural, unless something else is told. */
const contentsOf = ({ share: _share, constituents, ...oil }: BlendOil): PartContents => [
  { ...oil, percent: 100 },
  ...constituents.map((one) => ({ ...one, origin: one.origin ?? 'natural' })),
];

function judgeMargin({ marginFraction = 0, mostPercent }: ScentQuestion): Problem[] {
  const margin = exact(marginFraction);
  return [
    ...(margin.lt(0) || margin.gte(1)
      ? [problem('margin-out-of-range', 'marginFraction', { found: toText(margin), allowed: '0 to below 1' })]
      : []),
    ...(mostPercent !== undefined && (exact(mostPercent).lt(0) || exact(mostPercent).gt(100))
      ? [
          problem('percent-out-of-range', 'mostPercent', {
            found: toText(exact(mostPercent)),
            allowed: '0 to 100',
          }),
        ]
      : []),
  ];
}

function allBounds(question: ScentQuestion, published: readonly ScentBound[]): ScentBound[] {
  const { blend, mostPercent, marginFraction = 0, ownBounds = [] } = question;
  const own: ScentBound[] = ownBounds.map(({ weights, mostPercent: most, ...rest }) => ({
    ...rest,
    weights: weights.map(fractionOf),
    most: fractionOf(most),
  }));
  const whole: ScentBound[] =
    mostPercent === undefined
      ? []
      : [
          {
            name: OWN_MOST,
            told: { kind: 'assessor' },
            weights: blend.map(() => fractionOf(1)),
            most: fractionOf(mostPercent),
          },
        ];
  return [...published, ...own, ...whole].map((bound) => shrink(bound, marginFraction));
}
