import { labels } from '../../../contract/index.ts';
import { done, problem, type Result, refused } from '../../../core/problem.ts';
import { readWhole } from '../../show/read-whole.ts';
import type { Run } from '../filling/run.ts';

/** As many as there are tins without a label; one where each has its own, for a spoilt one. */
export function copiesWanted({
  closing,
  summary,
  wanted,
  labelsPrinted,
}: Pick<Run, 'closing' | 'summary' | 'wanted' | 'labelsPrinted'>): number {
  const tins = closing?.units ?? Math.max(wanted, summary.counting);
  return Math.min(labels.MOST_LABELS, Math.max(1, tins - labelsPrinted));
}

/** How many are to be printed, or why that cannot be meant. */
export function readCopies(typed: string): Result<number> {
  const read = readWhole(typed, 'copies', 1);
  if (!read.ok) return read;
  return read.value <= labels.MOST_LABELS
    ? done(read.value)
    : refused(problem('copies-wrong', 'copies', { found: typed, allowed: `1 to ${labels.MOST_LABELS}` }));
}
