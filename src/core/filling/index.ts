export { type AimAdvice, type AimWish, adviseAim } from './advise-aim.ts';
export { type AirOverrun, findAirOverrun } from './air-overrun.ts';
export {
  askAboutFill,
  type FillReading,
  fillQuestionCodes,
  isTareForgotten,
  refuseEmptyFill,
} from './ask-about-fill.ts';
export { askBeforeClose, type Closing, closeQuestionCodes } from './ask-before-close.ts';
export type { BatchLimit, MassLimit, NamedLimit, PieceLimit } from './batch-limit.ts';
export { type BatchWeights, type BatchWeightTest, testBatchWeights } from './batch-weight-test.ts';
export { type BowlLoads, type BowlWish, splitIntoLoads } from './bowl-loads.ts';
export { chanceAllReach, type Weighed } from './chance-all-reach.ts';
export { findFigureHeightMm } from './figure-height-mm.ts';
export {
  askAboutTares,
  askAboutTin,
  findOddTares,
  findTareSpread,
  isTareWide,
  middleTare,
  type TareSpread,
} from './find-tare-spread.ts';
export { type AirNow, type AirVerdict, judgeAir, type TinForAir } from './judge-air.ts';
export { type CupTest, type CupVerdict, fillByCup, judgeCup } from './judge-cup.ts';
export { type Fill, type FillBasis, type FillVerdict, findAim, judgeFill } from './judge-fill.ts';
export type { PackRule } from './judge-packs.ts';
export { judgeRun, type Run, type RunVerdict } from './judge-run.ts';
export { judgeSample, type SampleVerdict } from './judge-sample.ts';
export {
  type BatchLoss,
  type ExpectedLoss,
  judgeLoss,
  type LearntLoss,
  type LossVerdict,
  learnLoss,
} from './learn-loss.ts';
export { meanTestFactor } from './mean-test-factor.ts';
export type {
  CountTestRow,
  NetContentsTables,
  PackTestTables,
  Rounding,
  SamplingScheme,
  TargetRule,
  TolerableErrorTables,
} from './net-contents-tables.ts';
export { normalQuantile } from './normal-quantile.ts';
export { normalShareBelow } from './normal-share.ts';
export { type PooledSpread, poolSpread } from './pooled-spread.ts';
export { type CountStage, findSamplingPlan, type SamplingPlan } from './sampling-plan.ts';
export {
  type BatchWish,
  limitBatchGrams,
  type PlainWish,
  type SizedBatch,
  sizeBatch,
  type TinLine,
} from './size-batch.ts';
export { studentQuantile } from './student-quantile.ts';
export { findTargetForCoverage, findTargetOnAverage, type TargetFill } from './target-fill.ts';
export { findTolerableError, type TolerableError } from './tolerable-error.ts';
export {
  type FillingPlan,
  findBatchForUnits,
  findUnitsFromBatch,
  type UnitsFromBatch,
} from './units-from-batch.ts';
export { spreadOf, type WeightSpread } from './weight-spread.ts';
export {
  findLargestOverrun,
  findWhippedFill,
  type Inclusion,
  type WhippedContainer,
  type WhippedFill,
} from './whipped-fill.ts';
