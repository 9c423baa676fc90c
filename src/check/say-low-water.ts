import { type Saying, saying } from '../contract/index.ts';
import { exact, roundToStep, toText } from '../core/quantity/index.ts';
import type {
  JudgedAntioxidant,
  JudgedCriterion,
  LowWaterAnswer,
  LowWaterCaution,
  LowWaterReason,
} from '../core/safety/index.ts';
import { cutPercent, say } from '../words/index.ts';

export interface LowWaterSaid {
  /** The answer in one sentence. */
  readonly sentence: Saying;
  readonly cautions: readonly Saying[];
}

const ANSWERS: Readonly<Record<Exclude<LowWaterReason, 'criterion-met'>, string>> = {
  'water-phase': 'low-water-no-phase',
  'solution-too-wet': 'low-water-no-solution',
  'water-comes-in': 'low-water-unknown-wet',
  'water-in-use-not-told': 'low-water-unknown-use',
  'water-phase-not-told': 'low-water-unknown-phase',
};

const CRITERIA: Readonly<Record<string, string>> = {
  'ph-low': 'low-water-ph-low',
  'ph-high': 'low-water-ph-high',
  anhydrous: 'low-water-anhydrous',
  alcohol: 'low-water-alcohol',
  'fill-temperature': 'low-water-fill-temperature',
  'water-activity': 'low-water-water-activity',
  solvent: 'low-water-solvent',
  oxidising: 'low-water-oxidising',
  aluminium: 'low-water-aluminium',
};

function sayCriterion({ id }: JudgedCriterion): Saying {
  const code = CRITERIA[id];
  if (code === undefined) throw new Error(`no words for the criterion ${id}`);
  const source = say(saying('low-water-criterion-source'));
  return saying('low-water-yes', { because: `${say(saying(code))}. ${source}` });
}

const sayCaution = (caution: LowWaterCaution, { boundWaterPercent }: LowWaterAnswer): Saying =>
  caution === 'low-water-starch' && boundWaterPercent !== null
    ? saying(caution, {
        typical: shorten(boundWaterPercent.typical),
        most: shortenUp(boundWaterPercent.most),
      })
    : saying(caution);

/** Moistures of starch are known to two digits; what is said to be the most is never less than it is. */
const DIGITS = 2;
const shorten = (value: number): string => toText(exact(value).toSignificantDigits(DIGITS));
const shortenUp = (value: number): string => toText(roundToStep(exact(value), stepOf(value), 'up'));
const stepOf = (value: number): string => `1e${Math.floor(Math.log10(value)) + 1 - DIGITS}`;

function sayLevel({ name, percent, minPercent, maxPercent, verdict }: JudgedAntioxidant): Saying[] {
  if (verdict === 'below') {
    const least = minPercent ?? 0;
    return [
      saying('low-water-level-below', { name, percent: cutPercent(percent, [least]), least: String(least) }),
    ];
  }
  return verdict === 'above'
    ? [
        saying('low-water-level-above', {
          name,
          percent: cutPercent(percent, [maxPercent ?? null]),
          most: String(maxPercent),
        }),
      ]
    : [];
}

/** What a low-water assessment says, for a page or a paper. */
export const sayLowWater = (answer: LowWaterAnswer): LowWaterSaid => ({
  sentence:
    answer.reason === 'criterion-met' && answer.criterion !== null
      ? sayCriterion(answer.criterion)
      : saying(answer.reason === 'criterion-met' ? 'low-water-unknown-use' : ANSWERS[answer.reason]),
  cautions: [
    ...answer.cautions.map((caution) => sayCaution(caution, answer)),
    ...answer.antioxidants.flatMap(sayLevel),
  ],
});
