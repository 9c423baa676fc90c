import type { steps } from '../../../contract/index.ts';
import {
  type AirVerdict,
  type BowlLoads,
  chanceAllReach,
  findUnitsFromBatch,
  judgeAir,
  judgeCup,
  splitIntoLoads,
  spreadOf,
} from '../../../core/filling/index.ts';
import type { Result } from '../../../core/problem.ts';
import { type Exact, exact, smallest, sumOf } from '../../../core/quantity/index.ts';

export type AirTin = steps.AirTin;

export interface Chance {
  /** 0 to 1. */
  readonly all: number;
  readonly tins: number;
  readonly expectedGrams: Exact;
  readonly meanOf: number;
  readonly standardDeviationGrams: number;
  readonly degreesOfFreedom: number;
  readonly from: 'runs' | 'now' | 'both';
}

export interface TinAir {
  readonly tin: AirTin;
  readonly verdict: AirVerdict;
  readonly fills: { readonly count: number; readonly leftGrams: Exact } | null;
  /** Or why it is not known. */
  readonly chance: Chance | 'no-data' | 'no-spread';
}

export interface AirWish {
  readonly tins: readonly AirTin[];
  /** Of this bowl, now; those that cannot be read are left out before. */
  readonly gramsPerMl: readonly Exact[];
  readonly before: Exact | null;
  readonly unwhipped: Exact | null;
  /** What lies in the bowl, less the sample that is kept. */
  readonly bowlGrams: Exact;
}

/** What cups and first tins of this bowl say of each tin that it is meant for. */
export const readAir = (wish: AirWish): TinAir[] => wish.tins.flatMap((tin) => airOf(tin, wish));

function airOf(tin: AirTin, wish: AirWish): TinAir[] {
  const verdict = judgeAir(
    {
      brimMl: tin.brimMl,
      headspaceFraction: exact(tin.headspacePercent).div(100),
      declaredGrams: tin.declaredGrams,
      aimGrams: tin.aimGrams,
    },
    {
      gramsPerMl: wish.gramsPerMl,
      gramsPerMlBefore: wish.before,
      unwhippedGramsPerMl: wish.unwhipped,
    },
  );
  if (!verdict.ok) return [];
  const fills = countTins(tin, verdict.value, wish.bowlGrams);
  return [{ tin, verdict: verdict.value, fills, chance: chanceOf(tin, verdict.value, wish, fills) }];
}

/** A tin that does not take its aim is filled with what it takes: more of them come out of the bowl. */
function countTins(tin: AirTin, { takesGrams }: AirVerdict, bowlGrams: Exact): TinAir['fills'] {
  if (!bowlGrams.gt(0)) return null;
  const found = findUnitsFromBatch(bowlGrams, {
    lossFraction: exact(tin.lossPercent).div(100),
    targetFillGrams: smallest(exact(tin.aimGrams), takesGrams),
    retained: 0,
  });
  return found.ok ? { count: found.value.filled, leftGrams: found.value.leftoverGrams } : null;
}

/** Spread of earlier runs and of this bowl together, as many degrees of freedom as both have. */
function chanceOf(
  tin: AirTin,
  { takesGrams, meanGramsPerMl }: AirVerdict,
  { gramsPerMl }: AirWish,
  fills: TinAir['fills'],
): TinAir['chance'] {
  const tins = tin.planned ?? fills?.count ?? 0;
  const now =
    gramsPerMl.length >= 2
      ? {
          // From grams in a millilitre to grams in this tin.
          s: spreadOf(gramsPerMl).standardDeviation?.times(takesGrams).div(meanGramsPerMl).toNumber() ?? 0,
          f: gramsPerMl.length - 1,
        }
      : null;
  const runs = tin.spread && { s: tin.spread.standardDeviationGrams, f: tin.spread.degreesOfFreedom };
  if (!now && !runs) return 'no-data';
  const f = (now?.f ?? 0) + (runs?.f ?? 0);
  const s = Math.sqrt(((now?.f ?? 0) * (now?.s ?? 0) ** 2 + (runs?.f ?? 0) * (runs?.s ?? 0) ** 2) / f);
  const expectedGrams = smallest(exact(tin.aimGrams), takesGrams);
  const weighed = {
    mean: expectedGrams.toNumber(),
    meanOf: gramsPerMl.length,
    standardDeviation: s,
    degreesOfFreedom: f,
  };
  const all = chanceAllReach(weighed, Number(tin.declaredGrams), tins);
  if (!all.ok) return 'no-spread';
  return {
    all: all.value,
    tins,
    expectedGrams,
    meanOf: gramsPerMl.length,
    standardDeviationGrams: s,
    degreesOfFreedom: f,
    from: now && runs ? 'both' : now ? 'now' : 'runs',
  };
}

