import { type Fraction, fractionOf, type LinearRow, maximise, NOUGHT, UNIT } from '../linear/index.ts';
import type { ExactInput } from '../quantity/index.ts';
import type { RuleTold } from './told.ts';

/** A limit on the oils of a blend: of each oil's percent so much counts, and the sum is `most` percent at the most. */
export interface ScentBound {
  readonly name: string;
  readonly told: RuleTold;
  /** Where it holds, in the words of whoever asked. */
  readonly about?: readonly string[];
  /** By oil. */
  readonly weights: readonly Fraction[];
  readonly most: Fraction;
  /** Where it asks for at least so much of what gives way to the blend: in percent, as it was given. */
  readonly leastPercent?: string;
}

/** How much of the blend an oil makes up, as fractions of one. */
export interface ShareRange {
  readonly least: Fraction;
  readonly most: Fraction;
}

export interface ScentProgram {
  readonly ranges: readonly ShareRange[];
  readonly bounds: readonly ScentBound[];
}

export interface SolvedScent {
  /** Percent by mass of the finished product. */
  readonly total: Fraction;
  /** By oil. */
  readonly percents: readonly Fraction[];
  /** What the total hangs on; undefined where nothing but the whole product does. */
  readonly decidedBy: ScentBound | undefined;
}

const HUNDRED_PERCENT = fractionOf(100);

/**
 * The largest blend: x_i percent of each oil so that the sum T is the largest with, for every bound, sum of w_i x_i <= most,
 * and for every oil least_i T <= x_i <= most_i T. undefined: nothing of it lies within, not even none. A linear program; the bound whose price makes up most of the total decides.
 */
export function solveLargest({ ranges, bounds }: ScentProgram): SolvedScent | undefined {
  const answer = maximise({
    objective: ranges.map(() => UNIT),
    rows: [...bounds.map(rowOf), whole(ranges.length), ...ranges.flatMap(rowsOfRange)],
  });
  if (answer.status === 'unbounded') throw new Error('all of it is the whole product at the most');
  if (answer.status === 'infeasible') return undefined;
  return { total: answer.value, percents: answer.point, decidedBy: heaviest(bounds, answer.prices) };
}

/**
 * At this total the blend that strays least from the wish, by the sum of the percents that oils are off. undefined: the
 * total is not within the bounds.
 */
export function solveNearest(
  { ranges, bounds }: ScentProgram,
  total: Fraction,
  wish: readonly Fraction[],
): readonly Fraction[] | undefined {
  const count = ranges.length;
  const withOff = ({ coefficients, most }: LinearRow): LinearRow => ({
    coefficients: [...coefficients, ...wish.map(() => NOUGHT)],
    most,
  });
  const isTotal: LinearRow[] = [
    { coefficients: ranges.map(() => UNIT), most: total },
    { coefficients: ranges.map(() => UNIT.negated()), most: total.negated() },
  ];
  const answer = maximise({
    objective: [...ranges.map(() => NOUGHT), ...wish.map(() => UNIT.negated())],
    rows: [
      ...[...bounds.map(rowOf), ...ranges.flatMap(rowsOfRange), ...isTotal].map(withOff),
      ...wish.flatMap((share, index) => rowsOfWish(index, share.times(total), count)),
    ],
  });
  return answer.status === 'optimal' ? answer.point.slice(0, count) : undefined;
}

const rowOf = ({ weights, most }: ScentBound): LinearRow => ({ coefficients: weights, most });

const whole = (count: number): LinearRow => ({
  coefficients: Array.from({ length: count }, () => UNIT),
  most: HUNDRED_PERCENT,
});

/** x_i - most T <= 0 and least T - x_i <= 0, with T the sum of all. */
function rowsOfRange({ least, most }: ShareRange, index: number, all: readonly ShareRange[]): LinearRow[] {
  const row = (own: Fraction, others: Fraction): LinearRow => ({
    coefficients: all.map((_, place) => (place === index ? own : others)),
    most: NOUGHT,
  });
  return [row(UNIT.minus(most), most.negated()), row(least.minus(UNIT), least)];
}

/** How far an oil is off its wish is at least the difference, either way. */
function rowsOfWish(index: number, wished: Fraction, count: number): LinearRow[] {
  const row = (side: Fraction, most: Fraction): LinearRow => ({
    coefficients: Array.from({ length: 2 * count }, (_, place) =>
      place === index ? side : place === count + index ? UNIT.negated() : NOUGHT,
    ),
    most,
  });
  return [row(UNIT, wished), row(UNIT.negated(), wished.negated())];
}

/** Of several that bind the one that is worth most; at nought, where nothing is worth anything, the dearest. */
function heaviest(bounds: readonly ScentBound[], prices: readonly Fraction[]): ScentBound | undefined {
  let best: { readonly bound: ScentBound; readonly worth: Fraction; readonly price: Fraction } | undefined;
  for (const [index, bound] of bounds.entries()) {
    const price = prices[index] ?? NOUGHT;
    if (price.sign <= 0) continue;
    const worth = price.times(bound.most);
    const side = best === undefined ? 1 : worth.compare(best.worth);
    if (best === undefined || side > 0 || (side === 0 && price.compare(best.price) > 0))
      best = { bound, worth, price };
  }
  return best?.bound;
}

/** So much less of every bound: what is weighed may be more than what is wanted. */
export const shrink = (bound: ScentBound, marginFraction: ExactInput): ScentBound => ({
  ...bound,
  most: bound.most.times(UNIT.minus(fractionOf(marginFraction))),
});
