import { done, type Result, refused } from '../../../core/problem.ts';
import { readWhole } from '../../show/read-whole.ts';

interface Typed {
  readonly tins: string;
  readonly lids: string;
  readonly labels: string;
}
interface Spoilt {
  readonly spoiltTins: number;
  readonly spoiltLids: number;
  readonly spoiltLabels: number;
}

/** What was spoilt is counted: a field that somebody emptied is a question, not none. */
export function readSpoilt({ tins, lids, labels }: Typed): Result<Spoilt> {
  const spoiltTins = readWhole(tins, 'spoiltTins');
  const spoiltLids = readWhole(lids, 'spoiltLids');
  const spoiltLabels = readWhole(labels, 'spoiltLabels');
  return spoiltTins.ok && spoiltLids.ok && spoiltLabels.ok
    ? done({ spoiltTins: spoiltTins.value, spoiltLids: spoiltLids.value, spoiltLabels: spoiltLabels.value })
    : refused(...[spoiltTins, spoiltLids, spoiltLabels].flatMap((read) => (read.ok ? [] : read.problems)));
}
