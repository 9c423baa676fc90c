export { askAboutCup, type CupReading, cupQuestionCodes, isUsualDensity } from './ask-about-cup.ts';
export { type BowlScreen, readBowlEvents } from './bowl-events.ts';
export { findWandering, LEAST_MAKINGS, type Wandering, type WanderingLine } from './find-wandering.ts';
export { judgeBowlWeight } from './judge-bowl-weight.ts';
export {
  type AskedOfPosition,
  judgePosition,
  type PositionState,
  type StandingWeighing,
} from './judge-position.ts';
export { type HadStep, judgeStep, leastMinutesOf, type WantedStep } from './judge-step.ts';
export {
  type BatchPlan,
  type BatchToPlan,
  type ItemShort,
  type PlannedLine,
  planBatch,
} from './plan-batch.ts';
export {
  type LineToResize,
  type ResizedBatch,
  type ResizedLine,
  resizeBatch,
} from './resize-batch.ts';
export { type BowlEvent, findBowlGrams, findStageYields, type StageYield } from './stage-yields.ts';
