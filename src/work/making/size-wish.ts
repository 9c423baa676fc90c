import type { z } from 'zod';
import type { making, Saying } from '../../contract/index.ts';
import {
  type BatchLimit,
  type LearntLoss,
  limitBatchGrams,
  type NamedLimit,
  type SizedBatch,
  sizeBatch,
} from '../../core/filling/index.ts';
import { done, type Result } from '../../core/problem.ts';
import { type Exact, exact, toText } from '../../core/quantity/index.ts';
import { saying } from '../saying.ts';
import type { WantedTin } from './read-tins.ts';

export type BatchWish = z.output<typeof making.batchWish>;

/** A batch's size: what can be made of it, and what the whole wish would take. */
export interface WishSize {
  readonly batchGrams: Exact;
  /** The whole wish, were nothing in the way. */
  readonly wantedGrams: Exact;
  readonly units: readonly {
    readonly productId: string;
    readonly wanted: number;
    readonly possible: number;
  }[];
  readonly limitedBy: NamedLimit;
  readonly isWhole: boolean;
  readonly sizing: readonly Saying[];
}

/** Batches are taken up to the next tenth of a gram: finer steps no bench scale shows (common practice, no source). */
const STEP_GRAMS = '0.1';

/** Where nothing at all can be made, the wish is laid out whole, so that one sees what it would take. */
export const sizeWish = (
  size: BatchWish['size'],
  tins: readonly WantedTin[],
  limits: readonly BatchLimit[],
  learnt: LearntLoss | null = null,
): Result<WishSize> =>
  size.by === 'grams'
    ? sizeByGrams(size.grams, limits)
    : sizeByTins(size.retained, tins, limits, findLoss(size.lossPercent, learnt, tins));

function sizeByGrams(grams: string, limits: readonly BatchLimit[]): Result<WishSize> {
  const limited = limitBatchGrams({ wantedGrams: grams, limits, stepGrams: STEP_GRAMS });
  if (!limited.ok) return limited;
  const { batchGrams, limitedBy } = limited.value;
  const wantedGrams = exact(grams);
  const isWhole = limitedBy.kind === 'order';
  return done({
    batchGrams: batchGrams.gt(0) ? batchGrams : wantedGrams,
    wantedGrams,
    units: [],
    limitedBy,
    isWhole,
    sizing: [
      saying('sizing-by-grams', { grams: toText(wantedGrams) }),
      ...(isWhole ? [] : [saying('sizing-most-grams', { grams: toText(batchGrams) })]),
    ],
  });
}

type Retained = Extract<BatchWish['size'], { by: 'tins' }>['retained'];

function sizeByTins(
  retained: Retained,
  tins: readonly WantedTin[],
  limits: readonly BatchLimit[],
  loss: PlannedLoss,
): Result<WishSize> {
  const wish = {
    lines: tins.map((tin) => ({ key: tin.productId, wanted: tin.units, aimGrams: tin.aimGrams })),
    bowlLossFraction: loss.percent.div(100),
    retainedGrams: retained.keep ? retained.grams : 0,
    stepGrams: STEP_GRAMS,
  };
  const limited = sizeBatch({ ...wish, limits });
  if (!limited.ok) return limited;
  const whole = sizeBatch({ ...wish, limits: [] });
  if (!whole.ok) return whole;
  const laidOut = limited.value.batchGrams.gt(0) ? limited.value : whole.value;
  return done({
    batchGrams: laidOut.batchGrams,
    wantedGrams: whole.value.batchGrams,
    units: limited.value.lines.map(({ key, wanted, possible }) => ({ productId: key, wanted, possible })),
    limitedBy: limited.value.limitedBy,
    isWhole: limited.value.bounds.length === 0,
    sizing: saySizing(laidOut, retained, tins, loss),
  });
}

/** What is planned to stay behind, and where that comes from. */
interface PlannedLoss {
  readonly percent: Exact;
  readonly from: 'set' | 'typed' | LearntLoss['from'];
  readonly learnt: LearntLoss | null;
}

/** As the maker sets it; else as learnt of this formula, of the workshop; else as its products say. */
function findLoss(set: string | null, learnt: LearntLoss | null, tins: readonly WantedTin[]): PlannedLoss {
  if (set !== null) return { percent: exact(set), from: 'set', learnt };
  if (learnt !== null) return { percent: learnt.percent, from: learnt.from, learnt };
  return { percent: typedLossOf(tins), from: 'typed', learnt };
}

/** The bowl is one: the greatest share that any of its products is known to leave in it. */
function typedLossOf(tins: readonly WantedTin[]): Exact {
  const greatest = tins.reduce(
    (most, tin) => (exact(tin.details.bowlLossPercent).gt(most) ? exact(tin.details.bowlLossPercent) : most),
    exact(0),
  );
  return greatest;
}

function saySizing(
  sized: SizedBatch,
  retained: Retained,
  tins: readonly WantedTin[],
  { percent, from, learnt }: PlannedLoss,
): Saying[] {
  const lines = tins.map((tin, index) => {
    const line = sized.lines[index];
    const units = line && line.possible > 0 ? line.possible : tin.units;
    return saying('sizing-tins', {
      units,
      product: tin.name,
      aimGrams: toText(tin.aimGrams),
      grams: toText(tin.aimGrams.times(units)),
    });
  });
  return [
    ...lines,
    retained.keep
      ? saying('sizing-sample', { grams: retained.grams })
      : saying('sizing-no-sample', { reason: retained.reason }),
    saying('sizing-bowl-loss', {
      grams: toText(sized.lossGrams),
      percent: toText(percent),
      from,
      batches: learnt?.batches ?? 0,
      least: learnt ? toText(learnt.leastPercent) : '',
      most: learnt ? toText(learnt.mostPercent) : '',
      learnt: learnt ? toText(learnt.percent) : '',
    }),
    saying('sizing-batch', { grams: toText(sized.batchGrams) }),
  ];
}
