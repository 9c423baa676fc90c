import { scaleTables } from '../../catalogue/index.ts';
import type { Saying } from '../../contract/index.ts';
import { done, type Problem, type Result } from '../../core/problem.ts';
import {
  type Exact,
  exact,
  largest,
  MICROGRAMS_PER_GRAM,
  ONE,
  roundToStep,
  smallest,
  toText,
} from '../../core/quantity/index.ts';
import {
  findBandAround,
  findScaleFor,
  type PlannedWeighing,
  planWeighings,
  weighInParts,
} from '../../core/weighing/index.ts';
import type { LotAtHand, ScaleRow } from '../../storage/index.ts';
import { briefGrams } from '../../words/index.ts';
import { saying } from '../saying.ts';
import { scaleOf } from '../scale-error.ts';
import { factsOfParts } from './facts-of-parts.ts';

/** One weighing that is wanted: a line of the formula, or its part from one lot. */
export interface WantedWeighing {
  readonly grams: Exact;
  readonly lot: LotAtHand | null;
  /** Scents, colours, small additions with a limit: a wider band, since it is counted in drops. */
  readonly isDelicate: boolean;
  /** How many times what the formula asks its limits and the report allow; null: nothing binds it. */
  readonly headroom: Exact | null;
  /** How small a part of what the formula asks the report still accepts; null: it asks for none. */
  readonly footroom: Exact | null;
}

export interface LaidWeighing {
  readonly targetUg: number;
  readonly lowUg: number;
  readonly highUg: number;
  readonly tolerancePercent: string;
  /** Within which it has to be weighed, as a fraction: narrower than the band where its limits are near. */
  readonly neededTolerance: Exact;
  /** A limit, or the report, bounds how much of it may be in. */
  readonly isLimited: boolean;
  readonly scale: ScaleRow | null;
  readonly relativeError: number | null;
  readonly smallestWeightGrams: number | null;
  readonly warning: Saying | null;
}

/** Share of the target by which a weighing may miss it: common practice, no source. */
const TOLERANCE = { plain: '0.02', delicate: '0.05' } as const;

const toleranceOf = ({ isDelicate }: Pick<WantedWeighing, 'isDelicate'>) =>
  TOLERANCE[isDelicate ? 'delicate' : 'plain'];

/** USP general chapter 41 asks 0.10 % of what is weighed for an assay: nobody needs a butter or a scent nearer than that. */
const NARROWEST = '0.001';

/**
 * Within which an addition has to be weighed: as usual, or the room that limits and report leave above and below it,
 * where that is less. A butter may be 2 % out; an oil just below its limit may not.
 */
export function neededToleranceOf(weighing: Omit<WantedWeighing, 'grams' | 'lot'>): Exact {
  const above = weighing.headroom?.minus(1) ?? ONE;
  const below = weighing.footroom === null ? ONE : ONE.minus(weighing.footroom);
  return smallest(exact(toleranceOf(weighing)), largest(exact(NARROWEST), smallest(above, below)));
}

/**
 * Scale, target and band of each weighing. The band is as wide as the tolerance, and at least one step of the scale; its
 * ends are what the scale can show inside of it.
 */
export function layWeighings(
  wanted: readonly WantedWeighing[],
  scales: readonly ScaleRow[],
): Result<LaidWeighing[]> {
  const planned = planWeighings(
    {
      additions: wanted.map((weighing, index) => ({
        key: String(index),
        grams: weighing.grams,
        relativeTolerance: neededToleranceOf(weighing),
        isLimited: isBound(weighing) || takesWholeLot(weighing),
        mostGrams: mostOf(weighing),
      })),
      scales: scales.map(scaleOf),
    },
    scaleTables,
  );
  if (!planned.ok) return planned;
  return done(
    planned.value.rows.map((row, index) => {
      const weighing = wanted[index];
      if (!weighing) throw new Error('a weighing was planned that nobody wanted');
      return layOne(row, weighing, scales);
    }),
  );
}

const takesWholeLot = ({ grams, lot }: WantedWeighing): boolean =>
  lot !== null && grams.times(MICROGRAMS_PER_GRAM).gte(lot.on_hand);

/** Its limits lie so near, or it is so small, that it is never rounded up. */
const isBound = (weighing: WantedWeighing): boolean =>
  weighing.headroom !== null &&
  (weighing.isDelicate || weighing.headroom.lt(exact(1).plus(toleranceOf(weighing))));

