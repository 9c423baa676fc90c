import { Fraction, fractionOf, NOUGHT } from '../linear/index.ts';
import { type Exact, type ExactInput, exact } from '../quantity/index.ts';
import type { LimitVerdict } from './limit-verdict.ts';
import { readWish, sumOfFractions } from './read-blend.ts';
import { type ScentBound, type ScentProgram, solveLargest, solveNearest } from './scent-program.ts';
import type { RuleTold } from './told.ts';

export interface DecidingBound {
  readonly name: string;
  readonly told: RuleTold;
  /** Where it holds, in the words of whoever asked. */
  readonly about?: readonly string[] | undefined;
  /** It asks for at least so much of what gives way to the scent, in percent of the product. */
  readonly leastPercent?: string | undefined;
}

export interface ScentLimit extends DecidingBound {
  /** At the answer, and what is allowed; of a sum of shares, as fractions of one. */
  readonly amount: number;
  readonly most: number;
  readonly shareOfLimit: number;
}

export interface ScentAnswer {
  /**
   * `no-limit-found`: none of the limits known here binds, which is not permission. `prohibited`: it may not be in it.
   * `over-without`: what is in the product besides is over a limit already.
   */
  readonly verdict: 'found' | 'no-limit-found' | 'prohibited' | 'over-without';
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

const PLACES = 12;
/** The last digit of an answer: what must lie below its limit is at least so much below. */
const STEP = new Fraction(1n, 10n ** BigInt(PLACES));

export interface NearestWish {
  readonly wish: readonly ExactInput[];
  readonly percent: ExactInput;
}

/** The answer of a program, told: what is the largest, what decides, what comes next, how close every limit is. */
export function answerScent(program: ScentProgram, nearest?: NearestWish): Omit<ScentAnswer, 'unknown'> {
  const solved = solveLargest(program);
  if (solved === undefined)
    return { ...NOTHING_BINDS, verdict: 'over-without', limits: overWithout(program) };
  const { total, percents, decidedBy } = solved;
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
    decidedBy: tell(decidedBy),
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
  if (next?.decidedBy === undefined) return undefined;
  return { percent: next.total.roundedDown(PLACES), decidedBy: tell(next.decidedBy) };
}

const tellLimits = (bounds: readonly ScentBound[], amounts: readonly Fraction[]): ScentLimit[] =>
  bounds
    .map((bound) => {
      const amount = amountOf(bound, amounts);
      const share = bound.most.sign === 0 ? NOUGHT : amount.over(bound.most);
      return { ...tell(bound), amount: amount.near, most: bound.most.near, shareOfLimit: share.near };
    })
    .sort((one, other) => other.shareOfLimit - one.shareOfLimit);

const tell = ({ name, told, about, leastPercent }: ScentBound): DecidingBound => ({
  name,
  told,
  ...(about && { about }),
  ...(leastPercent !== undefined && { leastPercent }),
});

/** What is over with no scent in it at all. */
const overWithout = ({ bounds }: ScentProgram): ScentLimit[] =>
  bounds
    .filter(({ most }) => most.sign < 0)
    .map((bound) => ({ ...tell(bound), amount: 0, most: bound.most.near, shareOfLimit: 1 }));
