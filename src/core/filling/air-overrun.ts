import { done, problem, type Result, refused } from '../problem.ts';
import { type Exact, type ExactInput, exact } from '../quantity/index.ts';

export interface AirOverrun {
  readonly overrunPercent: Exact;
  /** Share of the whipped volume that is air, 0 to 1. */
  readonly airFraction: Exact;
}

/**
 * Air whipped in, as the growth of the volume, from densities or from the masses of one and the same volume.
 *
 * Equation: overrun % = (unwhipped - whipped) / whipped x 100; air fraction = overrun / (1 + overrun), which is
 * (unwhipped - whipped) / unwhipped. Both in one unit: g/ml, or g in the same cup.
 * Valid range: 0 < whipped <= unwhipped; without inclusions (sugar, salt), which take no air.
 * Source: University of Guelph, ice cream technology, overrun calculations.
 */
export function findAirOverrun(
  unwhipped: ExactInput,
  whipped: ExactInput,
  where = 'whippedDensityGramsPerMl',
): Result<AirOverrun> {
  const before = exact(unwhipped);
  const after = exact(whipped);
  if (after.gt(before) || !after.gt(0)) {
    return refused(
      problem('whipped-not-lighter', where, { found: after.toFixed(), allowed: before.toFixed() }),
    );
  }
  const air = before.minus(after);
  return done({ overrunPercent: air.times(100).div(after), airFraction: air.div(before) });
}
