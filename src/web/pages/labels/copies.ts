import { labels } from '../../../contract/index.ts';
import { done, problem, type Result, refused } from '../../../core/problem.ts';
import { readWhole } from '../../show/read-whole.ts';
import type { Run } from '../filling/run.ts';

type Filled = Pick<Run, 'closing' | 'summary' | 'wanted'>;

/** How many tins there are to label. */
export const tinsOf = ({ closing, summary, wanted }: Filled): number =>
  closing?.units ?? Math.max(wanted, summary.counting);

/** As many as there are tins without a label, and the spare ones; one where each has its own, for a spoilt one. */
export function copiesWanted(run: Filled, printed: number, spare = 0): number {
  const lacking = tinsOf(run) - printed;
  return Math.min(labels.MOST_LABELS, lacking > 0 ? lacking + spare : 1);
}

/** How many are to be printed, or why that cannot be meant. */
export function readCopies(typed: string): Result<number> {
  const read = readWhole(typed, 'copies', 1);
  if (!read.ok) return read;
  return read.value <= labels.MOST_LABELS
    ? done(read.value)
    : refused(problem('copies-wrong', 'copies', { found: typed, allowed: `1 to ${labels.MOST_LABELS}` }));
}
