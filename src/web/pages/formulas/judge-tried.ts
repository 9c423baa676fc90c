import { type Problem, problem } from '../../../core/problem.ts';
import { readDecimal } from '../../../core/quantity/index.ts';
import type { TriedLines } from './try-amounts.tsx';

/** What is wrong with an amount that is being tried, by its line; undefined: it can be judged. */
export const judgeTried = (lines: TriedLines): readonly (Problem | undefined)[] =>
  lines.map(({ grams }, place) => {
    const where = `details.lines[${place}].grams`;
    const read = readDecimal(grams, where);
    if (!read.ok) return read.problems[0];
    if (read.value.isZero()) return problem('mass-zero', where);
    if (read.value.lt(0)) return problem('mass-negative', where, { found: grams });
    return read.value.decimalPlaces() > MICROGRAM_PLACES
      ? problem('mass-too-fine', where, { found: grams, allowed: 0.000001 })
      : undefined;
  });

const MICROGRAM_PLACES = 6;
