import type { RunRecords } from './run-records.ts';
import type { RunView } from './run-shapes.ts';

export function stateOf({ close, release }: Pick<RunRecords, 'close' | 'release'>): RunView['state'] {
  if (release) return release.verdict as 'released' | 'rejected';
  return close ? 'closed' : 'filling';
}
