import type { Fraction } from './fraction.ts';

export interface StretchEnd {
  readonly at: Fraction;
  /** The end itself belongs to it. */
  readonly isIn: boolean;
}

/** All numbers from one end to the other; without an end it goes on for ever. */
export interface Stretch {
  readonly from?: StretchEnd | undefined;
  readonly to?: StretchEnd | undefined;
}

/** slope x + constant */
export interface StraightLine {
  readonly slope: Fraction;
  readonly constant: Fraction;
}

/** Where a straight line is above nought, or with `orAt` at nought too; undefined: nowhere. */
export function stretchAbove({ slope, constant }: StraightLine, orAt: boolean): Stretch | undefined {
  if (slope.sign === 0) return constant.sign > 0 || (orAt && constant.sign === 0) ? {} : undefined;
  const end: StretchEnd = { at: constant.negated().over(slope), isIn: orAt };
  return slope.sign > 0 ? { from: end } : { to: end };
}

/** What both have; undefined: nothing. */
export function overlapOf(one: Stretch | undefined, other: Stretch | undefined): Stretch | undefined {
  if (!one || !other) return undefined;
  const from = inner(one.from, other.from, 1);
  const to = inner(one.to, other.to, -1);
  return from && to && isCrossed(from, to) ? undefined : { from, to };
}

/** Of two ends the one that lets in less: the later start, the earlier end. */
function inner(
  one: StretchEnd | undefined,
  other: StretchEnd | undefined,
  later: 1 | -1,
): StretchEnd | undefined {
  if (!one || !other) return one ?? other;
  const side = one.at.compare(other.at) * later;
  if (side === 0) return one.isIn ? other : one;
  return side > 0 ? one : other;
}

function isCrossed(from: StretchEnd, to: StretchEnd): boolean {
  const side = from.at.compare(to.at);
  return side > 0 || (side === 0 && !(from.isIn && to.isIn));
}

export const isWithin = (value: Fraction, { from, to }: Stretch): boolean =>
  (!from || isPast(value.compare(from.at), from)) && (!to || isPast(to.at.compare(value), to));

const isPast = (side: number, { isIn }: StretchEnd): boolean => side > 0 || (isIn && side === 0);
