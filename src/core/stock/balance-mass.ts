import { done, type Problem, problem, type Result, refused } from '../problem.ts';
import { type Exact, type ExactInput, exact, sumOf } from '../quantity/index.ts';

export interface MassAccount {
  readonly receivedGrams: ExactInput;
  readonly usedGrams: readonly ExactInput[];
  readonly onHandGrams: ExactInput;
  readonly wasteGrams: ExactInput;
}

export interface MassBalance {
  readonly accountedGrams: Exact;
  readonly unexplainedGrams: Exact;
  readonly percent: Exact;
  readonly verdict: 'within' | 'look';
}

/** Weighing many small parts of one tub adds up: two percent either way is taken as weighing (common practice, no source). */
const LEAST_PERCENT = 98;
const MOST_PERCENT = 102;

function problemsOf({ receivedGrams, usedGrams, onHandGrams, wasteGrams }: MassAccount): Problem[] {
  const masses: [string, ExactInput][] = [
    ...usedGrams.map((grams, index): [string, ExactInput] => [`usedGrams[${index}]`, grams]),
    ['onHandGrams', onHandGrams],
    ['wasteGrams', wasteGrams],
  ];
  const problems = masses
    .filter(([, grams]) => exact(grams).lt(0))
    .map(([where, grams]) => problem('mass-negative', where, { found: exact(grams).toFixed() }));
  const received = exact(receivedGrams);
  if (received.gt(0)) return problems;
  const code = received.isZero() ? 'mass-zero' : 'mass-negative';
  return [problem(code, 'receivedGrams', { found: received.toFixed() }), ...problems];
}

/**
 * Mass balance of a lot, in grams: accounted = used + on hand + waste; unexplained = received - accounted (less than
 * nothing: more was found than came in); percent = 100 x accounted / received. `within` from 98 to 102 %, both included,
 * judged as 98 x received <= 100 x accounted <= 102 x received.
 */
export function balanceMass(account: MassAccount): Result<MassBalance> {
  const problems = problemsOf(account);
  if (problems.length > 0) return refused(...problems);
  const received = exact(account.receivedGrams);
  const accounted = sumOf([...account.usedGrams, account.onHandGrams, account.wasteGrams]);
  const hundredfold = accounted.times(100);
  const isWithin =
    hundredfold.gte(received.times(LEAST_PERCENT)) && hundredfold.lte(received.times(MOST_PERCENT));
  return done({
    accountedGrams: accounted,
    unexplainedGrams: received.minus(accounted),
    percent: hundredfold.div(received),
    verdict: isWithin ? 'within' : 'look',
  });
}
