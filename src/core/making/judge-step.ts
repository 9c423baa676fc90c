import { type Problem, problem } from '../problem.ts';
import { type ExactInput, exact } from '../quantity/index.ts';

/** What the method wants of a step. */
export interface WantedStep {
  readonly kind: string;
  readonly what: string;
  readonly leastCelsius: string | null;
  readonly mostCelsius: string | null;
  readonly minutes: string | null;
  readonly leastHours: string | null;
  /** Done with once it stands: that it is firm is said elsewhere. */
  readonly isHandedOn: boolean;
}

export interface HadStep {
  readonly celsius: ExactInput | null;
  readonly minutes: ExactInput | null;
}

/** Here the time is what the step is for; mixing, cooling and whipping end when they look or measure right. */
const KEPT_FOR_A_TIME: readonly string[] = ['melt', 'hold', 'cover', 'other'];

/**
 * What of a step was not as the method wants: degrees Celsius outside its range, or minutes fewer than it wants. Both ends
 * are still wanted, and what nobody measured is not judged. Temperatures and times are compared exactly as they are typed.
 */
export function judgeStep(wanted: WantedStep, had: HadStep): Problem[] {
  return [...judgeHeat(wanted, had.celsius), ...judgeTime(wanted, had.minutes)];
}

function judgeHeat(
  { leastCelsius: least, mostCelsius: most, what }: WantedStep,
  celsius: ExactInput | null,
): Problem[] {
  if (celsius === null) return [];
  const found = exact(celsius);
  const isOutside = (least !== null && found.lt(least)) || (most !== null && found.gt(most));
  if (!isOutside) return [];
  const parameters = { step: what, least: least ?? '', most: most ?? '' };
  return [problem('heat-not-wanted', 'celsius', { found: found.toFixed(), parameters })];
}

function judgeTime(wanted: WantedStep, minutes: ExactInput | null): Problem[] {
  const least = leastMinutesOf(wanted);
  if (minutes === null || least === null || exact(minutes).gte(least)) return [];
  return [
    problem('time-too-short', 'minutes', {
      found: exact(minutes).toFixed(),
      allowed: exact(least).toFixed(),
      parameters: { step: wanted.what },
    }),
  ];
}

/** The fewest minutes that the step has to take; null where time does not decide. */
export function leastMinutesOf({ kind, minutes, leastHours, isHandedOn }: WantedStep): ExactInput | null {
  if (kind === 'set') {
    if (isHandedOn) return null;
    return leastHours === null ? minutes : exact(leastHours).times(60);
  }
  return KEPT_FOR_A_TIME.includes(kind) ? minutes : null;
}
