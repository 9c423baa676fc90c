import type { Saying } from '../../contract/index.ts';
import { exact, gramsFromMicrograms, roundToStep, toText } from '../../core/quantity/index.ts';
import {
  type BatchLineRow,
  listAdditions,
  listBatchLines,
  type NamedBatchLine,
  type Reader,
} from '../../storage/index.ts';
import { gramsText } from '../quantity-text.ts';
import { saying } from '../saying.ts';
import type { JudgeWeighed } from './judge-weighed.ts';
import { weighState } from './weigh-state.ts';

export interface RefusedWeighing {
  readonly line: BatchLineRow;
  readonly lotId: string;
  readonly itemName: string;
  readonly actualUg: number;
  /** What is in of it already, and what was left to weigh when it was refused. */
  readonly inUg: number;
  readonly leftUg: number;
}

/** Finer than what a bench scale shows; told down where it is a most, up where it is a least. */
const TOLD_STEP = '0.001';
/** Added by the spoon: whoever dilutes weighs to a tenth of a gram (common practice, no source). */
const DILUTE_STEP = '0.1';

/**
 * What would bring a refused weighing within what is allowed: how much of it may be in the bowl, and how much of the
 * rest would have to come to it. Every bound is on a share (c x + d) / (M + x) of the batch, which only rises or only
 * falls with the amount x: what is allowed lies in one stretch, and where it ends is found by halving, each amount
 * judged exactly as the release judges it. The rest added in its own shares is as if there were less of it:
 * M (x - a) / a more of M, with a the last amount allowed. Masses to the microgram; told on the allowed side.
 */
export async function findRemedy(
  db: Reader,
  judge: JudgeWeighed,
  refused: RefusedWeighing,
): Promise<Saying[]> {
  const { line, lotId, actualUg, leftUg, itemName: item } = refused;
  const isAllowed = async (ug: number) =>
    (await judge({ position: line.position, lot_id: lotId, actual_ug: ug })) === null;
  if (!(await isAllowed(leftUg)))
    return [saying('weighed-target-too', { item, targetGrams: gramsText(leftUg) })];
  const bound = await halve(leftUg, actualUg, isAllowed);
  if (actualUg < leftUg) return [saying('weighed-least', { item, leastGrams: tellGrams(bound, 'up') })];
  return [
    saying('weighed-most', { item, mostGrams: tellGrams(bound, 'down') }),
    ...(await sayDilution(db, refused, bound)),
  ];
}

const tellGrams = (ug: number, side: 'up' | 'down'): string =>
  toText(roundToStep(exact(gramsFromMicrograms(ug)), TOLD_STEP, side));

/** The last allowed amount on the way from an allowed one to one that is not. */
async function halve(
  allowed: number,
  refused: number,
  isAllowed: (ug: number) => Promise<boolean>,
): Promise<number> {
  let [good, bad] = [allowed, refused];
  while (Math.abs(bad - good) > 1) {
    const middle = Math.trunc((good + bad) / 2);
    if (await isAllowed(middle)) good = middle;
    else bad = middle;
  }
  return good;
}

async function sayDilution(
  db: Reader,
  { line, actualUg, inUg }: RefusedWeighing,
  bound: number,
): Promise<Saying[]> {
  const others = (await listBatchLines(db, line.batch_id)).filter(
    ({ position }) => position !== line.position,
  );
  // Where the same comes from two lots, the rest is not free of it.
  if (others.length === 0 || others.some(({ item_id }) => item_id === line.item_id)) return [];
  const restUg = await sumStanding(db, line.batch_id, others);
  const more = exact(gramsFromMicrograms(restUg))
    .times(actualUg - bound)
    .div(inUg + bound);
  const names = [...new Set(others.map(({ item_name }) => item_name))];
  return [
    saying('weighed-dilute', {
      addGrams: toText(roundToStep(more, DILUTE_STEP, 'up')),
      isOne: names.length === 1,
      rest: names.join(', '),
    }),
  ];
}

/** As weighed in, and what is not as planned. */
async function sumStanding(db: Reader, batchId: string, lines: readonly NamedBatchLine[]): Promise<number> {
  const additions = await listAdditions(db, batchId);
  return lines.reduce((sum, line) => {
    const { inUg, leftUg } = weighState(line, additions);
    return sum + inUg + leftUg;
  }, 0);
}
