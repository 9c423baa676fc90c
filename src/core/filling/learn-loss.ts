import { type Exact, type ExactInput, exact, largest, ZERO } from '../quantity/index.ts';

/** One batch that was filled to its end. */
export interface BatchLoss {
  readonly inGrams: ExactInput;
  /** What is neither in tins, nor kept, nor left for another run: bowl, whipping and filling together. */
  readonly lostGrams: ExactInput;
}

export interface LearntLoss {
  readonly from: 'formula' | 'workshop';
  /** To a tenth of a percent: what is told is what is planned with. */
  readonly percent: Exact;
  readonly leastPercent: Exact;
  readonly mostPercent: Exact;
  readonly batches: number;
}

/** Five tell how it goes these days, three are the fewest of which one may go wrong (common practice, no source). */
const LAST = 5;
const LEAST = 3;

/** Of what lost more something went wrong: thrown away, dropped, never filled. That is no rule (common practice, no source). */
const MOST_PERCENT = 25;

/**
 * What stays behind of a batch, as a percent of what went in: the middle one of the last five, of this formula where
 * there are three, else of the workshop's. null: too few yet. The newest first. What
 * lost more than a quarter teaches nothing, exactly a quarter does. Common practice, no source.
 */
export function learnLoss(own: readonly BatchLoss[], all: readonly BatchLoss[]): LearntLoss | null {
  const telling = own.filter(isTelling);
  const from = telling.length >= LEAST ? 'formula' : 'workshop';
  const known = (from === 'formula' ? telling : all.filter(isTelling)).slice(0, LAST);
  if (known.length < LEAST) return null;
  const sorted = known.map(percentOf).sort((one, other) => one.cmp(other));
  const [least = ZERO] = sorted;
  return {
    from,
    percent: largest(ZERO, medianOf(sorted)).toDecimalPlaces(1),
    leastPercent: least.toDecimalPlaces(1),
    mostPercent: (sorted.at(-1) ?? ZERO).toDecimalPlaces(1),
    batches: known.length,
  };
}

const isTelling = ({ inGrams, lostGrams }: BatchLoss): boolean =>
  exact(inGrams).gt(0) && exact(lostGrams).times(100).lte(exact(inGrams).times(MOST_PERCENT));

/** Errors of the weighings may let more come out than went in. */
const percentOf = ({ inGrams, lostGrams }: BatchLoss): Exact => exact(lostGrams).times(100).div(inGrams);

function medianOf(sorted: readonly Exact[]): Exact {
  const upper = sorted[Math.floor(sorted.length / 2)] ?? ZERO;
  const lower = sorted[Math.floor((sorted.length - 1) / 2)] ?? ZERO;
  return upper.plus(lower).div(2);
}

export interface ExpectedLoss {
  readonly percent: ExactInput;
  /** The greatest of the earlier ones; null: there are too few. */
  readonly mostPercent: ExactInput | null;
}

export interface LossVerdict {
  readonly isAbnormal: boolean;
  /** Above what is expected; below nought where less stayed behind. */
  readonly moreGrams: Exact;
}

/**
 * Whether more stayed behind than does as a rule: above the greatest of the earlier batches, half as much again as
 * expected, and a percent of the batch more (house rule). Exactly there is not above.
 */
export function judgeLoss(
  { inGrams, lostGrams }: BatchLoss,
  { percent, mostPercent }: ExpectedLoss,
): LossVerdict {
  const expected = exact(percent);
  const limit = largest(exact(mostPercent ?? 0), expected.times('1.5'), expected.plus(1));
  const lost = exact(lostGrams);
  return {
    isAbnormal: lost.times(100).gt(limit.times(inGrams)),
    moreGrams: lost.minus(expected.times(inGrams).div(100)),
  };
}
