import { done, type Problem, problem, type Result, refused } from '../problem.ts';
import { type Exact, HUNDRED, readDecimal, sumOf, toText } from '../quantity/index.ts';
import type { FormulaLine } from './formula-line.ts';

export interface PercentEntry extends Omit<FormulaLine, 'grams'> {
  /** Decimal text; null: this line takes what is left up to 100. */
  readonly percent: string | null;
}

function readPercents(entries: readonly PercentEntry[]): Result<(Exact | null)[]> {
  const problems: Problem[] = [];
  const percents = entries.map(({ percent }, index) => {
    if (percent === null) return null;
    const where = `lines[${index}].percent`;
    const read = readDecimal(percent, where);
    if (!read.ok) problems.push(...read.problems);
    else if (read.value.lte(0) || read.value.gt(100)) {
      problems.push(
        problem('percent-out-of-range', where, { found: percent, allowed: 'above 0, at most 100' }),
      );
    } else return read.value;
    return null;
  });
  return problems.length > 0 ? refused(...problems) : done(percents);
}

const cannotReach = (sum: Exact, hasRest: boolean): Problem =>
  problem(hasRest ? 'percent-leaves-no-rest' : 'percent-sum-not-hundred', 'lines', {
    found: toText(sum),
    allowed: 100,
    parameters: { difference: toText(sum.minus(HUNDRED).abs()), isOver: sum.gt(HUNDRED) },
  });

/**
 * Reads a formula that was typed in percent: each line's grams are those of 100 g. One line may be left to take the rest.
 * Refuses a formula that does not come to 100 exactly, and says by how much it misses.
 */
export function readPercentFormula(entries: readonly PercentEntry[]): Result<FormulaLine[]> {
  if (entries.length === 0)
    return refused(problem('formula-without-lines', 'lines', { found: 0, allowed: 1 }));
  const open = entries.filter(({ percent }) => percent === null).length;
  if (open > 1) return refused(problem('percent-two-rests', 'lines', { found: open, allowed: 1 }));
  const percents = readPercents(entries);
  if (!percents.ok) return percents;
  const sum = sumOf(percents.value.map((percent) => percent ?? 0));
  const reaches = open === 1 ? sum.lt(HUNDRED) : sum.eq(HUNDRED);
  if (!reaches) return refused(cannotReach(sum, open === 1));
  return done(
    entries.map(({ percent: _, ...line }, index) => ({
      ...line,
      grams: toText(percents.value[index] ?? HUNDRED.minus(sum)),
    })),
  );
}
