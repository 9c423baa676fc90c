import { done, type Problem, problem, type Result, refused } from '../problem.ts';
import { type Exact, exact, roundToStep, sumOf } from '../quantity/index.ts';
import { type ChosenScale, chooseScale } from './choose-scale.ts';
import { findBandAround } from './find-band.ts';
import type { PlannedWeighing, WantedAddition } from './planned-weighing.ts';
import { checkScale, findErrorOnScale, type Scale } from './scale.ts';
import type { ScaleTables } from './scale-tables.ts';
import { settleTotal } from './settle-total.ts';
import { findSmallestWeight, isBelowSmallestWeight } from './smallest-weight.ts';

export interface WeighingPlan {
  readonly rows: readonly PlannedWeighing[];
  /** Sum of targets less sum of exact masses: what rounding to the scales' steps has made of the total. */
  readonly roundingGrams: Exact;
}

/**
 * Lays out a weighing sheet: for each addition the scale, the target that this scale can show, the band and the error.
 *
 * The scale is the one with the least relative error among those that hold the mass, with a vessel and within the
 * tolerance where one does. The target is the exact mass
 * rounded to the scale's step; a limited substance is rounded down. The rounding of the total goes on the line that
 * it hurts least (settleTotal). An addition below the scale's smallest weight for its tolerance gets a warning, and
 * one that no scale holds or shows is left at its exact mass, with a warning: the plan as a whole stands.
 * Source: error as in findAdditionError, smallest weight as in findSmallestWeight; the choice is common practice.
 */
export function planWeighings(
  { additions, scales }: { readonly additions: readonly WantedAddition[]; readonly scales: readonly Scale[] },
  tables: ScaleTables,
): Result<WeighingPlan> {
  const problems = [
    ...additions.flatMap(problemsOf),
    ...scales.flatMap((scale, index) => problemsOfScale(scale, index, tables)),
  ];
  if (problems.length > 0) return refused(...problems);
  const chosen: (ChosenScale | null)[] = [];
  for (const addition of additions) {
    const choice = chooseScale(addition, scales, tables);
    if (!choice.ok) return choice;
    chosen.push(choice.value);
  }
  const targets = settleTotal(additions.map((addition, index) => roundLine(addition, chosen[index]?.scale)));
  const rows: PlannedWeighing[] = [];
  for (const [index, addition] of additions.entries()) {
    const row = rowOf(addition, targets[index] ?? exact(addition.grams), chosen[index]?.scale, tables);
    if (!row.ok) return row;
    rows.push(row.value);
  }
  const exactTotal = sumOf(additions.map(({ grams }) => grams));
  return done({ rows, roundingGrams: sumOf(rows.map((row) => row.targetGrams)).minus(exactTotal) });
}

const hasLimit = ({ isLimited, mostGrams }: WantedAddition): boolean => isLimited || mostGrams != null;

/** To the scale's step; down where a limit holds, or where the scale's capacity is no whole step. */
function roundOnScale(grams: Exact, scale: Scale, isLimited: boolean): Exact {
  const nearest = roundToStep(grams, scale.readabilityGrams);
  const mayRoundUp = !isLimited && nearest.lte(scale.capacityGrams);
  return mayRoundUp ? nearest : roundToStep(grams, scale.readabilityGrams, 'down');
}

function roundLine(addition: WantedAddition, scale: Scale | undefined) {
  const exactGrams = exact(addition.grams);
  const isLimited = hasLimit(addition);
  const rounded = scale && roundOnScale(exactGrams, scale, isLimited);
  const isShown = rounded?.gt(0) ?? false;
  return {
    exactGrams,
    targetGrams: isShown && rounded ? rounded : exactGrams,
    toleranceGrams: exactGrams.times(addition.relativeTolerance),
    isLimited,
    stepGrams: scale && isShown ? exact(scale.readabilityGrams) : null,
    capacityGrams: scale ? exact(scale.capacityGrams) : null,
  };
}

