import { Temporal } from 'temporal-polyfill';
import { done, type Problem, problem, type Result, refused } from '../problem.ts';

export interface DurabilityQuestion {
  /** YYYY-MM-DD. */
  readonly made: string;
  /** What the product is known to keep, in whole months. */
  readonly months: number;
  /** Best-before dates of the lots that went in. */
  readonly lots?: readonly string[] | undefined;
}

export type DurabilityMark = 'date' | 'period-after-opening';

export interface Durability {
  readonly date: string;
  /** `months`, or `lots[i]` where a lot ends sooner. */
  readonly decidedBy: string;
  readonly mark: DurabilityMark;
}

/** Calendar months on: a day that the month does not have falls back to its last (31 August and 6 months: 28 February). */
const addMonths = (date: string, months: number): string =>
  Temporal.PlainDate.from(date).add({ months }, { overflow: 'constrain' }).toString();

function problemsOf({ made, months, lots = [] }: DurabilityQuestion): Problem[] {
  const isWhole = Number.isInteger(months) && months >= 1;
  return [
    ...(isWhole ? [] : [problem('months-not-whole', 'months', { found: months, allowed: 1 })]),
    ...lots.flatMap((date, index) =>
      date < made ? [problem('lot-past-when-made', `lots[${index}]`, { found: date, allowed: made })] : [],
    ),
  ];
}

/**
 * Date of minimum durability: made + months, and no later than the first of the lots ends. Up to and with the threshold
 * of months the date must stand on the label; beyond it the period after opening stands there instead.
 * Source: Regulation (EC) No 1223/2009, Article 19(1)(c): "more than 30 months"; exactly 30 takes a date.
 */
export function decideBestBefore(question: DurabilityQuestion, thresholdMonths: number): Result<Durability> {
  const problems = problemsOf(question);
  if (problems.length > 0) return refused(...problems);
  const { made, months, lots = [] } = question;
  let durability = { date: addMonths(made, months), decidedBy: 'months' };
  for (const [index, date] of lots.entries()) {
    if (date < durability.date) durability = { date, decidedBy: `lots[${index}]` };
  }
  const mark = durability.date <= addMonths(made, thresholdMonths) ? 'date' : 'period-after-opening';
  return done({ ...durability, mark });
}
