import { type Exact, exact, smallest, sumOf } from '../quantity/index.ts';
import { findPremix } from './find-premix.ts';
import { batchFor, findSmallestBatch } from './find-smallest-batch.ts';
import { findLeastAbove, findScaleFor, findTooSmallScale } from './least-on-scales.ts';
import type { Scale } from './scale.ts';
import type { ScaleTables } from './scale-tables.ts';
import type { BlendAhead, PremixInCarrier, WayAddition, WaysForOne, WaysToWeigh } from './ways-to-weigh.ts';
import { weighInParts } from './weigh-in-parts.ts';

export interface WaysWish {
  readonly batchGrams: Exact;
  readonly additions: readonly WayAddition[];
  readonly scales: readonly Scale[];
}

/**
 * What may be done about additions that no scale of the workshop weighs at once within its tolerance, in grams: parts where
 * the scale that weighs it well does not hold it, else a finer scale; a blend of scents made ahead, a larger batch, a
 * premix in a carrier of the formula; and the smallest batch in which nothing of it is needed.
 *
 * Equations: larger batch = batch x the next least above the addition / addition (findSmallestWeight, smallest load of the
 * class); blend: total = the greatest of least x blend / addition, up to whole batches; step needed = addition x
 * tolerance / 0.82; parts as in weighInParts, premix as in findPremix, smallest batch as in findSmallestBatch.
 * Valid range: additions above nought.
 * Source: USP general chapter 41 for the smallest weight, the aliquot method for the premix; the order: common practice.
 */
export function findWaysToWeigh(
  { batchGrams, additions, scales }: WaysWish,
  tables: ScaleTables,
): WaysToWeigh {
  const needs = additions.map((addition) => needOf(addition, scales, tables));
  const blend = findBlend(
    needs.filter(({ addition }) => addition.isScent),
    scales,
    tables,
  );
  return {
    smallest: findSmallestBatch({ batchGrams, additions }, scales, tables) ?? null,
    hard: needs
      .filter(({ isHard }) => isHard)
      .map((need): WaysForOne => {
        const { addition, grams, least } = need;
        const parts = weighInParts(grams, scales, addition.relativeTolerance, tables) ?? null;
        // What can be weighed in parts is large enough for itself.
        const isTooSmall = parts === null;
        return {
          key: addition.key,
          leastGrams: least,
          tooSmallScale: findTooSmallScale(grams, scales, addition.relativeTolerance, tables) ?? null,
          stepGrams: stepBelow(grams.times(addition.relativeTolerance).div(STEPS_NEEDED)),
          parts,
          blend: isTooSmall && addition.isScent ? blend : null,
          largerBatchGrams: least && batchFor(least, grams, batchGrams),
          premix: isTooSmall ? premixFor(need, needs) : null,
        };
      }),
  };
}

interface Need {
  readonly addition: WayAddition;
  readonly grams: Exact;
  /** The next above it that is weighed at once; null: none is. */
  readonly least: Exact | null;
  readonly isHard: boolean;
}

function needOf(addition: WayAddition, scales: readonly Scale[], tables: ScaleTables): Need {
  const grams = exact(addition.grams);
  const isHard = !findScaleFor(grams, scales, addition.relativeTolerance, tables);
  const least = isHard ? findLeastAbove(grams, scales, addition.relativeTolerance, tables) : grams;
  return { addition, grams, least: least ?? null, isHard };
}

/** 2 x 0.41 of the step must not exceed the tolerance of the addition. */
const STEPS_NEEDED = '0.82';

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
  if (scents.length < 2 || !scents.some(({ isHard }) => isHard)) return null;
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

/** In the largest carrier that has enough; null: none has, or no scale weighs more of it. */
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
