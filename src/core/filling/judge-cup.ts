import { done, problem, type Result, refused } from '../problem.ts';
import { type Exact, type ExactInput, exact } from '../quantity/index.ts';
import { findAirOverrun } from './air-overrun.ts';
import { findWhippedFill } from './whipped-fill.ts';

/** A full cup of the whipped butter, levelled at its rim. */
export interface CupTest {
  readonly grossGrams: ExactInput;
  readonly tareGrams: ExactInput;
  readonly cupMl: ExactInput;
  /** Net mass of the same cup before whipping, where it was weighed. */
  readonly unwhippedGrams: ExactInput | null;
}

export interface CupVerdict {
  readonly netGrams: Exact;
  readonly densityGramsPerMl: Exact;
  /** null: nobody weighed the cup before whipping. */
  readonly overrunPercent: Exact | null;
}

/**
 * Density of a whipped butter, in g/ml, and its overrun in percent, from a cup of known volume.
 *
 * Equation: net = gross - tare; density = net / volume; overrun as in air-overrun, of one and the same cup.
 * Valid range: net and volume above nought, the cup full and levelled, unwhipped not lighter than whipped.
 * Source: University of Guelph, ice cream technology, overrun calculations (by weight of a fixed volume).
 */
export function judgeCup({ grossGrams, tareGrams, cupMl, unwhippedGrams }: CupTest): Result<CupVerdict> {
  const net = exact(grossGrams).minus(tareGrams);
  if (!net.gt(0)) {
    const figures = { found: exact(tareGrams).toFixed(), allowed: exact(grossGrams).toFixed() };
    return refused(problem('weighed-nothing', 'tareGrams', figures));
  }
  if (!exact(cupMl).gt(0)) {
    return refused(problem('value-not-above', 'cupMl', { found: exact(cupMl).toFixed(), allowed: 0 }));
  }
  const air = unwhippedGrams === null ? null : findAirOverrun(unwhippedGrams, net, 'unwhippedGrams');
  if (air && !air.ok) {
    const figures = { found: exact(unwhippedGrams ?? 0).toFixed(), allowed: net.toFixed() };
    return refused(problem('cup-lighter-before', 'unwhippedGrams', figures));
  }
  return done({
    netGrams: net,
    densityGramsPerMl: net.div(cupMl),
    overrunPercent: air === null ? null : air.value.overrunPercent,
  });
}

/** What a tin takes to the brim of the butter as it is in the cup, in grams: what was stirred in is in the cup too. */
export const fillByCup = (
  brimMl: ExactInput,
  { densityGramsPerMl }: Pick<CupVerdict, 'densityGramsPerMl'>,
): Result<Exact> => {
  const container = {
    containerMl: brimMl,
    headspaceFraction: 0,
    unwhippedDensityGramsPerMl: densityGramsPerMl,
    inclusions: [],
  };
  const fill = findWhippedFill(container, 0);
  return fill.ok ? done(fill.value.fillGrams) : fill;
};
