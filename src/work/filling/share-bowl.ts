import { done, problem, type Result, refused } from '../../core/problem.ts';
import { gramsText } from '../quantity-text.ts';

export interface BowlShares {
  /** What the ledger says the bowl holds. */
  readonly onHandUg: number;
  readonly filledUg: number;
  readonly retainedUg: number;
  /** In tins that were put aside, and not put back. */
  readonly asideUg: number;
  /** Weighed, what is left in the bowl. */
  readonly leftUg: number;
  /** In tins of other runs that are not booked yet. */
  readonly elsewhereUg: number;
  /** By how much the weighings together may be off. */
  readonly slackUg: number;
}

export interface SharedBowl {
  readonly lostUg: number;
  /** Found above the ledger, within the errors of the weighings: counted in, so that nothing is overdrawn. */
  readonly foundUg: number;
}

/**
 * Where the bowl went, in micrograms: on hand + found = filled + retained + aside + left + elsewhere + lost, exactly; lost and
 * found are never below nought, and one of them is nought. More than the weighings' errors above what the bowl held is
 * refused: then a figure is wrong.
 */
export function shareBowl(shares: BowlShares): Result<SharedBowl> {
  const { onHandUg, filledUg, retainedUg, asideUg, leftUg, elsewhereUg, slackUg } = shares;
  const accounted = filledUg + retainedUg + asideUg + leftUg + elsewhereUg;
  if (accounted > onHandUg + slackUg) {
    return refused(
      problem('bowl-held-less', 'leftGrams', {
        found: gramsText(accounted),
        allowed: gramsText(onHandUg),
        parameters: {
          filled: gramsText(filledUg),
          retained: gramsText(retainedUg + asideUg),
          left: gramsText(leftUg),
        },
      }),
    );
  }
  return done({
    lostUg: Math.max(0, onHandUg - accounted),
    foundUg: Math.max(0, accounted - onHandUg),
  });
}
