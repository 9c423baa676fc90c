import { type Fraction, fractionOf, NOUGHT } from '../linear/index.ts';
import { done, type Problem, problem, type Result, refused } from '../problem.ts';
import { type ExactInput, exact, sumOf, toText } from '../quantity/index.ts';
import type { ShareRange } from './scent-program.ts';
import type { Substance } from './substance.ts';

/** An oil of the blend, with what it holds. */
export interface BlendOil extends Substance {
  /** A part of the blend; or how much of the blend it may be, as fractions of one. */
  readonly share: ExactInput | readonly [ExactInput, ExactInput];
  /** In percent by mass of the oil: the most that it may hold. */
  readonly constituents: readonly (Substance & { readonly percent: ExactInput })[];
}

export type Share = BlendOil['share'];
const isRange = (share: Share): share is readonly [ExactInput, ExactInput] => Array.isArray(share);

/** Given proportions may be parts of any whole: 3 to 1, or 0.75 to 0.25. Beside a range every share is a fraction of one. */
export function readShares(shares: readonly Share[]): Result<ShareRange[]> {
  const problems = shares.length === 0 ? [problem('blend-empty', 'blend')] : shares.flatMap(judgeShare);
  if (problems.length > 0) return refused(...problems);
  if (!shares.some(isRange)) return readParts(shares as readonly ExactInput[]);
  const ranges = shares.map((share): ShareRange => {
    const [least, most] = isRange(share) ? share : [share, share];
    return { least: fractionOf(least), most: fractionOf(most) };
  });
  const off = judgeSum(shares);
  return off ? refused(off) : done(ranges);
}

function readParts(parts: readonly ExactInput[]): Result<ShareRange[]> {
  const whole = fractionOf(sumOf(parts));
  if (whole.sign === 0) return refused(problem('shares-all-nought', 'blend', { found: 0 }));
  return done(
    parts.map((part) => {
      const share = fractionOf(part).over(whole);
      return { least: share, most: share };
    }),
  );
}

function judgeShare(share: Share, index: number): Problem[] {
  const where = `blend[${index}].share`;
  const [least, most] = (isRange(share) ? share : [share, share]).map(exact);
  if (!least || !most) return [];
  if (least.lt(0)) return [problem('share-negative', where, { found: toText(least), allowed: 0 })];
  if (isRange(share) && most.gt(1))
    return [problem('share-above-one', where, { found: toText(most), allowed: 1 })];
  return least.gt(most)
    ? [problem('share-range-crossed', where, { found: toText(least), allowed: toText(most) })]
    : [];
}

/** All at the least must leave room for one, and all at the most must reach it. */
function judgeSum(shares: readonly Share[]): Problem | undefined {
  const leasts = sumOf(shares.map((share) => (isRange(share) ? share[0] : share)));
  const mosts = sumOf(shares.map((share) => (isRange(share) ? share[1] : share)));
  if (leasts.gt(1)) return problem('shares-too-much', 'blend', { found: toText(leasts), allowed: 1 });
  return mosts.lt(1)
    ? problem('shares-too-little', 'blend', { found: toText(mosts), allowed: 1 })
    : undefined;
}

/** What somebody would like, as fractions of one. */
export function readWish(wish: readonly ExactInput[]): readonly Fraction[] {
  const whole = fractionOf(sumOf(wish));
  return wish.map((part) => (whole.sign === 0 ? NOUGHT : fractionOf(part).over(whole)));
}

export const sumOfFractions = (fractions: readonly Fraction[]): Fraction =>
  fractions.reduce((sum, each) => sum.plus(each), NOUGHT);
