import { type Fraction, fractionOf, NOUGHT, type StraightLine } from '../linear/index.ts';
import type { Counted } from './room-breaks.ts';

const HUNDRED_PERCENT = fractionOf(100);

/** One line of a formula whose amount moves while all the others keep their proportions and fill it up to a hundred. */
export interface MovingLine {
  readonly place: number;
  /** Now, below a hundred. */
  readonly percent: Fraction;
}

/** What it comes to with every line at its percent. */
export const countNow = (weights: readonly Fraction[], percents: readonly Fraction[]): Counted => ({
  weights,
  now: weights.reduce((sum, weight, index) => sum.plus(weight.times(percents[index] ?? NOUGHT)), NOUGHT),
});

/**
 * With x percent of the line: w x + r (100 - x), where w is how much counts of each percent of the line and r of each
 * percent of the rest, r = (now - w p) / (100 - p). A straight line in x, whatever is counted. Percent by mass.
 */
export function countAsMoved({ weights, now }: Counted, { place, percent }: MovingLine): StraightLine {
  const own = weights[place] ?? NOUGHT;
  const rest = now.minus(own.times(percent)).over(HUNDRED_PERCENT.minus(percent));
  return { slope: own.minus(rest), constant: rest.times(HUNDRED_PERCENT) };
}

export const difference = (one: StraightLine, other: StraightLine): StraightLine => ({
  slope: one.slope.minus(other.slope),
  constant: one.constant.minus(other.constant),
});

export const level = (height: Fraction): StraightLine => ({ slope: NOUGHT, constant: height });
