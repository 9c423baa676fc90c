import { Fraction, fractionOf, NOUGHT } from '../linear/index.ts';
import { done, type Problem, problem, type Result, refused } from '../problem.ts';
import { type Exact, type ExactInput, exact, toText } from '../quantity/index.ts';
import { readRules } from './blend-bounds.ts';
import type { LimitsContext } from './judge-limits.ts';
import type { LimitVerdict } from './limit-verdict.ts';
import { type BlendOil, readShares, readWish, sumOfFractions } from './read-blend.ts';
import type { SafetyTables } from './safety-tables.ts';
import { type ScentBound, type ScentProgram, shrink, solveLargest, solveNearest } from './scent-program.ts';
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
  readonly nearest?: { readonly wish: readonly ExactInput[]; readonly percent: ExactInput } | undefined;
}

export interface DecidingBound {
  readonly name: string;
  readonly told: RuleTold;
}

export interface ScentLimit extends DecidingBound {
  /** At the answer, and what is allowed; of a sum of shares, as fractions of one. */
  readonly amount: number;
  readonly most: number;
  readonly shareOfLimit: number;
}

export interface ScentAnswer {
  /** `no-limit-found`: none of the limits known here binds, which is not permission. `prohibited`: it may not be in it. */
  readonly verdict: 'found' | 'no-limit-found' | 'prohibited';
  /** Percent by mass of the finished product, rounded down at the twelfth place. */
  readonly percent: Exact | undefined;
  /** By oil, its fraction of the blend. */
  readonly shares: readonly number[];
  /** By oil, percent of the finished product, rounded down. */
  readonly percents: readonly Exact[];
  readonly decidedBy: DecidingBound | undefined;
  /** Without what decides now: the next total, and what decides then; undefined where nothing else binds. */
  readonly relief: { readonly percent: Exact; readonly decidedBy: DecidingBound } | undefined;
  /** Every limit with its share at the answer, the closest first. */
  readonly limits: readonly ScentLimit[];
  /** What no table tells: it is decided elsewhere, and never counts as allowed. */
  readonly unknown: readonly LimitVerdict[];
}

/** The maximum that somebody set for the blend as a whole stands among the limits by this name. */
export const OWN_MOST = 'mostPercent';

const PLACES = 12;
/** The last digit of an answer: what must lie below its limit is at least so much below. */
const STEP = new Fraction(1n, 10n ** BigInt(PLACES));

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
  const ranges = readShares(question.blend);
  if (!ranges.ok) return ranges;
  const problems = judgeMargin(question);
  if (problems.length > 0) return refused(...problems);
  const { bounds, unknown } = readRules(tables, question, question.blend);
  const program = { ranges: ranges.value, bounds: allBounds(question, bounds) };
  return done({ ...answerTo(program, question), unknown });
}

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

function answerTo(program: ScentProgram, { nearest }: ScentQuestion): Omit<ScentAnswer, 'unknown'> {
  const { total, percents, decidedBy } = solveLargest(program);
  if (decidedBy === undefined) return NOTHING_BINDS;
  if (total.sign === 0) return { ...NOTHING_BINDS, verdict: 'prohibited', percent: exact(0), decidedBy };
  const wanted = nearest && lesser(fractionOf(nearest.percent), total);
  const blend =
    nearest && wanted ? (solveNearest(program, wanted, readWish(nearest.wish)) ?? percents) : percents;
  const shares = blend.map((each) => each.over(sumOfFractions(blend)));
  const within = below(wanted ?? total, shares, program.bounds);
  const amounts = shares.map((share) => share.times(within));
  return {
    verdict: 'found',
    percent: within.roundedDown(PLACES),
    shares: shares.map(({ near }) => near),
    percents: amounts.map((amount) => amount.roundedDown(PLACES)),
    decidedBy: { name: decidedBy.name, told: decidedBy.told },
    relief: findRelief(program, decidedBy),
    limits: tellLimits(program.bounds, amounts),
  };
}

const NOTHING_BINDS = {
  verdict: 'no-limit-found',
  percent: undefined,
  shares: [],
  percents: [],
  decidedBy: undefined,
  relief: undefined,
  limits: [],
} as const;

const lesser = (one: Fraction, other: Fraction): Fraction => (one.compare(other) < 0 ? one : other);

const amountOf = ({ weights }: ScentBound, amounts: readonly Fraction[]): Fraction =>
  sumOfFractions(weights.map((weight, index) => weight.times(amounts[index] ?? NOUGHT)));

/** A limit that must be undercut is not met at the limit itself: one step of the last place less is. */
function below(total: Fraction, shares: readonly Fraction[], bounds: readonly ScentBound[]): Fraction {
  const amounts = shares.map((share) => share.times(total));
  const isMet = bounds.some(
    (bound) => bound.told.isStrict === true && amountOf(bound, amounts).compare(bound.most) >= 0,
  );
  return isMet ? total.minus(STEP) : total;
}

function findRelief({ ranges, bounds }: ScentProgram, decidedBy: ScentBound): ScentAnswer['relief'] {
  const next = solveLargest({ ranges, bounds: bounds.filter((bound) => bound !== decidedBy) });
  if (next.decidedBy === undefined) return undefined;
  const { name, told } = next.decidedBy;
  return { percent: next.total.roundedDown(PLACES), decidedBy: { name, told } };
}

const tellLimits = (bounds: readonly ScentBound[], amounts: readonly Fraction[]): ScentLimit[] =>
  bounds
    .map((bound) => {
      const amount = amountOf(bound, amounts);
      const share = bound.most.sign === 0 ? NOUGHT : amount.over(bound.most);
      const { name, told } = bound;
      return { name, told, amount: amount.near, most: bound.most.near, shareOfLimit: share.near };
    })
    .sort((one, other) => other.shareOfLimit - one.shareOfLimit);
