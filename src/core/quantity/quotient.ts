import type { Exact } from './exact.ts';

/**
 * A quotient of two whole numbers, of nought or more, that is divided only where somebody asks for its decimals: a
 * decimal takes a microsecond, and a formula that is checked while it is typed has hundreds of shares of which few
 * come near a limit.
 */
export class Quotient {
  readonly numerator: bigint;
  readonly denominator: bigint;
  readonly #divide: (numerator: bigint) => Exact;

  constructor(numerator: bigint, denominator: bigint, divide: (numerator: bigint) => Exact) {
    this.numerator = numerator;
    this.denominator = denominator;
    this.#divide = divide;
  }

  /** As a double; relative error at most 1.5 x 2^-52, from two readings and one division. */
  get near(): number {
    return Number(this.numerator) / Number(this.denominator);
  }

  toExact(): Exact {
    return this.#divide(this.numerator);
  }
}
