import { type Exact, gramsFromMicrograms } from '../../core/quantity/index.ts';
import {
  listAdditions,
  listBatchLines,
  listScales,
  type NamedBatchLine,
  type Reader,
  type SignedAddition,
} from '../../storage/index.ts';
import { weighState } from './weigh-state.ts';
import { weighingErrorGrams } from './weighing-error.ts';

/** What is weighed in, as its scale showed it. */
export interface Weighed {
  readonly line: NamedBatchLine;
  readonly row: SignedAddition;
  readonly grams: Exact;
  /** The worst error of the scale that it was really weighed on, at that mass; null: nobody knows it. */
  readonly errorGrams: Exact | null;
}

/**
 * In the order in which the batch is opened: additions that stand, each with the error of its own weighing, also where
 * several are of one position. null: not everything is in yet.
 */
export async function readWeighed(db: Reader, batchId: string): Promise<Weighed[] | null> {
  const lines = await listBatchLines(db, batchId);
  const scales = await listScales(db);
  const additions = await listAdditions(db, batchId);
  if (lines.some((line) => !weighState(line, additions).isDone)) return null;
  const standing = additions.filter((row) => !row.is_struck);
  return standing.flatMap((row) => {
    const line = lines.find(({ position }) => position === row.position);
    const grams = gramsFromMicrograms(row.actual_ug);
    return line ? [{ line, row, grams, errorGrams: weighingErrorGrams(row, scales) }] : [];
  });
}
