export { type AdditionError, findAdditionError, type Weighing } from './addition-error.ts';
export {
  askAboutReading,
  type Reading,
  type ReadingQuestion,
  type ReadingQuestionCode,
} from './ask-about-reading.ts';
export { findBandAround, type WeighingBand } from './find-band.ts';
export { GRAMS_PER_UNIT, gramsOfUnit, type MassUnit } from './mass-unit.ts';
export { planWeighings, type WeighingPlan } from './plan-weighings.ts';
export type { PlannedWeighing, WantedAddition } from './planned-weighing.ts';
export { checkScale, findErrorOnScale, findWorstErrorGrams, type Scale } from './scale.ts';
export { type ClassedScale, findScaleErrors, type ScaleErrors } from './scale-errors.ts';
export type { AccuracyClass, ScaleTables } from './scale-tables.ts';
export {
  findSmallestWeight,
  isBelowSmallestWeight,
  type Repeating,
  type SmallestWeight,
} from './smallest-weight.ts';