function rowOf(
  addition: WantedAddition,
  targetGrams: Exact,
  scale: Scale | undefined,
  tables: ScaleTables,
): Result<PlannedWeighing> {
  const exactGrams = exact(addition.grams);
  const toleranceGrams = exactGrams.times(addition.relativeTolerance);
  const mostGrams = addition.mostGrams ?? (addition.isLimited ? exactGrams : null);
  const common = { key: addition.key, exactGrams, targetGrams };
  const band = findBandAround({ targetGrams, toleranceGrams, mostGrams });
  if (!scale) return done({ ...common, ...band, ...WITHOUT_SCALE, warnings: [noScaleHolds(addition)] });
  const error = findErrorOnScale(scale, targetGrams, tables);
  if (!error.ok) return error;
  const repeating = repeatingOf(scale);
  return done({
    ...common,
    ...band,
    scale,
    standardUncertaintyGrams: error.value.standardUncertaintyGrams,
    relativeExpanded: error.value.relativeExpanded,
    worstCaseRelative: error.value.worstCaseRelative,
    smallestWeightGrams: findSmallestWeight(repeating, addition.relativeTolerance).smallestWeightGrams,
    belowMinimumLoad: error.value.belowMinimumLoad,
    warnings: warningsOf(addition, targetGrams, scale, error.value.belowMinimumLoad),
  });
}

const WITHOUT_SCALE = {
  scale: null,
  standardUncertaintyGrams: null,
  relativeExpanded: null,
  worstCaseRelative: null,
  smallestWeightGrams: null,
  belowMinimumLoad: null,
} as const;

const repeatingOf = ({ readabilityGrams, repeatabilityGrams }: Scale) => ({
  readabilityGrams,
  repeatabilityGrams: repeatabilityGrams ?? 0,
});

const noScaleHolds = ({ key, grams }: WantedAddition): Problem =>
  problem('no-scale-holds', key, { found: exact(grams).toFixed() });

function warningsOf(
  { key, grams, relativeTolerance }: WantedAddition,
  targetGrams: Exact,
  scale: Scale,
  belowMinimumLoad: boolean | null,
): Problem[] {
  const warnings: Problem[] = [];
  const found = exact(grams).toFixed();
  const parameters = { scale: scale.name, tolerancePercent: exact(relativeTolerance).times(100).toFixed() };
  const step = exact(scale.readabilityGrams);
  if (!targetGrams.mod(step).isZero()) {
    warnings.push(problem('addition-not-shown', key, { found, allowed: step.toFixed(), parameters }));
  }
  if (isBelowSmallestWeight(grams, repeatingOf(scale), relativeTolerance)) {
    const { smallestWeightGrams } = findSmallestWeight(repeatingOf(scale), relativeTolerance);
    const allowed = smallestWeightGrams.toDecimalPlaces(6, 2).toFixed();
    warnings.push(problem('addition-too-small', key, { found, allowed, parameters }));
  }
  if (belowMinimumLoad) warnings.push(problem('below-minimum-load', key, { found, parameters }));
  return warnings;
}

function problemsOf({ grams, relativeTolerance, mostGrams }: WantedAddition, index: number): Problem[] {
  const problems: Problem[] = [];
  const tolerance = exact(relativeTolerance);
  if (!exact(grams).gt(0)) {
    const found = exact(grams).toFixed();
    problems.push(problem('value-not-above', `additions[${index}].grams`, { found, allowed: 0 }));
  }
  if (!tolerance.gt(0) || tolerance.gt(1)) {
    const found = tolerance.toFixed();
    problems.push(
      problem('tolerance-out-of-range', `additions[${index}].relativeTolerance`, { found, allowed: 1 }),
    );
  }
  if (mostGrams != null && exact(mostGrams).lt(grams)) {
    const allowed = exact(mostGrams).toFixed();
    problems.push(
      problem('addition-above-its-most', `additions[${index}].grams`, {
        found: exact(grams).toFixed(),
        allowed,
      }),
    );
  }
  return problems;
}

function problemsOfScale(scale: Scale, index: number, tables: ScaleTables): Problem[] {
  const measures = { capacityGrams: scale.capacityGrams, readabilityGrams: scale.readabilityGrams };
  const problems = Object.entries(measures)
    .filter(([, value]) => !exact(value).gt(0))
    .map(([where, value]) =>
      problem('value-not-above', `scales[${index}].${where}`, { found: exact(value).toFixed(), allowed: 0 }),
    );
  if (problems.length > 0) return problems;
  const checked = checkScale(scale, tables);
  return checked.ok ? [] : checked.problems.map((each) => ({ ...each, where: scale.name }));
}
