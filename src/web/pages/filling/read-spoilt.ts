import { done, type Result, refused } from '../../../core/problem.ts';
import { readWhole } from '../../show/read-whole.ts';

interface Typed {
  readonly tins: string;
  readonly lids: string;
  readonly labels: string;
  readonly backTins?: string;
  readonly backLids?: string;
  readonly backLabels?: string;
}
interface Counted {
  readonly spoiltTins: number;
  readonly spoiltLids: number;
  readonly spoiltLabels: number;
  readonly backTins: number | null;
  readonly backLids: number | null;
  readonly backLabels: number | null;
}

/** What goes back may stay uncounted. */
const readBack = (typed: string, where: string): Result<number | null> =>
  typed.trim() === '' ? done(null) : readWhole(typed, where);

/** What was spoilt is counted: a field that somebody emptied is a question, not none. */
export function readSpoilt(typed: Typed): Result<Counted> {
  const { tins, lids, labels, backTins = '', backLids = '', backLabels = '' } = typed;
  const spoiltTins = readWhole(tins, 'spoiltTins');
  const spoiltLids = readWhole(lids, 'spoiltLids');
  const spoiltLabels = readWhole(labels, 'spoiltLabels');
  const back = {
    tins: readBack(backTins, 'backTins'),
    lids: readBack(backLids, 'backLids'),
    labels: readBack(backLabels, 'backLabels'),
  };
  return spoiltTins.ok && spoiltLids.ok && spoiltLabels.ok && back.tins.ok && back.lids.ok && back.labels.ok
    ? done({
        spoiltTins: spoiltTins.value,
        spoiltLids: spoiltLids.value,
        spoiltLabels: spoiltLabels.value,
        backTins: back.tins.value,
        backLids: back.lids.value,
        backLabels: back.labels.value,
      })
    : refused(
        ...[spoiltTins, spoiltLids, spoiltLabels, back.tins, back.lids, back.labels].flatMap((read) =>
          read.ok ? [] : read.problems,
        ),
      );
}