/** Never more than its limits allow, nor than its lot has. Over a limit already (a trial may be): what the formula asks. */
function mostOf(weighing: WantedWeighing): Exact | null {
  const { grams, headroom } = weighing;
  if (takesWholeLot(weighing)) return grams;
  return headroom === null ? null : grams.times(largest(headroom, exact(1)));
}

function layOne(row: PlannedWeighing, weighing: WantedWeighing, scales: readonly ScaleRow[]): LaidWeighing {
  const step = exact(row.scale?.readabilityGrams ?? 0);
  const share = weighing.grams.times(toleranceOf(weighing));
  const target = withinLot(row.targetGrams, weighing.lot, step);
  const band = findBandAround({
    targetGrams: target,
    toleranceGrams: share.gt(step) ? share : step,
    mostGrams: atLeast(mostOf(weighing), target),
  });
  const shown = step.isZero() || !target.mod(step).isZero() ? LEDGER_STEP : step;
  return {
    targetUg: wholeUg(target),
    lowUg: Math.max(1, wholeUg(roundToStep(notBelow(band.lowGrams, weighing, target), shown, 'up'))),
    highUg: wholeUg(roundToStep(band.highGrams, shown, 'down')),
    tolerancePercent: toText(exact(toleranceOf(weighing)).times(100)),
    neededTolerance: neededToleranceOf(weighing),
    isLimited: weighing.headroom !== null,
    scale: scales.find((scale) => scale.id === row.scale?.id) ?? null,
    relativeError: row.worstCaseRelative?.toNumber() ?? null,
    smallestWeightGrams: row.smallestWeightGrams?.toNumber() ?? null,
    warning: row.warnings[0] ? (sayParts(weighing, scales) ?? sayWarning(row.warnings[0], step)) : null,
  };
}

/** Rounding to the scale's step may ask a lot for more than it has: then a step less. */
function withinLot(target: Exact, lot: LotAtHand | null, step: Exact): Exact {
  if (lot === null || target.times(MICROGRAMS_PER_GRAM).lte(lot.on_hand) || step.isZero()) return target;
  const less = roundToStep(exact(lot.on_hand).div(MICROGRAMS_PER_GRAM), step, 'down');
  return less.gt(0) ? less : target;
}

/** Below the report already (a trial may be), or the target rounded to below it: the target itself. */
const notBelow = (low: Exact, { grams, footroom }: WantedWeighing, target: Exact): Exact =>
  footroom === null ? low : smallest(largest(low, grams.times(footroom)), target);

const atLeast = (most: Exact | null, target: Exact): Exact | null =>
  most === null || most.gte(target) ? most : target;

const LEDGER_STEP = exact('0.000001');
const wholeUg = (grams: Exact): number => roundToStep(grams.times(MICROGRAMS_PER_GRAM), 1).toNumber();

/** Where no scale weighs it at once, and one does in parts, that is what is done; undefined: it is not. */
function sayParts(weighing: WantedWeighing, rows: readonly ScaleRow[]): Saying | undefined {
  const scales = rows.map(scaleOf);
  const tolerance = neededToleranceOf(weighing);
  if (findScaleFor(weighing.grams, scales, tolerance, scaleTables)) return undefined;
  const parts = weighInParts(weighing.grams, scales, tolerance, scaleTables);
  return parts && saying('weighing-in-parts', factsOfParts(parts));
}

/** What weighing warns of, said on the sheet in its own words. */
function sayWarning({ code, found, allowed, parameters }: Problem, step: Exact): Saying {
  const least =
    code === 'addition-too-small' ? toText(roundToStep(exact(String(allowed)), step, 'up')) : allowed;
  const facts = { grams: briefGrams(String(found ?? '')), least: String(least ?? ''), ...parameters };
  switch (code) {
    case 'no-scale-holds':
      return saying('weighing-no-scale', facts);
    case 'addition-not-shown':
      return saying('weighing-not-shown', facts);
    case 'addition-too-small':
      return saying('weighing-too-small', facts);
    case 'below-minimum-load':
      return saying('weighing-below-minimum-load', facts);
    default:
      throw new Error(`a warning of weighing without words: ${code}`);
  }
}