/** The tin that asks for the most care says what is done with the whole bowl. */
export function worstVerdict(found: readonly TinAir[]): AirVerdict['verdict'] | undefined {
  const order = ['too-much', 'stop', 'more'] as const;
  return order.find((each) => found.some(({ verdict }) => verdict.verdict === each));
}

/** Density of each cup that can be read. */
export const densitiesOf = (cups: readonly steps.FullCup[]): Exact[] =>
  cups.flatMap((cup) => {
    const judged = judgeCup(cup);
    return judged.ok ? [judged.value.densityGramsPerMl] : [];
  });

/** Of all cups of one look at the bowl; null: none was weighed. */
export function meanDensityOf(cups: readonly steps.FullCup[]): Exact | null {
  const densities = densitiesOf(cups);
  return densities.length === 0 ? null : sumOf(densities).div(densities.length);
}

/** Density before whipping, by what the cups of this bowl say, else by earlier ones. */
export function unwhippedOf(cups: readonly steps.FullCup[], known: string | null): Exact | null {
  const own = cups.find((cup) => cup.unwhippedGrams !== null);
  if (own?.unwhippedGrams) return exact(own.unwhippedGrams).div(own.cupMl);
  return known === null ? null : exact(known);
}

/** Shea butter, unrefined, at 40 °C: the middle of 0.89 to 0.93 g/ml (Codex Alimentarius, CXS 325R). */
export const USUAL_GRAMS_PER_ML = '0.91';

export interface ExpectedDensity {
  readonly gramsPerMl: Exact;
  readonly by: 'earlier' | 'expected';
  /** Of what is expected: the density before, and whether it was weighed. */
  readonly unwhipped: Exact;
  readonly isWeighed: boolean;
}

/** What it whips to: the lightest of earlier batches, so that the largest volume fits; else what the maker expects. */
export function expectDensity(
  { earlier, unwhippedGramsPerMl }: steps.StepAir,
  growsPercent: string | null,
): ExpectedDensity | null {
  const unwhipped = exact(unwhippedGramsPerMl ?? USUAL_GRAMS_PER_ML);
  const isWeighed = unwhippedGramsPerMl !== null;
  if (earlier) return { gramsPerMl: exact(earlier.leastGramsPerMl), by: 'earlier', unwhipped, isWeighed };
  if (growsPercent === null) return null;
  const grown = unwhipped.times(100).div(exact(growsPercent).plus(100));
  return { gramsPerMl: grown, by: 'expected', unwhipped, isWeighed };
}

/** A step that every kitchen scale shows (common practice, no source). */
const USUAL_STEP_GRAMS = '1';

export const loadsOf = (air: steps.StepAir, bowlGrams: Exact, expected: ExpectedDensity): Result<BowlLoads> =>
  splitIntoLoads({
    massGrams: bowlGrams,
    whippedGramsPerMl: expected.gramsPerMl,
    bowlMl: air.bowlHoldsMl === '' ? null : air.bowlHoldsMl,
    bowlGrams: air.bowlHoldsGrams === '' ? null : air.bowlHoldsGrams,
    stepGrams: air.scaleStepGrams ?? USUAL_STEP_GRAMS,
  });
