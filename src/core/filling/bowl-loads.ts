import { done, type Problem, problem, type Result, refused } from '../problem.ts';
import { type Exact, type ExactInput, exact } from '../quantity/index.ts';

export interface BowlWish {
  readonly massGrams: ExactInput;
  /** As it is expected to be when it is whipped. */
  readonly whippedGramsPerMl: ExactInput;
  /** What the bowl takes while the whisk turns; null: nobody has said. */
  readonly bowlMl: ExactInput | null;
  readonly bowlGrams: ExactInput | null;
  /** The smallest step of the scale that the loads are weighed on. */
  readonly stepGrams: ExactInput;
}

export interface BowlLoads {
  readonly whippedMl: Exact;
  /** As equal as the scale can weigh them, the larger first; they add up to the mass. */
  readonly loads: readonly Exact[];
  /** What one load fills at most, in ml. */
  readonly largestMl: Exact;
  readonly boundBy: 'volume' | 'mass' | 'nothing';
}

/** More loads than anybody whips in a day: the figures are wrong (common practice, no source). */
const MOST_LOADS = 99;

/**
 * Bowl loads by the expected whipped volume: how many, and grams of each.
 *
 * Equation: volume = mass / density; loads = the least number whose largest part, mass / number taken up to a whole step of
 * the scale, keeps within bowl volume x density and within what the bowl carries. Each load is a whole number of steps,
 * the last has what is less than a step besides. Compared by multiplying, so that a bowl that is just full is full.
 * Valid range: all above nought; up to 99 loads. Common practice, no source.
 */
export function splitIntoLoads(wish: BowlWish): Result<BowlLoads> {
  const problems = problemsOf(wish);
  if (problems.length > 0) return refused(...problems);
  const mass = exact(wish.massGrams);
  for (let count = 1; count <= MOST_LOADS; count += 1) {
    const loads = share(mass, count, wish.stepGrams);
    const largest = loads.reduce((most, load) => (load.gt(most) ? load : most));
    if (overflowOf(largest, wish)) continue;
    return done({
      whippedMl: mass.div(wish.whippedGramsPerMl),
      loads,
      largestMl: largest.div(wish.whippedGramsPerMl),
      boundBy:
        count === 1 ? 'nothing' : (overflowOf(firstOf(mass, count - 1, wish.stepGrams), wish) ?? 'nothing'),
    });
  }
  return refused(
    problem('loads-too-many', 'bowlMl', { found: String(wish.bowlMl ?? ''), allowed: MOST_LOADS }),
  );
}

const firstOf = (mass: Exact, count: number, step: ExactInput): Exact => share(mass, count, step)[0] ?? mass;

function share(mass: Exact, count: number, stepGrams: ExactInput): Exact[] {
  const steps = mass.divToInt(stepGrams);
  const each = steps.divToInt(count);
  const more = steps.minus(each.times(count)).toNumber();
  const rest = mass.minus(steps.times(stepGrams));
  return Array.from({ length: count }, (_, index) => {
    const load = each.plus(index < more ? 1 : 0).times(stepGrams);
    return index === count - 1 ? load.plus(rest) : load;
  });
}

/** What a load is too much for; undefined where it goes in. */
function overflowOf(
  load: Exact,
  { whippedGramsPerMl, bowlMl, bowlGrams }: BowlWish,
): 'volume' | 'mass' | undefined {
  if (bowlMl !== null && load.gt(exact(bowlMl).times(whippedGramsPerMl))) return 'volume';
  return bowlGrams !== null && load.gt(bowlGrams) ? 'mass' : undefined;
}

const problemsOf = ({ massGrams, whippedGramsPerMl, bowlMl, bowlGrams, stepGrams }: BowlWish): Problem[] =>
  Object.entries({ massGrams, whippedGramsPerMl, bowlMl, bowlGrams, stepGrams }).flatMap(([where, value]) =>
    value === null || exact(value).gt(0)
      ? []
      : [problem('value-not-above', where, { found: exact(value).toFixed(), allowed: 0 })],
  );
