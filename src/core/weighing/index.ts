export { type AdditionError, findAdditionError, type Weighing } from './addition-error.ts';
export {
  askAboutReading,
  type Reading,
  type ReadingQuestion,
  type ReadingQuestionCode,
} from './ask-about-reading.ts';
export { askAboutTestReading, type TestReading } from './ask-about-test-reading.ts';
export {
  chartScaleChecks,
  ENOUGH_CHECKS,
  type ScaleChart,
  type ScaleCheckPoint,
} from './chart-scale-checks.ts';
export type { ChartFactors, ChartTables } from './control-chart-factors.ts';
export { findBandAround, type WeighingBand } from './find-band.ts';
export { type ChartWish, type ControlChart, findControlChart } from './find-control-chart.ts';
export { findMassInAir, type WeighedInAir } from './find-mass-in-air.ts';
export { findPremix, type Premix, type PremixWish } from './find-premix.ts';
export { findRepeatability, LEAST_WEIGHINGS, type Repeatability } from './find-repeatability.ts';
export { findWaysToWeigh, type WaysWish } from './find-ways-to-weigh.ts';
export { type Drift, type DriftWish, followDrift } from './follow-drift.ts';
export { type ActionLimit, type CheckWeight, findActionLimit, judgeScaleCheck } from './judge-scale-check.ts';
export { findScaleFor, leastOnScale } from './least-on-scales.ts';
export { GRAMS_PER_UNIT, gramsOfUnit, type MassUnit } from './mass-unit.ts';
export { planWeighings, type WeighingPlan } from './plan-weighings.ts';
export type { PlannedWeighing, WantedAddition } from './planned-weighing.ts';
export { proposeCheckWeights } from './propose-check-weights.ts';
export { checkScale, findErrorOnScale, findWorstErrorGrams, type Scale } from './scale.ts';
export { type ClassedScale, findScaleErrors, type ScaleErrors } from './scale-errors.ts';
export type { AccuracyClass, ScaleTables } from './scale-tables.ts';
export {
  findSmallestWeight,
  isBelowSmallestWeight,
  type Repeating,
  type SmallestWeight,
} from './smallest-weight.ts';
export type {
  BlendAhead,
  PremixInCarrier,
  WayAddition,
  WaysForOne,
  WaysToWeigh,
} from './ways-to-weigh.ts';
export { type InParts, weighInParts } from './weigh-in-parts.ts';
