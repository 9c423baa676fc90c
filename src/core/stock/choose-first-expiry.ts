import { done, type Problem, problem, type Result, refused } from '../problem.ts';
import { type Exact, type ExactInput, exact, smallest, ZERO } from '../quantity/index.ts';

export type LotStatus = 'quarantine' | 'released' | 'rejected' | 'blocked';

/** A lot as the choice sees it; quantities of one item are in one unit. */
export interface LotToUse {
  readonly lot: string;
  readonly quantity: ExactInput;
  /** YYYY-MM-DD; null: nobody knows, or it has none. */
  readonly bestBefore: string | null;
  readonly received: string | null;
  readonly status: LotStatus;
}

export interface Issue {
  readonly lot: string;
  readonly quantity: Exact;
}

export interface FirstExpiry {
  readonly issue: readonly Issue[];
  readonly short: Exact;
  /** Lots that may not be used on that day, and why. */
  readonly passedOver: readonly { readonly lot: string; readonly why: 'not-released' | 'expired' }[];
}

/** ISO dates sort as text. A date goes before none: what ends is used before what nobody knows to end. */
const compareDates = (one: string | null, other: string | null): number => {
  if (one === other) return 0;
  if (one === null) return 1;
  if (other === null) return -1;
  return one < other ? -1 : 1;
};

const whyNot = ({ status, bestBefore }: LotToUse, useDate: string) => {
  if (status !== 'released') return 'not-released';
  return bestBefore !== null && bestBefore < useDate ? 'expired' : undefined;
};

const belowNought = (where: string, value: Exact): Problem =>
  problem('value-too-small', where, {
    found: value.toFixed(),
    allowed: 0,
    parameters: { counted: 'number' },
  });

function problemsOf(lots: readonly LotToUse[], need: Exact): Problem[] {
  const problems = need.lt(0) ? [belowNought('need', need)] : [];
  const seen = new Set<string>();
  for (const [index, { lot, quantity }] of lots.entries()) {
    const found = exact(quantity);
    if (found.lt(0)) problems.push(belowNought(`lots[${index}].quantity`, found));
    if (seen.has(lot)) problems.push(problem('lot-listed-twice', `lots[${index}].lot`, { found: lot }));
    seen.add(lot);
  }
  return problems;
}

/**
 * First-expired-first-out: released lots that are not past their date on the day of use, the nearest date first, equal
 * dates by the earlier receipt, then in the order given. A lot still counts on its own date.
 * Issued and short together are the need, and no lot gives more than it has.
 * Source: ISO 22716:2007, clause 6 (stock rotation, released only), from memory; the order by date is common practice.
 */
export function chooseFirstExpiry(
  lots: readonly LotToUse[],
  need: ExactInput,
  useDate: string,
): Result<FirstExpiry> {
  const wanted = exact(need);
  const problems = problemsOf(lots, wanted);
  if (problems.length > 0) return refused(...problems);
  const usable = lots.filter((lot) => whyNot(lot, useDate) === undefined);
  usable.sort(
    (one, other) =>
      compareDates(one.bestBefore, other.bestBefore) || compareDates(one.received, other.received),
  );
  const issue: Issue[] = [];
  let short = wanted;
  for (const { lot, quantity } of usable) {
    const taken = smallest(short, exact(quantity));
    if (taken.gt(ZERO)) issue.push({ lot, quantity: taken });
    short = short.minus(taken);
  }
  const passedOver = lots.flatMap((lot) => {
    const why = whyNot(lot, useDate);
    return why === undefined ? [] : [{ lot: lot.lot, why } as const];
  });
  return done({ issue, short, passedOver });
}
