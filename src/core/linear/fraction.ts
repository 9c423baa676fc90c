import { type Exact, type ExactInput, exact } from '../quantity/index.ts';

/** An exact fraction of whole numbers, lowest terms, the denominator above nought: nothing rounds, however often it is divided. */
export class Fraction {
  readonly numerator: bigint;
  readonly denominator: bigint;

  constructor(numerator: bigint, denominator = 1n) {
    const sign = denominator < 0n ? -1n : 1n;
    const common = greatestCommonDivisor(numerator < 0n ? -numerator : numerator, sign * denominator);
    this.numerator = (sign * numerator) / common;
    this.denominator = (sign * denominator) / common;
  }

  plus(other: Fraction): Fraction {
    const { numerator: a, denominator: b } = this;
    const { numerator: c, denominator: d } = other;
    return b === d ? new Fraction(a + c, b) : new Fraction(a * d + c * b, b * d);
  }

  minus(other: Fraction): Fraction {
    return this.plus(other.negated());
  }

  times(other: Fraction): Fraction {
    return new Fraction(this.numerator * other.numerator, this.denominator * other.denominator);
  }

  /** By a fraction that is not nought. */
  over(other: Fraction): Fraction {
    return new Fraction(this.numerator * other.denominator, this.denominator * other.numerator);
  }

  negated(): Fraction {
    return new Fraction(-this.numerator, this.denominator);
  }

  /** Below nought, nought or above, like the difference from `other`. */
  compare(other: Fraction): -1 | 0 | 1 {
    const left = this.numerator * other.denominator;
    const right = other.numerator * this.denominator;
    return left < right ? -1 : left > right ? 1 : 0;
  }

  get sign(): -1 | 0 | 1 {
    return this.numerator < 0n ? -1 : this.numerator > 0n ? 1 : 0;
  }

  /** The largest decimal of so many places that is not above it; for fractions of nought or more. */
  roundedDown(places: number): Exact {
    const scaled = (this.numerator * 10n ** BigInt(places)) / this.denominator;
    return exact(`${scaled}e-${places}`);
  }

  /** The smallest decimal of so many places that is not below it; for fractions of nought or more. */
  roundedUp(places: number): Exact {
    const scaled = (this.numerator * 10n ** BigInt(places) + this.denominator - 1n) / this.denominator;
    return exact(`${scaled}e-${places}`);
  }

  /** As near as a double comes: for reading, never for judging. */
  get near(): number {
    return Number(exact(String(this.numerator)).div(String(this.denominator)));
  }
}

export const NOUGHT = new Fraction(0n);
export const UNIT = new Fraction(1n);

/** A decimal is a fraction over a power of ten. */
export function fractionOf(value: ExactInput): Fraction {
  const text = exact(value).toFixed();
  const places = text.split('.')[1]?.length ?? 0;
  return new Fraction(BigInt(text.replace('.', '')), 10n ** BigInt(places));
}

/** Euclid; of nought and any number it is that number. */
function greatestCommonDivisor(one: bigint, other: bigint): bigint {
  let [left, right] = [one, other];
  while (right !== 0n) [left, right] = [right, left % right];
  return left;
}
