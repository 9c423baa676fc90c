import {
  type AirVerdict,
  chanceAllReach,
  findUnitsFromBatch,
  judgeAir,
  poolSpread,
} from '../../../core/filling/index.ts';
import { type Exact, exact, ONE, sumOf } from '../../../core/quantity/index.ts';
import { densitiesOf, unwhippedOf } from '../making/read-air.ts';
import { isTin, type Run, type Weight } from './run.ts';

export interface TinsChance {
  /** 0 to 1. */
  readonly all: number;
  readonly tins: number;
  readonly leastGrams: Exact;
  readonly standardDeviationGrams: number;
  readonly degreesOfFreedom: number;
  readonly from: 'runs' | 'now' | 'both';
}

export interface TinsAir {
  readonly tins: number;
  readonly meanGrams: Exact;
  /** null: no cup of this bowl, and of no tin was it said that it is full. */
  readonly verdict: AirVerdict | null;
  readonly by: 'tins' | 'cups';
  readonly fills: { readonly count: number; readonly leftGrams: Exact };
  /** null: no tin is left to be filled; else how likely it is, or why that is not known. */
  readonly chance: TinsChance | 'no-data' | 'no-spread' | null;
  /** Of which it is asked whether it is full. */
  readonly ask: Weight | null;
}

/** So many first tins tell (house rule); one below its label is asked about at once. */
export const FIRST_TINS = 3;

export interface Said {
  readonly full: readonly string[];
  readonly room: readonly string[];
}

/** What the first tins of a whipped product say of the air in it; null: nothing yet. */
export function readTinsAir(run: Run, said: Said): TinsAir | null {
  const { air } = run;
  const tins = run.weights.filter(isTin);
  const last = tins.at(-1);
  if (!air || !last) return null;
  const full = tins.filter(({ entryId }) => said.full.includes(entryId));
  const isAnswered = [...said.full, ...said.room].includes(last.entryId);
  const isAsked =
    !isAnswered && (last.verdict === 'too-light' || (full.length === 0 && air.cups.length === 0));
  const isTelling = tins.length >= FIRST_TINS || last.verdict === 'too-light' || full.length > 0;
  const hasRoom = tins.some(({ entryId }) => said.room.includes(entryId));
  if (!isTelling) return null;
  const meanGrams = sumOf(tins.map(({ netGrams }) => exact(netGrams))).div(tins.length);
  const fills = countMore(run, meanGrams);
  return {
    tins: tins.length,
    meanGrams,
    verdict: judgeTins(run, air, full),
    by: full.length > 0 ? 'tins' : 'cups',
    fills,
    chance: findChance(run, air, fills.count),
    ask: isAsked && !(hasRoom && last.verdict !== 'too-light') ? last : null,
  };
}

type Air = NonNullable<Run['air']>;

/** Tins that are as full as they may be tell more than a cup of an hour ago. */
function judgeTins(run: Run, air: Air, full: readonly Weight[]): AirVerdict | null {
  const headspaceFraction = exact(air.headspacePercent).div(100);
  const usableMl = exact(air.brimMl).times(ONE.minus(headspaceFraction));
  const gramsPerMl =
    full.length > 0 ? full.map(({ netGrams }) => exact(netGrams).div(usableMl)) : densitiesOf(air.cups);
  if (gramsPerMl.length === 0) return null;
  const { brimMl } = air;
  const { declaredGrams, aimGrams } = run;
  const judged = judgeAir(
    { brimMl, headspaceFraction, declaredGrams, aimGrams },
    { gramsPerMl, gramsPerMlBefore: null, unwhippedGramsPerMl: unwhippedOf(air.cups, null) },
  );
  return judged.ok ? judged.value : null;
}

/** At the weight of the tins so far, less the sample that is still to be kept and what stays behind in the bowl. */
function countMore(run: Run, meanGrams: Exact): TinsAir['fills'] {
  const stays = exact(run.bulkOnHandGrams)
    .times(run.air?.lossPercent ?? 0)
    .div(100);
  const free = exact(run.bowlLeftGrams)
    .minus(run.plannedSampleGrams ?? 0)
    .minus(stays);
  const none = { count: 0, leftGrams: exact(0) };
  if (!free.gt(0) || !meanGrams.gt(0)) return none;
  const found = findUnitsFromBatch(free, { lossFraction: 0, targetFillGrams: meanGrams, retained: 0 });
  return found.ok ? { count: found.value.filled, leftGrams: found.value.leftoverGrams } : none;
}

/** A slip of the pen is no fill, and of a tin struck before its fate was asked nobody knows whether it was one. */
const isFirstFill = ({ refillOf, isStruck, fate }: Weight): boolean =>
  refillOf === null && (!isStruck || (fate !== null && fate !== 'slip'));

/** Of the tins that are still to be filled: spread of earlier runs and of this one together. */
function findChance(run: Run, air: Air, fills: number): TinsAir['chance'] {
  const further = run.summary.stillToFill > 0 ? Math.min(run.summary.stillToFill, fills) : 0;
  if (further === 0) return null;
  // As they were filled first: what was filled up since tells nothing of how the hand spreads.
  const tins = run.weights.filter(isFirstFill).map(({ netGrams }) => exact(netGrams));
  if (tins.length === 0) return 'no-data';
  const pooled = poolSpread([tins]);
  const groups = [
    ...(pooled ? [{ s: pooled.standardDeviation.toNumber(), f: pooled.degreesOfFreedom }] : []),
    ...(air.spread ? [{ s: air.spread.standardDeviationGrams, f: air.spread.degreesOfFreedom }] : []),
  ];
  const degreesOfFreedom = groups.reduce((sum, { f }) => sum + f, 0);
  if (degreesOfFreedom === 0) return 'no-data';
  const squares = groups.reduce((sum, { s, f }) => sum + f * s ** 2, 0);
  const standardDeviation = Math.sqrt(squares / degreesOfFreedom);
  // By the minimum way the scale's error counts against the maker, as in each tin's own verdict.
  const leastGrams = exact(run.declaredGrams).plus(run.fillBasis === 'minimum' ? run.errorGrams : 0);
  const all = chanceAllReach(
    {
      mean: sumOf(tins).div(tins.length).toNumber(),
      meanOf: tins.length,
      standardDeviation,
      degreesOfFreedom,
    },
    leastGrams.toNumber(),
    further,
  );
  if (!all.ok) return 'no-spread';
  const from = pooled && air.spread ? 'both' : pooled ? 'now' : 'runs';
  return {
    all: all.value,
    tins: further,
    leastGrams,
    standardDeviationGrams: standardDeviation,
    degreesOfFreedom,
    from,
  };
}
