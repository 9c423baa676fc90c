import { Dictionary, type LinearRow } from './dictionary.ts';
import { type Fraction, NOUGHT, UNIT } from './fraction.ts';

export interface LinearProgram {
  /** What is maximised: objective . x, over x of nought or more. */
  readonly objective: readonly Fraction[];
  readonly rows: readonly LinearRow[];
}

export type LinearAnswer =
  | {
      readonly status: 'optimal';
      readonly value: Fraction;
      readonly point: readonly Fraction[];
      /** By row: so much the value would grow with one more of its `most`; above nought only where the row binds. */
      readonly prices: readonly Fraction[];
    }
  | { readonly status: 'infeasible' }
  | { readonly status: 'unbounded' };

/**
 * The largest value of a linear form within linear bounds, exactly.
 *
 * The simplex method on dictionaries, in fractions of whole numbers; of the variables that may enter or leave the lowest is
 * taken, so that it ends. Where the origin lies outside, a first phase looks for a point inside. Meant for tens of variables
 * and rows. Source: V. Chvatal, Linear Programming, 1983, chapters 2, 3 and 5; R. G. Bland, New finite pivoting rules for
 * the simplex method, Mathematics of Operations Research 2 (1977) 103-107.
 */
export function maximise({ objective, rows }: LinearProgram): LinearAnswer {
  const start = findStart(rows, objective.length);
  if (start === undefined) return { status: 'infeasible' };
  start.aimAt(objective);
  if (!start.climb()) return { status: 'unbounded' };
  return {
    status: 'optimal',
    value: start.value,
    point: objective.map((_, index) => start.valueOf(index)),
    prices: rows.map((_, index) => start.priceOf(objective.length + index)),
  };
}

/** A dictionary of a point inside; none where nothing lies inside all rows. */
function findStart(rows: readonly LinearRow[], variables: number): Dictionary | undefined {
  if (rows.every(({ most }) => most.sign >= 0)) return Dictionary.of(rows, variables);
  // One more variable, taken off every row, makes room; it is then driven down to nought.
  const slack = variables + rows.length;
  const relaxed = Dictionary.of(rows, variables, slack);
  relaxed.enterWhereLowest(slack);
  relaxed.aimAt(unitAt(slack).map((one) => one.negated()));
  relaxed.climb();
  if (relaxed.value.sign < 0) return undefined;
  relaxed.leaveOut(slack);
  return relaxed;
}

const unitAt = (place: number): Fraction[] =>
  Array.from({ length: place + 1 }, (_, index) => (index === place ? UNIT : NOUGHT));
