import { Fraction, fractionOf, NOUGHT } from '../linear/index.ts';
import { type ExactInput, exact, Quotient } from '../quantity/index.ts';

/**
 * Sums of percentages that are compared with a limit exactly, and fast enough to judge a formula while it is typed.
 *
 * A percentage of at most 12 decimal places is a whole number of picopercent (1e-12 %), which a double keeps exactly
 * (100 % is 1e14, below 2^53 = 9.007e15): such sums are whole-number sums without error. Anything finer is summed as
 * doubles, whose relative error is below n x 2^-53 (1.2e-13 for a thousand terms); only when the sum lies within
 * 1e-12 of the limit is it added again as fractions of whole numbers. Never as decimals: three sixths that are rounded
 * before they are added come to more than a half.
 */
const PICOPERCENT = 1e12;
const PICOPERCENT_WHOLE = 10n ** 12n;
/** 15 digits, which a double keeps whatever they are. */
const LARGEST_PICO = 1e15;
const DOUBT = 1e-12;

export interface PercentSum {
  /** As a double. */
  readonly near: number;
  /** Whole picopercent, or NaN where a term is finer than that. */
  readonly pico: number;
  /** What was given, or what was added. */
  readonly from: ExactInput | Quotient | readonly PercentSum[];
}

/** 1 mg/kg is 1e-4 %. */
const PICOPERCENT_PER_UNIT = { percent: PICOPERCENT, 'mg-per-kg': 1e8 } as const;

/** A published limit as whole picopercent. */
export const picopercentFrom = (value: number, unit: 'percent' | 'mg-per-kg' = 'percent'): number =>
  Math.round(value * PICOPERCENT_PER_UNIT[unit]);

export const percentFromPico = (pico: number): number => pico / PICOPERCENT;

/**
 * Exact: a decimal of at most 15 digits and its double determine each other, so a double that equals
 * pico / 1e12 is that decimal and no other.
 */
function picoOfNumber(value: number): number {
  const pico = Math.round(value * PICOPERCENT);
  return pico / PICOPERCENT === value && Math.abs(pico) <= LARGEST_PICO ? pico : Number.NaN;
}

/** At most 15 digits, so that it and its double determine each other (see picoOfNumber). */
const PLAIN_PERCENT = /^\d{1,3}(?:\.\d{1,12})?$/;

/** Whole picopercent where the division comes out even. */
function readQuotient(from: Quotient): PercentSum {
  const { numerator, denominator } = from;
  const scaled = numerator * PICOPERCENT_WHOLE;
  const pico = scaled % denominator === 0n ? Number(scaled / denominator) : Number.NaN;
  if (!(pico <= LARGEST_PICO)) return { near: from.near, pico: Number.NaN, from };
  return { near: pico / PICOPERCENT, pico, from };
}

export function readPercent(value: ExactInput | Quotient): PercentSum {
  if (value instanceof Quotient) return readQuotient(value);
  if (typeof value === 'number') return { near: value, pico: picoOfNumber(value), from: value };
  if (typeof value === 'string' && PLAIN_PERCENT.test(value)) {
    const near = Number(value);
    return { near, pico: Math.round(near * PICOPERCENT), from: value };
  }
  const decimal = exact(value);
  const near = decimal.toNumber();
  const pico = decimal.decimalPlaces() <= 12 ? Math.round(near * PICOPERCENT) : Number.NaN;
  return { near, pico, from: decimal };
}

export function addPercents(sums: readonly PercentSum[]): PercentSum {
  const [only] = sums;
  if (only !== undefined && sums.length === 1) return only;
  let near = 0;
  let pico = 0;
  for (const sum of sums) {
    near += sum.near;
    pico += sum.pico;
  }
  return { near, pico, from: sums };
}

/** -1, 0 or 1: the sum against a limit in whole picopercent. */
export function comparePercent(sum: PercentSum, limitPico: number): -1 | 0 | 1 {
  if (!Number.isNaN(sum.pico)) return Math.sign(sum.pico - limitPico) as -1 | 0 | 1;
  const near = sum.near * PICOPERCENT;
  const doubt = Math.max(near, limitPico) * DOUBT;
  if (near > limitPico + doubt) return 1;
  if (near < limitPico - doubt) return -1;
  return toFraction(sum).compare(new Fraction(BigInt(limitPico), PICOPERCENT_WHOLE));
}

/** -1, 0 or 1: one sum against another. */
export function compareSums(one: PercentSum, other: PercentSum): -1 | 0 | 1 {
  const between = one.pico - other.pico;
  if (!Number.isNaN(between)) return Math.sign(between) as -1 | 0 | 1;
  const doubt = Math.max(one.near, other.near) * DOUBT;
  if (one.near > other.near + doubt) return 1;
  if (one.near < other.near - doubt) return -1;
  return toFraction(one).compare(toFraction(other));
}

/** For display and JSON: exact down to 1e-12 %, else the nearest double of the sum. */
export const toPercent = (sum: PercentSum): number =>
  Number.isNaN(sum.pico) ? sum.near : sum.pico / PICOPERCENT;

const isSum = (from: PercentSum['from']): from is readonly PercentSum[] => Array.isArray(from);

export const exactFraction = (value: ExactInput | Quotient): Fraction =>
  value instanceof Quotient ? new Fraction(value.numerator, value.denominator) : fractionOf(value);

/** Without any rounding, whatever was added. */
export const toFraction = ({ from }: PercentSum): Fraction =>
  isSum(from) ? from.reduce((total, each) => total.plus(toFraction(each)), NOUGHT) : exactFraction(from);
