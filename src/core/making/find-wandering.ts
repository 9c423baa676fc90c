import { done, problem, type Result, refused } from '../problem.ts';
import { type Exact, type ExactInput, exact, HUNDRED, sumOf, ZERO } from '../quantity/index.ts';

/** One making: grams that went in of each line, by its key. */
export type Making = ReadonlyMap<string, ExactInput>;

export interface WanderingLine {
  readonly key: string;
  /** What the formula asks for, in percent by mass. */
  readonly percent: ExactInput;
  /** Half the width of its band, as a fraction of it. */
  readonly tolerance: ExactInput;
  /** The tightest limit and the report's range, in percent of the whole; null: nothing binds it there. */
  readonly limitPercent: ExactInput | null;
  readonly reportLeastPercent: ExactInput | null;
}

export interface Wandering {
  readonly key: string;
  readonly meanPercent: Exact;
  /** Sample standard deviation, with n - 1. */
  readonly spreadPercent: Exact;
  readonly leastPercent: Exact;
  readonly mostPercent: Exact;
  /** Where its room ends below and above, and what ends it. */
  readonly roomLowPercent: Exact;
  readonly roomHighPercent: Exact;
  readonly bound: 'limit' | 'report' | 'band';
  /** How much of its room the farthest making used: 1 is the edge; null: there is none, and a making went beyond. */
  readonly used: Exact | null;
}

/** With fewer no spread can be told from chance (common practice, no source). */
export const LEAST_MAKINGS = 3;

/**
 * Which line of a formula wanders from making to making, the one that matters most first. Shares in percent by mass:
 *
 *   p = 100 m / (sum of m);   s2 = sum of (p - mean)2 / (n - 1);
 *   used = the largest of (p - asked) / (high - asked) and (asked - p) / (asked - low) over all makings,
 *
 * with low and high the nearer of its band and what limits and report allow. Dimensionless `used`: 1 is the edge. Valid
 * for at least three makings. s as in ISO 5725-1 and every handbook of statistics; `used` is our own measure.
 */
export function findWandering(
  lines: readonly WanderingLine[],
  makings: readonly Making[],
): Result<Wandering[]> {
  if (makings.length < LEAST_MAKINGS)
    return refused(problem('makings-too-few', 'makings', { found: makings.length, allowed: LEAST_MAKINGS }));
  const empty = makings.findIndex((making) => !sumOf([...making.values()]).gt(0));
  if (empty !== -1) return refused(problem('mass-zero', `makings[${empty}]`, { found: 0 }));
  const found = lines.map((line) => wanderingOf(line, makings));
  return done(found.sort(byUse));
}

function wanderingOf(line: WanderingLine, makings: readonly Making[]): Wandering {
  const shares = makings.map((making) =>
    exact(making.get(line.key) ?? 0)
      .times(HUNDRED)
      .div(sumOf([...making.values()])),
  );
  const mean = sumOf(shares).div(shares.length);
  const squares = sumOf(shares.map((share) => share.minus(mean).times(share.minus(mean))));
  const sorted = [...shares].sort((one, other) => one.cmp(other));
  const room = roomOf(line);
  return {
    key: line.key,
    meanPercent: mean,
    spreadPercent: squares.div(shares.length - 1).sqrt(),
    leastPercent: sorted[0] ?? ZERO,
    mostPercent: sorted.at(-1) ?? ZERO,
    ...room,
    ...usedOf(line, room, shares),
  };
}

function roomOf({ percent, tolerance, limitPercent, reportLeastPercent }: WanderingLine) {
  const half = exact(percent).times(tolerance);
  const [low, high] = [exact(percent).minus(half), exact(percent).plus(half)];
  const isLimited = limitPercent !== null && exact(limitPercent).lt(high);
  const isReported = reportLeastPercent !== null && exact(reportLeastPercent).gt(low);
  return {
    roomLowPercent: isReported ? exact(reportLeastPercent) : low,
    roomHighPercent: isLimited ? exact(limitPercent) : high,
    isLimited,
    isReported,
  };
}

type Room = ReturnType<typeof roomOf>;

function usedOf(
  { percent }: WanderingLine,
  { roomLowPercent, roomHighPercent, isLimited, isReported }: Room,
  shares: readonly Exact[],
): Pick<Wandering, 'used' | 'bound'> {
  let used = ZERO;
  let bound: Wandering['bound'] = 'band';
  for (const share of shares) {
    const isAbove = share.gte(percent);
    const room = isAbove ? roomHighPercent.minus(percent) : exact(percent).minus(roomLowPercent);
    const off = share.minus(percent).abs();
    const end = isAbove ? (isLimited ? 'limit' : 'band') : isReported ? 'report' : 'band';
    // On its limit already there is no room to use a part of.
    if (!room.gt(0) && !off.isZero()) return { used: null, bound: end };
    if (!room.gt(0) || off.div(room).lte(used)) continue;
    used = off.div(room);
    bound = end;
  }
  return { used, bound };
}

/** What went beyond where there is no room comes first, then what used most of its own. */
const byUse = ({ used }: Wandering, { used: other }: Wandering): number =>
  used === null || other === null ? Number(used !== null) - Number(other !== null) : other.cmp(used);
