import { type Exact, exact, largest, roundToStep, smallest, sumOf } from '../quantity/index.ts';
import { findPremix } from './find-premix.ts';
import { findScaleFor, leastOnScales } from './least-on-scales.ts';
import type { Scale } from './scale.ts';
import type { ScaleTables } from './scale-tables.ts';
import type {
  BlendAhead,
  FinerScale,
  PremixInCarrier,
  WayAddition,
  WaysForOne,
  WaysToWeigh,
} from './ways-to-weigh.ts';

export interface WaysWish {
  readonly batchGrams: Exact;
  readonly additions: readonly WayAddition[];
  readonly scales: readonly Scale[];
}

/**
 * What may be done about additions that the workshop's scales do not weigh within their tolerances, in grams: a finer
 * scale, a blend of scents made ahead, a larger batch, a premix in a carrier of the formula; and the smallest batch in
 * which nothing of it is needed.
 *
 * Equations: least of an addition = least on any scale for its tolerance (findSmallestWeight, smallest load of the class);
 * smallest batch = batch x the greatest of least / addition; blend: total = the greatest of least x blend / addition,
 * up to whole batches; step needed = addition x tolerance / 0.82; premix as in findPremix.
 * Valid range: additions above nought. What a larger batch no longer fits on one scale is weighed in parts.
 * Source: USP general chapter 41 for the smallest weight, the aliquot method for the premix; the order: common practice.
 */
export function findWaysToWeigh(
  { batchGrams, additions, scales }: WaysWish,
  tables: ScaleTables,
): WaysToWeigh {
  const needs = additions.map((addition) => {
    const grams = exact(addition.grams);
    const least = leastOnScales(scales, addition.relativeTolerance, tables)?.grams ?? null;
    const isSmall = least === null || grams.lt(least);
    return { addition, grams, least, isSmall };
  });
  const blend = findBlend(
    needs.filter(({ addition }) => addition.isScent),
    scales,
    tables,
  );
  const isKnown = needs.every(({ least }) => least !== null);
  return {
    smallestBatchGrams: isKnown
      ? needs.map((need) => batchFor(need, batchGrams)).reduce((most, each) => largest(most, each), exact(0))
      : null,
    small: needs
      .filter(({ isSmall }) => isSmall)
      .map(
        (need): WaysForOne => ({
          key: need.addition.key,
          leastGrams: need.least,
          finer: finerFor(need, scales, tables),
          blend: need.addition.isScent ? blend : null,
          largerBatchGrams: need.least === null ? null : batchFor(need, batchGrams),
          premix: premixFor(need, needs),
        }),
      ),
  };
}

interface Need {
  readonly addition: WayAddition;
  readonly grams: Exact;
  readonly least: Exact | null;
  readonly isSmall: boolean;
}

/** Up to whole grams, since nobody plans a batch in fractions of one. */
const batchFor = ({ grams, least }: Need, batchGrams: Exact): Exact =>
  roundToStep(batchGrams.times(least ?? 0).div(grams), 1, 'up');

/** 2 x 0.41 of the step must not exceed the tolerance of the addition. */
const STEPS_NEEDED = '0.82';

function finerFor({ grams, addition }: Need, scales: readonly Scale[], tables: ScaleTables): FinerScale {
  return {
    scale: findScaleFor(grams, scales, addition.relativeTolerance, tables) ?? null,
    readabilityGrams: stepBelow(grams.times(addition.relativeTolerance).div(STEPS_NEEDED)),
  };
}

/** The greatest step of 1, 2 or 5 times a power of ten that is not above a mass: scales are made with no others. */
function stepBelow(grams: Exact): Exact {
  const power = exact(10).pow(Math.floor(grams.abs().log(10).toNumber()));
  const fitting = [10, 5, 2, 1].map((times) => power.times(times)).find((step) => step.lte(grams));
  return fitting ?? power.div(2);
}

/** All scents of the batch in one bottle: the greatest shares first, each of them weighable. undefined: nothing gained. */
function findBlend(
  scents: readonly Need[],
  scales: readonly Scale[],
  tables: ScaleTables,
): BlendAhead | null {
  if (scents.length < 2 || !scents.some(({ isSmall }) => isSmall)) return null;
  const perBatchGrams = sumOf(scents.map(({ grams }) => grams));
  const tightest = scents
    .map(({ addition }) => exact(addition.relativeTolerance))
    .reduce((least, each) => smallest(least, each));
  if (!findScaleFor(perBatchGrams, scales, tightest, tables)) return null;
  if (scents.some(({ least }) => least === null)) return null;
  // How many batches the bottle must hold so that the least of each scent goes in.
  const batches = scents
    .map(({ grams, least }) => Math.ceil((least ?? exact(0)).div(grams).toNumber()))
    .reduce((most, each) => Math.max(most, each), 1);
  return {
    keys: scents.map(({ addition }) => addition.key),
    totalGrams: perBatchGrams.times(batches),
    batches,
    perBatchGrams,
    grams: scents.map(({ grams }) => grams.times(batches)),
  };
}

/** In the largest carrier that has enough; null: none has, or no scale weighs the dose at all. */
function premixFor({ grams, least, addition }: Need, needs: readonly Need[]): PremixInCarrier | null {
  if (least === null) return null;
  const premix = findPremix({ doseGrams: grams, smallestWeighableGrams: least });
  if (!premix.ok) return null;
  const broughtGrams = premix.value.portionGrams.minus(grams);
  const carrier = needs
    .filter((each) => each.addition.isCarrier && each.addition.key !== addition.key)
    .filter((each) => each.grams.gt(broughtGrams))
    .reduce<Need | undefined>((best, each) => (best?.grams.gte(each.grams) ? best : each), undefined);
  if (!carrier) return null;
  return {
    ...premix.value,
    substanceGrams: least,
    carrierKey: carrier.addition.key,
    broughtGrams,
  };
}
