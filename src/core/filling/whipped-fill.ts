import { done, type Problem, problem, type Result, refused } from '../problem.ts';
import { type Exact, type ExactInput, exact, ONE, sumOf } from '../quantity/index.ts';

export interface Inclusion {
  /** Share of the finished mass, 0 to 1. */
  readonly massFraction: ExactInput;
  readonly densityGramsPerMl: ExactInput;
}

export interface WhippedContainer {
  /** Measured brim volume. */
  readonly containerMl: ExactInput;
  readonly headspaceFraction: ExactInput;
  readonly unwhippedDensityGramsPerMl: ExactInput;
  readonly inclusions: readonly Inclusion[];
}

export interface WhippedFill {
  readonly fillGrams: Exact;
  /** Of what goes into the container, inclusions and all. */
  readonly whippedDensityGramsPerMl: Exact;
}

/** Grams and millilitres as one fraction, so that what just fits is not judged by a rounded quotient. */
interface Parts {
  readonly volumeMl: Exact;
  readonly density: Exact;
  readonly baseShare: Exact;
  /** Millilitres of inclusions in a gram of the finished mass, times `common`. */
  readonly inclusionVolume: Exact;
  readonly common: Exact;
}

function partsOf({
  containerMl,
  headspaceFraction,
  unwhippedDensityGramsPerMl,
  inclusions,
}: WhippedContainer): Parts {
  const densities = inclusions.map(({ densityGramsPerMl }) => exact(densityGramsPerMl));
  const productWithout = (left: number): Exact =>
    densities.reduce((product, density, index) => (index === left ? product : product.times(density)), ONE);
  return {
    volumeMl: exact(containerMl).times(ONE.minus(headspaceFraction)),
    density: exact(unwhippedDensityGramsPerMl),
    baseShare: ONE.minus(sumOf(inclusions.map(({ massFraction }) => massFraction))),
    inclusionVolume: sumOf(
      inclusions.map(({ massFraction }, index) => productWithout(index).times(massFraction)),
    ),
    common: productWithout(-1),
  };
}

function problemsOf({ headspaceFraction, inclusions }: WhippedContainer): Problem[] {
  const share = sumOf(inclusions.map(({ massFraction }) => massFraction));
  const problems: Problem[] = [];
  if (share.gte(1)) {
    problems.push(problem('inclusions-leave-no-base', 'inclusions', { found: share.toFixed(), allowed: 1 }));
  }
  if (exact(headspaceFraction).gte(1)) {
    const found = exact(headspaceFraction).toFixed();
    problems.push(problem('value-not-below', 'headspaceFraction', { found, allowed: 1 }));
  }
  return problems;
}

/**
 * Mass that fills a container with a whipped base, in grams, and the density of the fill, in g/ml.
 *
 * Equation: V = container x (1 - headspace); 1 ml of base weighs rho / (1 + O); a gram of the finished mass takes
 * (1 - sum w)(1 + O) / rho + sum (w / rho_i) ml; fill = V over that.
 * Valid range: inclusions keep their volume and take no air; their shares add up to less than 1.
 * Source: University of Guelph, overrun calculations; inclusions by the additivity of volumes.
 */
export function findWhippedFill(
  container: WhippedContainer,
  overrunPercent: ExactInput,
): Result<WhippedFill> {
  const problems = problemsOf(container);
  if (problems.length > 0) return refused(...problems);
  const { volumeMl, density, baseShare, inclusionVolume, common } = partsOf(container);
  const grown = exact(overrunPercent).plus(100);
  const perGram = baseShare.times(grown).times(common).plus(density.times(inclusionVolume).times(100));
  const top = density.times(common).times(100);
  return done({
    fillGrams: volumeMl.times(top).div(perGram),
    whippedDensityGramsPerMl: top.div(perGram),
  });
}

/**
 * Largest overrun, in percent, at which the declared grams still fit: the equation of the fill solved for O.
 * Refused where they do not even fit unwhipped; what fits exactly is found by multiplying.
 */
export function findLargestOverrun(
  container: WhippedContainer,
  declaredGrams: ExactInput,
): Result<WhippedFill & { readonly largestOverrunPercent: Exact }> {
  const problems = problemsOf(container);
  if (problems.length > 0) return refused(...problems);
  const { volumeMl, density, baseShare, inclusionVolume, common } = partsOf(container);
  const declared = exact(declaredGrams);
  const unwhipped = baseShare.times(common).plus(density.times(inclusionVolume));
  const room = volumeMl.times(density).times(common);
  if (room.lt(declared.times(unwhipped))) {
    return refused(
      problem('declared-does-not-fit', 'declaredGrams', {
        found: declared.toFixed(),
        allowed: room.div(unwhipped).toDecimalPlaces(3, 3).toFixed(),
        parameters: { volumeMl: volumeMl.toFixed() },
      }),
    );
  }
  const spare = room.minus(declared.times(unwhipped));
  return done({
    fillGrams: declared,
    whippedDensityGramsPerMl: declared.div(volumeMl),
    largestOverrunPercent: spare.times(100).div(declared.times(baseShare).times(common)),
  });
}
