import { type Problem, problem } from '../problem.ts';
import { type Exact, type ExactInput, exact, toText } from '../quantity/index.ts';

/** Questions that a person may answer with "it is so". */
export const cupQuestionCodes = ['cup-heavier-than-bowl', 'cup-density-unusual'] as const;

/** A cup, full and levelled, as the scale showed it. */
export interface CupReading {
  readonly grossGrams: ExactInput;
  readonly tareGrams: ExactInput;
  readonly cupMl: ExactInput;
  readonly unwhippedGrams: ExactInput | null;
}

/** Scales err: a cup may weigh so many times what lies in the bowl, and no more (common practice, no source). */
const MOST_TIMES = '1.02';
/**
 * In g/ml: lighter is foam, and heavier than glycerol (1.26 at 20 °C, CRC Handbook of Chemistry and Physics, from memory) is
 * nothing that is whipped. Outside, a tare was forgotten, a point slipped, or the volume is that of another cup.
 */
const LEAST_GRAMS_PER_ML = '0.2';
const MOST_GRAMS_PER_ML = '1.3';

/** Compared by multiplying: what lies on the border is usual. */
export const isUsualDensity = (netGrams: ExactInput, cupMl: ExactInput): boolean =>
  exact(netGrams).gte(exact(cupMl).times(LEAST_GRAMS_PER_ML)) &&
  exact(netGrams).lte(exact(cupMl).times(MOST_GRAMS_PER_ML));

/**
 * What a careful colleague would ask about a full cup of what lies in the bowl: more than lies there, or a density that
 * nothing whipped has, before or after. Nothing is put right here: a person answers. Of a bowl nothing of which was weighed
 * (nought) only the density is judged; the cup itself holds something.
 */
export function askAboutCup(cup: CupReading, bowlGrams: ExactInput, where: string): Problem[] {
  const net = exact(cup.grossGrams).minus(cup.tareGrams);
  const bowl = exact(bowlGrams);
  const isMore = bowl.gt(0) && net.gt(bowl.times(MOST_TIMES));
  const more = { found: toText(net), allowed: toText(bowl) };
  return [
    ...(isMore ? [problem('cup-heavier-than-bowl', `${where}.grossGrams`, more)] : []),
    ...askAboutDensity(net, cup.cupMl, `${where}.grossGrams`),
    ...(cup.unwhippedGrams === null
      ? []
      : askAboutDensity(exact(cup.unwhippedGrams), cup.cupMl, `${where}.unwhippedGrams`)),
  ];
}

function askAboutDensity(netGrams: Exact, cupMl: ExactInput, where: string): Problem[] {
  if (isUsualDensity(netGrams, cupMl)) return [];
  const found = toText(netGrams.div(cupMl).toSignificantDigits(3));
  const parameters = { least: LEAST_GRAMS_PER_ML, most: MOST_GRAMS_PER_ML };
  return [problem('cup-density-unusual', where, { found, parameters })];
}
