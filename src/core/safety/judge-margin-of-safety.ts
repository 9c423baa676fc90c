import { type Exact, type ExactInput, exact, HUNDRED } from '../quantity/index.ts';

export interface MarginQuestion {
  readonly exposureMgPerKgDay: ExactInput;
  /** NOAEL, BMDL or the like, in mg per kg of body weight and day. */
  readonly pointOfDepartureMgPerKgDay: ExactInput;
  /** Share of an oral dose that enters the body; 100 where the point of departure is systemic already. */
  readonly bioavailabilityPercent: ExactInput;
  /** 100 by the Notes of Guidance: 10 between species, 10 between people. */
  readonly minimum: ExactInput;
}

export interface MarginOfSafety {
  /** null: without exposure there is no finite margin. */
  readonly marginOfSafety: Exact | null;
  readonly isEnough: boolean;
}

/**
 * Margin of safety: point of departure x bioavailability / 100 / exposure (SCCS Notes of Guidance, 12th revision).
 * Whether it is enough is judged by multiplying, point of departure x bioavailability >= 100 x minimum x exposure, so
 * that a margin of exactly the minimum is enough and one that only rounds to it is not.
 */
export function judgeMarginOfSafety(question: MarginQuestion): MarginOfSafety {
  const { pointOfDepartureMgPerKgDay, bioavailabilityPercent, exposureMgPerKgDay, minimum } = question;
  const systemic = exact(pointOfDepartureMgPerKgDay).times(bioavailabilityPercent);
  const exposure = exact(exposureMgPerKgDay).times(HUNDRED);
  return {
    marginOfSafety: exposure.isZero() ? null : systemic.div(exposure),
    isEnough: systemic.gte(exposure.times(minimum)),
  };
}
