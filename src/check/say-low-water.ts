import { type Saying, saying } from '../contract/index.ts';
import type {
  JudgedAntioxidant,
  JudgedCriterion,
  LowWaterAnswer,
  LowWaterCaution,
  LowWaterReason,
} from '../core/safety/index.ts';
import { say } from '../words/index.ts';

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
    ? saying(caution, { typical: String(boundWaterPercent.typical), most: String(boundWaterPercent.most) })
    : saying(caution);

function sayLevel({ name, percent, minPercent, maxPercent, verdict }: JudgedAntioxidant): Saying[] {
  if (verdict === 'below') {
    return [saying('low-water-level-below', { name, percent: String(percent), least: String(minPercent) })];
  }
  return verdict === 'above'
    ? [saying('low-water-level-above', { name, percent: String(percent), most: String(maxPercent) })]
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
